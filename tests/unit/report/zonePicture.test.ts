import { describe, expect, it } from "vitest";
import { generateRoutines } from "../../../src/plan/catalogue.ts";
import { svgOf } from "../../../src/report/charts/svg.ts";
import { plannedWay } from "../../../src/report/sheet/way.ts";
import { zonePicture } from "../../../src/report/sheet/zonePicture.ts";
import { SHIPPED, shippedProject } from "../../support/projectFiles.ts";

describe("the picture of a zone", () => {
  it.each(SHIPPED)("stays on its paper and names what it shows: %s", (name) => {
    const project = shippedProject(name);
    const moves = generateRoutines(project).find(({ program }) => program === undefined)?.moves ?? [];
    const picture = zonePicture(project, plannedWay(project, moves), "The way");
    for (const shape of picture.shapes) {
      const points =
        "points" in shape ? shape.points : "xPx" in shape ? [[shape.xPx, shape.yPx] as const] : [];
      for (const [x, y] of points) {
        // The robot may stand in the doorway, half outside.
        expect(x).toBeGreaterThan(-0.3 * picture.widthPx);
        expect(x).toBeLessThan(1.3 * picture.widthPx);
        expect(Number.isFinite(y)).toBe(true);
      }
    }
    expect(picture.description).toContain(`${moves.length} moves`);
    expect(svgOf(picture, "way")).toMatch(/^<svg [\s\S]*<\/svg>$/);
  });

  it("numbers moves so that no two numbers stand on each other", () => {
    const project = shippedProject();
    const moves = generateRoutines(project)[0]?.moves ?? [];
    const texts = zonePicture(project, plannedWay(project, moves), "The way").shapes.filter(
      (shape) => shape.kind === "text",
    );
    expect(texts.length).toBeGreaterThan(5);
    for (const [i, a] of texts.entries()) {
      for (const b of texts.slice(0, i)) expect(Math.hypot(a.xPx - b.xPx, a.yPx - b.yPx)).toBeGreaterThan(19);
    }
  });
});
