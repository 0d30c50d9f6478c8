import { describe, expect, it } from "vitest";
import { linesOf } from "../../../src/model/program.ts";
import type { Project } from "../../../src/model/project.ts";
import type { Move } from "../../../src/model/routine.ts";
import { withWedgeIn } from "../../../src/model/wedgeCorner.ts";
import type { Corner } from "../../../src/model/zone.ts";
import { Walker } from "../../../src/motion/walker.ts";
import { findProgram } from "../../../src/plan/findCorner.ts";
import { findsBy } from "../../../src/plan/sensingPlan.ts";
import { compileTrial } from "../../../src/trial/compile.ts";
import { recordTrial } from "../../../src/trial/run.ts";
import { shippedProject } from "../../support/projectFiles.ts";
import { routineOf } from "../../support/scene.ts";

const floor = shippedProject("unknown-corner.json");
/** No floor sensor, but a bumper in front; the wedge is too high to be driven on. */
const bumper: Project = {
  ...floor,
  zone: { ...floor.zone, wedge: { ...floor.zone.wedge, profile: "ramp", lipMm: 10, riseMm: 30 } },
  robot: {
    ...floor.robot,
    climbsWedge: false,
    sensors: [{ kind: "bump", name: "Contact switch", side: "front" }],
  },
};

/** How long a robot waits that takes the wedge to be in a corner, s: what tells where it looked for it. */
const WAITS: Readonly<Record<Corner, number>> = {
  "lower-left": 1,
  "lower-right": 2,
  "upper-right": 3,
  "upper-left": 4,
};

/** Finds the corner and waits. */
function waiting(project: Project) {
  const program = findProgram(project, "wall", (known) => [
    { kind: "wait", durationS: WAITS[known.zone.wedge.corner] },
  ]);
  if (program === null) throw new Error("no way along the walls");
  return { ...routineOf([]), program };
}

/** The corner that was taken for the wedge's in a trial where it is in another (or the same) one. */
function foundIn(project: Project, corner: Corner, drift: boolean, index: number): string | undefined {
  const plan = compileTrial(withWedgeIn(project, corner), waiting(project), { drift });
  const { executed = [] } = recordTrial(plan, 5, index).recording;
  const waited = executed.flatMap((move) => (move.kind === "wait" ? [move.durationS] : []));
  return Object.entries(WAITS).find(([, s]) => s === waited.at(-1))?.[0];
}

describe.each([
  ["a floor sensor", floor],
  ["a bumper", bumper],
] as const)("following the walls with %s", (_, project) => {
  const corners = project.rules.wedgeCorners;

  it("finds the wedge in whichever corner it is, with drift as well", () => {
    expect(findsBy(project)).toContain("wall");
    for (const corner of corners) {
      expect(foundIn(project, corner, false, 0)).toBe(corner);
      const runs = [0, 1, 2, 3].map((index) => foundIn(project, corner, true, index));
      expect(runs.filter((found) => found === corner).length).toBeGreaterThanOrEqual(3);
    }
  });

  it("looks into every corner but the last, and asks what its sensor can tell", () => {
    const asked = linesOf(waiting(project).program).flatMap((step) =>
      step.kind === "if" ? [step.when.ask.kind] : [],
    );
    expect(asked).toEqual(corners.slice(1).map(() => (project === floor ? "overWedge" : "bumped")));
  });
});

describe("the way along the walls", () => {
  it("keeps beside them: every long drive is within reach of a wall", () => {
    const { program } = waiting(floor);
    const walker = new Walker(withWedgeIn(floor, "upper-right"));
    const reach = 160;
    const { widthMm, heightMm } = floor.zone;
    const first = program.filter((step): step is Move => step.kind !== "if");
    for (const move of first) {
      const from = walker.pose;
      walker.advance(move);
      const { xMm, yMm } = walker.pose;
      if (Math.hypot(xMm - from.xMm, yMm - from.yMm) < 300) continue;
      const mid = { x: (xMm + from.xMm) / 2, y: (yMm + from.yMm) / 2 };
      expect(Math.min(mid.x, mid.y, widthMm - mid.x, heightMm - mid.y)).toBeLessThan(reach);
    }
    expect(first.length).toBeGreaterThan(0);
  });

  it("is none for a robot that could not tell a wedge from a wall", () => {
    expect(findsBy({ ...floor, robot: { ...floor.robot, sensors: [] } })).toEqual([]);
    const flat = { ...bumper, zone: floor.zone };
    expect(findsBy(flat)).toEqual([]);
  });
});
