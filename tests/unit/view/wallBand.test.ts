import { describe, expect, it } from "vitest";
import type { Wall, Zone } from "../../../src/model/zone.ts";
import { Viewport } from "../../../src/view/viewport.ts";
import { doorwayEnds, WALL_PX, wallRects } from "../../../src/view/wallBand.ts";

const zoneWith = (wall: Wall): Zone => ({
  widthMm: 1200,
  heightMm: 900,
  walls: { restitution: 0.6, frictionCoeff: 0.3 },
  doorway: { wall, centreMm: 300, widthMm: 200 },
  wedge: { corner: "upper-right", legXMm: 300, legYMm: 300, profile: "flat", lipMm: 0, riseMm: 0, runMm: 0 },
  keepOuts: [],
});
const view = new Viewport(zoneWith("left"), 1300, 1000, { left: 50, right: 50, top: 50, bottom: 50 });

describe("the walls", () => {
  it.each([
    ["bottom", [200, 0], [400, 0]],
    ["top", [200, 900], [400, 900]],
    ["left", [0, 200], [0, 400]],
    ["right", [1200, 200], [1200, 400]],
  ] as const)("leave the doorway in the %s wall open", (wall, from, to) => {
    const [a, b] = doorwayEnds(zoneWith(wall));
    expect([a.xMm, a.yMm]).toEqual(from);
    expect([b.xMm, b.yMm]).toEqual(to);
  });

  it.each(["bottom", "top", "left", "right"] as const)("cover the rim less the doorway (%s)", (wall) => {
    const rects = wallRects(zoneWith(wall), view);
    const area = rects.reduce((sum, { width, height }) => sum + width * height, 0);
    // At 1 px/mm: all four sides, four corners, less the gap of 200 mm.
    expect(view.scalePxPerMm).toBe(1);
    expect(area).toBeCloseTo(WALL_PX * (2 * 1200 + 2 * 900 - 200) + 4 * WALL_PX * WALL_PX, 6);
  });

  it("stand outside of the floor", () => {
    for (const { x, y, width, height } of wallRects(zoneWith("bottom"), view)) {
      const outside =
        x + width <= view.x(0) || x >= view.x(1200) || y + height <= view.y(900) || y >= view.y(0);
      expect(outside).toBe(true);
    }
  });
});
