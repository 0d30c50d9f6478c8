import { describe, expect, it } from "vitest";
import { ballsOf, type Project } from "../../../src/model/project.ts";
import { distanceToRect, distanceToWedge, entryOutlines } from "../../../src/model/zoneFrame.ts";
import { drawPlacement, PlacementDrawer } from "../../../src/trial/placement.ts";
import { signedDistance } from "../../support/overlaps.ts";
import { SHIPPED, shippedProject } from "../../support/projectFiles.ts";
import { sceneProject } from "../../support/scene.ts";

const TRIALS = 400;

describe("placements", () => {
  it.each(SHIPPED)("keep every margin of the layout: %s", (name) => {
    const project = shippedProject(name);
    const { layout } = project.rules;
    const drawer = new PlacementDrawer(project);
    const kinds = ballsOf(project);
    const outline = entryOutlines(project.zone, project.robot).footprint.map((p) => [p.xMm, p.yMm] as const);
    for (let index = 0; index < TRIALS; index++) {
      const placement = drawer.draw(11, index);
      expect(placement).toHaveLength(kinds.length);
      if (layout.kind === "fixed") {
        expect(placement).toEqual(layout.positions);
        continue;
      }
      for (const [i, { xMm, yMm }] of placement.entries()) {
        const r = kinds[i]!.diameterMm / 2;
        const { widthMm, heightMm, keepOuts } = project.zone;
        const toWall = Math.min(xMm, yMm, widthMm - xMm, heightMm - yMm) - r;
        expect(toWall).toBeGreaterThanOrEqual(layout.wallMarginMm - 1e-9);
        expect(distanceToWedge(project.zone, xMm, yMm) - r).toBeGreaterThanOrEqual(
          layout.wedgeMarginMm - 1e-9,
        );
        expect(signedDistance(outline, [xMm, yMm]) - r).toBeGreaterThanOrEqual(layout.robotMarginMm - 1e-9);
        for (const rect of keepOuts) expect(distanceToRect(rect, xMm, yMm)).toBeGreaterThanOrEqual(r - 1e-9);
        for (const rect of layout.forbidden) expect(distanceToRect(rect, xMm, yMm)).toBeGreaterThan(0);
        for (let j = 0; j < i; j++) {
          const apart =
            Math.hypot(xMm - placement[j]!.xMm, yMm - placement[j]!.yMm) - r - kinds[j]!.diameterMm / 2;
          expect(apart).toBeGreaterThanOrEqual(layout.spacingMm - 1e-9);
        }
      }
    }
  });

  it("depend on seed and index alone", () => {
    const project = shippedProject();
    const drawer = new PlacementDrawer(project);
    const forward = [0, 1, 2, 3, 4].map((index) => drawer.draw(3, index));
    const backward = [4, 3, 2, 1, 0].map((index) => drawer.draw(3, index)).reverse();
    expect(backward).toEqual(forward);
    expect(drawPlacement(project, 3, 2)).toEqual(forward[2]);
    expect(drawPlacement(project, 4, 2)).not.toEqual(forward[2]);
  });

  it("lie more evenly than chance: cells of the allowed region get counts closer to their share", () => {
    const project = oneBallEverywhere();
    const drawer = new PlacementDrawer(project);
    const cells = new Array<number>(64).fill(0);
    const trials = 1024;
    for (let index = 0; index < trials; index++) {
      const { xMm, yMm } = drawer.draw(2, index)[0]!;
      const at = Math.floor(((xMm - 30) / 1140) * 8) * 8 + Math.floor(((yMm - 30) / 840) * 8);
      cells[at]! += 1;
    }
    // The wedge takes the upper right corner, the robot the lower left: those cells share what they lose.
    const free = cells.filter((_, n) => Math.floor(n / 8) + (n % 8) < 9 && Math.floor(n / 8) + (n % 8) > 4);
    const expected = free.reduce((sum, count) => sum + count, 0) / free.length;
    const chiSquare = free.reduce((sum, count) => sum + (count - expected) ** 2 / expected, 0);
    // Chance alone would give about one per cell.
    expect(chiSquare / free.length).toBeLessThan(0.3);
  });

  it("say so when there is no room", () => {
    const project = oneBallEverywhere();
    const crowded = {
      ...project,
      balls: [{ kind: { ...project.balls[0]!.kind, diameterMm: 300 }, count: 12, points: 1 }],
    };
    expect(() => drawPlacement(crowded, 1, 1)).toThrow(/no room for 12 balls/);
  });
});

function oneBallEverywhere(): Project {
  const project = sceneProject({ balls: [{ x: 600, y: 450 }] });
  return {
    ...project,
    rules: {
      ...project.rules,
      layout: {
        kind: "random",
        wallMarginMm: 10,
        spacingMm: 10,
        wedgeMarginMm: 0,
        robotMarginMm: 0,
        forbidden: [],
      },
    },
  };
}
