import { describe, expect, test } from "vitest";
import { RandomStream } from "../../../src/num/stream.ts";
import { FEWEST_BALLS, heatMap, lostMark } from "../../../src/score/heatMap.ts";
import { type FateRow, fateBatch } from "../../support/fates.ts";

const zone = { widthMm: 1200, heightMm: 900 };

/** Balls spread over the zone; delivered where `isHome` says so. */
function rows(count: number, isHome: (x: number, y: number, u: number) => boolean): readonly FateRow[] {
  const stream = new RandomStream().open(3, 0, 0);
  return Array.from({ length: count }, () => {
    const [x, y, u] = [1200 * stream.uniform(), 900 * stream.uniform(), stream.uniform()];
    return isHome(x, y, u) ? { x, y, homeAtS: 1 } : { x, y, loss: "never-touched" as const };
  });
}

describe("the map of shares by start position", () => {
  test("counts every ball once, in its own cell", () => {
    const map = heatMap(
      fateBatch(
        3,
        rows(3000, (x) => x > 600),
      ),
      zone,
    );
    expect([map.columns, map.rows, map.cellMm]).toEqual([24, 18, 50]);
    expect(map.cells).toHaveLength(24 * 18);
    expect(map.cells.reduce((sum, cell) => sum + cell.balls, 0)).toBe(3000);
    for (const cell of map.cells) expect(cell.delivered).toBe(cell.xMm > 600 ? cell.balls : 0);
  });

  test("keeps every mark inside a zone that its cells reach over, sized by the share lost", () => {
    const narrow = { widthMm: 330, heightMm: 1200 };
    const lost = Array.from({ length: 6000 }, (_, i) => ({
      x: (i * 37) % 330,
      y: i / 5,
      loss: "never-touched" as const,
    }));
    const map = heatMap(fateBatch(1, lost), narrow);
    // Cells of 50 mm: the last of a row covers 30 mm of the zone.
    expect([map.columns, map.columns * map.cellMm]).toEqual([7, 350]);
    const marks = map.cells.flatMap((cell) => (cell.rate ? [lostMark(map, cell, cell.rate)] : []));
    expect(Math.max(...marks.map(({ xMm, acrossMm }) => xMm + acrossMm / 2))).toBeCloseTo(330, 9);
    expect(marks[6]).toEqual({ xMm: 315, yMm: 25, acrossMm: 30, upMm: 50 });
    const cell = map.cells[0]!;
    const quarter = lostMark(map, cell, { value: 0.75, low: 0, high: 1, trials: 12 });
    expect(quarter).toEqual({ xMm: 25, yMm: 25, acrossMm: 25, upMm: 25 });
  });

  test("finds a constant share everywhere, within its own intervals, at walls and corners too", () => {
    const map = heatMap(
      fateBatch(
        1,
        rows(4000, (_x, _y, u) => u < 0.7),
      ),
      zone,
    );
    const rates = map.cells.flatMap((cell) => cell.rate ?? []);
    expect(rates).toHaveLength(map.cells.length);
    const held = rates.filter(({ low, high }) => low <= 0.7 && 0.7 <= high).length;
    expect(held / rates.length).toBeGreaterThan(0.9);
    const mean = rates.reduce((sum, { value }) => sum + value, 0) / rates.length;
    expect(Math.abs(mean - 0.7)).toBeLessThan(0.02);
  });

  test("rests on as many balls as it says: 5/9 of those in the disc where they lie evenly", () => {
    // A lattice of 10 mm: balls per mm² 0.01, bandwidth 150 mm: 5/9 · 0.01 · π · 150² = 392.7.
    const lattice = Array.from({ length: 120 * 90 }, (_, i) => ({
      x: 5 + 10 * (i % 120),
      y: 5 + 10 * Math.floor(i / 120),
      homeAtS: 1,
    }));
    const map = heatMap(fateBatch(1, lattice), zone, { bandwidthMm: 150 });
    const middle = map.cells[9 * 24 + 12];
    expect(Math.abs((middle?.effectiveBalls ?? 0) - 392.7)).toBeLessThan(3);
    expect(middle?.rate).toMatchObject({ value: 1, high: 1 });
    // In a corner a quarter of the disc lies inside, a little more seen from the middle of the cell.
    expect(map.cells[0]?.effectiveBalls).toBeGreaterThan(392.7 / 4);
    expect(map.cells[0]?.effectiveBalls).toBeLessThan(392.7 / 2);
  });

  test("blurs a sharp edge over its bandwidth and no farther", () => {
    const map = heatMap(
      fateBatch(
        1,
        rows(6000, (x) => x > 600),
      ),
      zone,
      { bandwidthMm: 100 },
    );
    for (const { xMm, rate } of map.cells) {
      if (xMm < 500) expect(rate?.value).toBe(0);
      if (xMm > 700) expect(rate?.value).toBe(1);
    }
    const near = map.cells.filter(({ xMm }) => xMm === 625).map(({ rate }) => rate?.value ?? 0);
    expect(Math.min(...near)).toBeGreaterThan(0.5);
    expect(Math.max(...near)).toBeLessThan(1);
  });

  test("says where there are not enough runs", () => {
    const left = rows(3000, () => true).filter(({ x = 0 }) => x < 400);
    const map = heatMap(fateBatch(1, left), zone, { bandwidthMm: 80 });
    for (const { xMm, rate, effectiveBalls } of map.cells) {
      if (xMm > 480) expect(rate).toBeNull();
      else if (xMm < 400) expect(rate).not.toBeNull();
      expect(rate === null).toBe(effectiveBalls < FEWEST_BALLS);
    }
  });

  test("of one ball leaves the others out", () => {
    const both = fateBatch(2, [
      { x: 100, y: 100, homeAtS: 1 },
      { x: 300, y: 100, loss: "never-touched" },
    ]);
    const second = heatMap(both, zone, { ball: 1 });
    expect(second.cells.reduce((sum, { balls, delivered }) => sum + balls + delivered, 0)).toBe(1);
    expect(heatMap(both, zone).cells.reduce((sum, { balls }) => sum + balls, 0)).toBe(2);
  });
});
