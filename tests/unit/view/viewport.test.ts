import { describe, expect, it } from "vitest";
import { Viewport, zoomedViewports } from "../../../src/view/viewport.ts";

const ZONE = { widthMm: 1200, heightMm: 900 };
const MARGIN = { left: 30, right: 10, top: 20, bottom: 40 };

describe("the viewport", () => {
  it("fits the zone into the free space and keeps its proportions", () => {
    const wide = new Viewport(ZONE, 1000, 510, MARGIN);
    // 450 px of free height for 900 mm.
    expect(wide.scalePxPerMm).toBe(0.5);
    expect(wide.y(0)).toBe(470);
    expect(wide.y(900)).toBe(20);
    // 960 px free, 600 used, the rest shared.
    expect(wide.x(0)).toBe(30 + 180);
    expect(wide.x(1200)).toBe(30 + 180 + 600);
  });

  it("turns y around: what lies higher in the zone has the smaller y on the screen", () => {
    const viewport = new Viewport(ZONE, 640, 500, MARGIN);
    expect(viewport.y(800)).toBeLessThan(viewport.y(100));
    expect(viewport.local({ xMm: 10, yMm: 10 }).y).toBeLessThan(0);
  });

  it("turns a left turn into one against the clock on the screen", () => {
    const viewport = new Viewport(ZONE, 640, 500, MARGIN);
    const quarter = viewport.rotation(Math.PI / 2);
    // The scene graph turns (1, 0) to (cos, sin), y down: pointing up the screen is (0, −1).
    expect(Math.cos(quarter)).toBeCloseTo(0, 12);
    expect(Math.sin(quarter)).toBeCloseTo(-1, 12);
  });

  it("gives finite numbers for a canvas that is not laid out yet", () => {
    const viewport = new Viewport(ZONE, 0, 0, MARGIN);
    expect(viewport.scalePxPerMm).toBeGreaterThan(0);
    expect(Number.isFinite(viewport.x(600))).toBe(true);
  });

  it("draws everything larger on a large screen, and lays what is on the page over it to the pixel", () => {
    const size = { widthPx: 2000, heightPx: 1500 };
    const { scene, page } = zoomedViewports(ZONE, size, MARGIN);
    const zoom = size.widthPx / scene.widthPx;
    // 1500 px where 900 are drawn as they are.
    expect(zoom).toBeCloseTo(1500 / 900, 12);
    for (const at of [
      { xMm: 0, yMm: 0 },
      { xMm: 1200, yMm: 900 },
      { xMm: 431, yMm: 77 },
    ]) {
      expect(page.x(at.xMm)).toBeCloseTo(zoom * scene.x(at.xMm), 9);
      expect(page.y(at.yMm)).toBeCloseTo(zoom * scene.y(at.yMm), 9);
    }
    const phone = zoomedViewports(ZONE, { widthPx: 340, heightPx: 300 }, MARGIN);
    expect(phone.scene.scalePxPerMm).toBe(phone.page.scalePxPerMm);
  });
});
