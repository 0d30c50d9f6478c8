import { describe, expect, it } from "vitest";
import type { Project } from "../../../../src/model/project.ts";
import { FieldSolver } from "../../../../src/plan/push/field.kernel.ts";
import { fieldBall, pushSetup } from "../../../../src/plan/push/setup.ts";
import { BruteField } from "../../../support/bruteField.ts";
import { PLAIN_ROBOT, sceneProject } from "../../../support/scene.ts";

/** A zone small enough for brute force, and a robot to match. */
function smallZone(plateWidthMm: number): Project {
  return sceneProject({
    zone: {
      widthMm: 290,
      heightMm: 220,
      walls: { restitution: 0.6, frictionCoeff: 0.3 },
      doorway: { wall: "left", centreMm: 60, widthMm: 80 },
      wedge: {
        corner: "upper-right",
        legXMm: 100,
        legYMm: 120,
        profile: "shelf",
        lipMm: 1,
        riseMm: 3,
        runMm: 15,
      },
    },
    robot: {
      shape: {
        kind: "plate",
        bodyLengthMm: 50,
        bodyWidthMm: 40,
        axleFromRearMm: 25,
        plateWidthMm,
        plateReachMm: 20,
      },
      drive: { ...PLAIN_ROBOT.drive, topSpeedMmPerS: 120 },
    },
    balls: [{ x: 140, y: 110, kind: { rollingResistance: 0.06 } }],
  });
}

describe("the push field of a small zone", () => {
  it("is what brute force finds, place by place", () => {
    const project = smallZone(56);
    const setup = pushSetup(project, fieldBall(project), 0);
    const solver = new FieldSolver(setup);
    solver.solve();
    const brute = new BruteField(project, setup).solve();
    const pushes = [...brute].filter((seconds) => seconds > 0 && seconds < Infinity);
    // Enough of everything: places with a chain, and some without.
    expect(pushes.length).toBeGreaterThan(100);
    expect([...brute].filter((seconds) => seconds === Infinity).length).toBeGreaterThan(20);
    const wrong = [...brute].filter((seconds, place) => {
      const found = solver.best[place] ?? Number.NaN;
      return seconds === Infinity ? found !== Infinity : !(Math.abs(found - seconds) < 2e-3);
    });
    expect(wrong).toEqual([]);
  });
});
