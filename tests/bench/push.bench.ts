import { pushField } from "../../src/plan/push/pushField.ts";
import { planPushSequence } from "../../src/plan/push/pushSequence.ts";
import { PlacementDrawer } from "../../src/trial/placement.ts";
import { defaultProject } from "./defaultProject.ts";
import { type BenchRow, cpuSecondsOf, rowOf } from "./row.ts";

const ROUNDS = 5;
const LAYOUTS = 20;
const SEED = 1;

/** What the push field of the default project costs, and the push sequence of a drawn layout of three balls: processor time. */
export async function bench(): Promise<readonly BenchRow[]> {
  const project = defaultProject();
  const drawer = new PlacementDrawer(project);
  const layouts = Array.from({ length: LAYOUTS }, (_, trial) =>
    drawer.draw(SEED, trial).map((point, index) => ({ ...point, index })),
  );
  let sink = 0;
  const field = (): number => cpuSecondsOf(() => (sink += pushField(project).summary.homeMm2));
  const sequences = (): number =>
    cpuSecondsOf(() => {
      for (const balls of layouts) sink += planPushSequence(project, balls).timeS;
    });
  field();
  sequences();
  const fields: number[] = [];
  const each: number[] = [];
  for (let round = 0; round < ROUNDS; round++) {
    fields.push(1000 * field());
    each.push((1000 * sequences()) / LAYOUTS);
  }
  if (!(sink > 0)) throw new Error("nothing was planned");
  return [
    rowOf("push field", "ms of processor time", fields),
    rowOf(`push sequence of three balls, mean of ${LAYOUTS} layouts`, "ms of processor time", each),
  ];
}
