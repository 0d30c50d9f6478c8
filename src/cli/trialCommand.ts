import { lossTitle } from "../report/lossWords.ts";
import { withoutDrift } from "../search/variant.ts";
import { compileTrial } from "../trial/compile.ts";
import type { TrialOutcome } from "../trial/outcome.ts";
import { runTrial } from "../trial/run.ts";
import { routineIn } from "./findRoutine.ts";
import { FINE, print, printJson, reject } from "./output.ts";
import { projectAt } from "./placementFlag.ts";
import { loadProjectFile } from "./projectFile.ts";
import { tableText } from "./table.ts";

export interface TrialInput {
  readonly project: string | null;
  readonly routine: string;
  readonly seed: number;
  readonly index: number;
  readonly at: string | null;
  readonly still: boolean;
  readonly json: boolean;
}

/** `wedgeward trial`. @returns the exit code */
export function trialCommand(input: TrialInput): number {
  const parsed = loadProjectFile(input.project);
  if (!parsed.ok) return reject(input.project ?? "the default project", parsed.issues, input.json);
  const found = routineIn(parsed.value, input.routine, input.project);
  if (!found.ok) return reject("the command line", found.issues, input.json);
  const { project } = parsed.value;
  const laid = input.at === null ? ({ ok: true, value: project } as const) : projectAt(project, input.at);
  if (!laid.ok) return reject("the command line", laid.issues, input.json);
  const outcome = runTrial(
    compileTrial(input.still ? withoutDrift(laid.value) : laid.value, found.value),
    input.seed,
    input.index,
  );
  const { placement, delivered, endPositions, losses, timeS, hash } = outcome;
  if (input.json) printJson({ placement, delivered, endPositions, losses, timeS, hash });
  else print(trialText(input, outcome));
  return FINE;
}

function trialText({ routine, seed, index }: TrialInput, outcome: TrialOutcome): string {
  const home = outcome.delivered.filter(Boolean).length;
  const rows = outcome.placement.map((start, ball) => {
    const atS = outcome.deliveredAtS[ball];
    const reason = outcome.losses[ball];
    const fate = reason
      ? lossTitle(reason)
      : `home${atS === null || atS === undefined ? "" : ` after ${atS.toFixed(1)} s`}`;
    return [String(ball + 1), pointText(start), pointText(outcome.endPositions[ball]), fate];
  });
  return [
    `${routine}, seed ${seed}, run ${index}: ${home} of ${outcome.delivered.length} balls home in ${outcome.timeS.toFixed(1)} s`,
    "",
    tableText([["ball", "from x, y mm", "to x, y mm", ""], ...rows], [true, true, true, false]),
    "",
    `Jams ${outcome.jams}, stalls ${outcome.stalls}. Fingerprint ${outcome.hash}.`,
  ].join("\n");
}

function pointText(point: { readonly xMm: number; readonly yMm: number } | undefined): string {
  return point ? `${point.xMm.toFixed(0)}, ${point.yMm.toFixed(0)}` : "?";
}
