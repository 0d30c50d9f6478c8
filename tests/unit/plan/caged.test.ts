import { describe, expect, it } from "vitest";
import { hingedArms } from "../../../src/model/arms.ts";
import type { Project } from "../../../src/model/project.ts";
import { nominalCourse } from "../../../src/motion/course.ts";
import { CAGED } from "../../../src/plan/caged.ts";
import { makeCatalogue } from "../../../src/plan/catalogue.ts";
import { RoutineMaker } from "../../../src/plan/maker.ts";
import { recipesOf } from "../../../src/plan/recipe.ts";
import { compileTrial } from "../../../src/trial/compile.ts";
import { runBatch } from "../../../src/trial/run.ts";
import { mirroredMove, mirroredProject } from "../../support/mirror.ts";
import { shippedProject } from "../../support/projectFiles.ts";

const swinging = shippedProject("swinging-arms.json");
const IDS = [
  "cage-hooks-all-c0-v60",
  "cage-hooks-all-c2-q-v100",
  "cage-hooks-outer-c0-b-v100",
  "cage-lanes-long-s75-v100",
];
const make = (project: Project, id: string) => {
  const routine = new RoutineMaker(project).make(id);
  if (routine === null) throw new Error(`no routine ${id}`);
  return routine;
};

describe("gathering with arms that swing", () => {
  it("is for robots whose arms close around every ball, and says so to others", () => {
    const ids = (project: Project) => recipesOf(project).map(({ family }) => family.id);
    expect(ids(swinging)).toContain(CAGED.id);
    const fixed = shippedProject("arm-robot.json");
    expect(ids(fixed)).not.toContain(CAGED.id);
    expect(new RoutineMaker(fixed).make(IDS[0]!)).toBeNull();
    const { missing } = makeCatalogue({ ...fixed, settings: { ...fixed.settings, speedFracs: [1] } });
    expect(missing.find(({ pattern }) => pattern === CAGED.pattern)?.reason).toMatch(/arms swing shut/);
    // A small ball slips out between the tips.
    const small = { ...swinging.balls[0]!, kind: { ...swinging.balls[0]!.kind, diameterMm: 12 } };
    expect(ids({ ...swinging, balls: [small] })).not.toContain(CAGED.id);
  });

  it.each(IDS)("%s touches nothing but by moves to the wall, and swings both ways", (id) => {
    const { moves } = make(swinging, id);
    const course = nominalCourse(swinging, moves);
    expect(course.blockedMoves).toEqual([]);
    const swings = moves.flatMap((move) => (move.kind === "arms" ? [move.to] : []));
    expect(swings.length).toBeGreaterThan(4);
    for (const [i, to] of swings.entries()) expect(to).toBe(i % 2 === 0 ? "closed" : "open");
  });

  it.each(IDS)("%s carries through curves with closed arms, and meets the wedge with open ones", (id) => {
    const { moves } = make(swinging, id);
    const { armsRad } = nominalCourse(swinging, moves);
    const arms = hingedArms(swinging.robot);
    const fast = moves.filter((move, i) => {
      const forward = move.kind === "arc" && move.distanceMm > 0;
      if (forward) expect(armsRad[i]).toBe(arms?.closedAngleRad);
      if (move.kind === "toWall") expect(armsRad[i]).toBe(arms?.openAngleRad);
      return forward;
    });
    if (!id.includes("-lanes-")) expect(fast.length).toBeGreaterThan(0);
  });

  it("gives mirrored moves for a mirrored project", () => {
    for (const id of IDS) {
      const image = make(mirroredProject(swinging), id).moves;
      const plain = make(swinging, id).moves.map(mirroredMove);
      expect(image.map(({ kind }) => kind)).toEqual(plain.map(({ kind }) => kind));
      for (const [i, move] of image.entries()) {
        if (move.kind === "arc" || move.kind === "turn") {
          expect(move.angleRad).toBeCloseTo((plain[i] as typeof move).angleRad, 6);
        }
      }
    }
  });

  it("brings balls home, which a plate on the same way with the same placements loses in the corners", () => {
    const { moves } = make(swinging, IDS[0]!);
    const rate = (name: string) => {
      const project = { ...swinging, robot: { ...swinging.robot, shape: shippedProject(name).robot.shape } };
      const routine = { id: "same", pattern: "own", label: "", params: {}, moves };
      const { delivered } = runBatch(compileTrial(project, routine, { drift: false }), 3, 0, 30);
      return delivered.reduce((sum, count) => sum + count, 0);
    };
    expect(rate("swinging-arms.json")).toBeGreaterThan(1.5 * rate("plate-robot.json"));
  });
});
