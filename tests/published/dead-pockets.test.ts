import { describe, expect, it } from "vitest";
import { pocketsOf } from "../../src/plan/push/pockets.ts";
import { gapAt, type Standing } from "../../src/plan/push/touchGap.kernel.ts";
import { sceneProject } from "../support/scene.ts";

/** A round tool as a polygon of many sides; by itself of the same area: between the inscribed and the circumscribed one. */
function roundTool(
  radiusMm: number,
  sides = 96,
  out = Math.sqrt((2 * Math.PI) / sides / Math.sin((2 * Math.PI) / sides)),
): { xMm: number; yMm: number }[] {
  const step = (2 * Math.PI) / sides;
  const reach = radiusMm * out;
  return Array.from({ length: sides }, (_, i) => ({
    xMm: reach * Math.cos((i + 0.5) * step),
    yMm: reach * Math.sin((i + 0.5) * step),
  }));
}

const flat = (points: readonly { xMm: number; yMm: number }[]): Float64Array =>
  Float64Array.from(points.flatMap((p) => [p.xMm, p.yMm]));

/** The gap between a ball's centre seated in a corner of the given angle (one side y = 0) and a round tool, less the ball's radius. */
function missMm(angleDeg: number, toolMm: number, ballMm: number): number {
  const angle = (angleDeg * Math.PI) / 180;
  // Its flat sides look every 5°, and so at both walls and at the ball: there it is as round as a disc.
  const tool = flat(roundTool(toolMm, 72, 1 / Math.cos(Math.PI / 72)));
  const apex = 5000;
  // Inside: y ≥ 0, and right of the line that rises from the apex at the corner's angle.
  const e = { x: Math.sin(angle), y: -Math.cos(angle) };
  const robot: Standing = {
    footprint: tool,
    hull: tool,
    ground: tool,
    width: 10_000,
    height: 10_000,
    edgeX: e.x,
    edgeY: e.y,
    edgeOffset: e.x * apex,
    perRad: 0,
  };
  return gapAt(robot, apex + ballMm / Math.tan(angle / 2), ballMm, 0) - ballMm;
}

// Derived, double precision: a disc R touches a ball r seated in a corner of angle α iff R/r ≤ (1 + s)/(1 − s), s = sin(α/2): 3 at 60°, 5.828427 = 3 + 2√2 at 90°, 13.928203 at 120°.
describe("a round tool and a ball seated in a corner", () => {
  it.each([
    [60, 3],
    [90, 5.828427],
    [120, 13.928203],
  ])("of %d°: touches it up to %f times the ball's radius", (angle, ratio) => {
    const half = 5e-7;
    expect(missMm(angle, 20 * (ratio - half), 20)).toBeLessThan(0);
    expect(missMm(angle, 20 * (ratio + half), 20)).toBeGreaterThan(0);
  });
});

describe("dead pockets of a round tool in right corners", () => {
  // Derived: R 150 mm, r 20 mm: 1.97321e-4 m² in each right corner (a grid gives 1.97309e-4). The fourth corner is the wedge's.
  it("bound three times 197.321 mm²", () => {
    const project = sceneProject({
      zone: {
        widthMm: 700,
        heightMm: 1000,
        doorway: { wall: "right", centreMm: 500, widthMm: 10 },
        wedge: {
          corner: "upper-right",
          legXMm: 100,
          legYMm: 100,
          profile: "flat",
          lipMm: 0,
          riseMm: 0,
          runMm: 0,
        },
      },
      robot: { shape: { kind: "polygon", outline: roundTool(150), pusherEdges: [0] } },
      balls: [],
    });
    // Certain bounds, and so no digits: cells of 1 mm along a rim of 50 mm are a sixth of it. To its digits the area is checked in tests/published/areas.
    const pockets = pocketsOf(project, 20, 1);
    expect(pockets.deadLowMm2).toBeLessThan(3 * 197.321);
    expect(pockets.deadHighMm2).toBeGreaterThan(3 * 197.321);
    expect(pockets.deadHighMm2 - pockets.deadLowMm2).toBeLessThan(0.17 * 3 * 197.321);
    expect(pockets.isDead(20, 20)).toBe(true);
    expect(pockets.isDead(60, 60)).toBe(false);
  });
});
