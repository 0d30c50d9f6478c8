import { describe, expect, it } from "vitest";
import { targetFrame } from "../../../src/plan/frame.ts";
import { sceneOf } from "../../../src/plan/scene.ts";
import { beforeWedgeMm } from "../../../src/plan/target.ts";
import { shippedProject } from "../../support/projectFiles.ts";

const usual = shippedProject();

describe("the push line", () => {
  it("goes through the middle of an even wedge, square to its long side", () => {
    const { target } = sceneOf(targetFrame(usual, true));
    expect(target.aim.xMm).toBeCloseTo(150, 9);
    expect(target.aim.yMm).toBeCloseTo(150, 9);
    expect(target.headingRad).toBeCloseTo((-3 * Math.PI) / 4, 9);
  });

  it("leaves both tips of a lopsided robot equally far from their walls, whatever the legs", () => {
    const outline = [
      { xMm: -70, yMm: -60 },
      { xMm: 100, yMm: -60 },
      { xMm: 100, yMm: 90 },
      { xMm: -70, yMm: 90 },
    ];
    const ground = outline.map(({ xMm, yMm }) => ({ xMm: Math.min(xMm, 80), yMm }));
    const project = {
      ...usual,
      zone: { ...usual.zone, wedge: { ...usual.zone.wedge, legXMm: 340, legYMm: 260 } },
      robot: {
        ...usual.robot,
        shape: { kind: "polygon" as const, outline, pusherEdges: [1] },
        ground: { kind: "polygon" as const, outline: ground },
      },
    };
    const { target, reach } = sceneOf(targetFrame(project, true));
    // With the ground outline at the edge the tips are 20 mm beyond it, left and right of the line.
    const tip = (left: number) => ({
      xMm: target.aim.xMm - 20 * target.nx + left * target.ny,
      yMm: target.aim.yMm - 20 * target.ny - left * target.nx,
    });
    expect(tip(reach.leftMm).yMm).toBeCloseTo(tip(-reach.rightMm).xMm, 9);
    expect(beforeWedgeMm(target, target.aim)).toBeCloseTo(0, 9);
  });

  it("measures how far a place is in front of the wedge", () => {
    const { target } = sceneOf(targetFrame(usual, true));
    // The corner itself is half the diagonal behind the edge of a wedge with legs of 300 mm.
    expect(beforeWedgeMm(target, { xMm: 0, yMm: 0 })).toBeCloseTo(-150 * Math.SQRT2, 9);
    expect(beforeWedgeMm(target, { xMm: 300, yMm: 300 })).toBeCloseTo(150 * Math.SQRT2, 9);
  });
});
