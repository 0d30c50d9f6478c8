import { describe, expect, test } from "vitest";
import type { Fix } from "../../../src/jobs/fixes.ts";
import { type Drawing, type Shape, TEXT_PX, textWidthPx } from "../../../src/report/charts/drawing.ts";
import { fixChart } from "../../../src/report/charts/fixChart.ts";
import { lossChart } from "../../../src/report/charts/lossChart.ts";
import { linearScale } from "../../../src/report/charts/scale.ts";
import { spacedOut } from "../../../src/report/charts/spacedOut.ts";
import { svgOf } from "../../../src/report/charts/svg.ts";
import { timeChart } from "../../../src/report/charts/timeChart.ts";
import { tradeChart } from "../../../src/report/charts/tradeChart.ts";
import { lossesByMove } from "../../../src/score/lossCounts.ts";
import { timeToHome, whenToStop } from "../../../src/score/timeToHome.ts";
import { fateBatch } from "../../support/fates.ts";

const fates = fateBatch(2, [
  { homeAtS: 10 },
  { homeAtS: 24 },
  { homeAtS: 12 },
  { loss: "left-pusher", lossAtS: 20, move: 1 },
  { homeAtS: 5 },
  { loss: "never-touched" },
  { homeAtS: 11 },
  { loss: "left-pusher", lossAtS: 9, move: 0 },
]);
const stop = whenToStop(fates, [13, 25, 60], 120);
const fix = (title: string, value: number, verdict: Fix["verdict"]): Fix => ({
  id: title,
  about: "pusher",
  title,
  gain: { value, low: value - 0.03, high: value + 0.03 },
  ballsGain: 0,
  verdict,
  costsS: 0,
  trials: 100,
});
const FIXES = [fix("a pusher 20 mm wider", 0.09, "helps"), fix('slower <"&">', -0.02, "not told apart")];

const TRADES = [0.2, 0.5, 0.64].map((value, i) => ({
  cost: 40 * (i + 1),
  figure: { value, low: value - 0.04, high: value + 0.04, trials: 500 },
  isFresh: i > 0,
  words: `${40 * (i + 1)} s, ${100 * value} of 100 runs`,
}));
const TRADE_FACTS = { title: "What less time costs", costTitle: "seconds", worthTitle: "runs of 100" };

/** A telephone's width. */
const NARROW_PX = 290;
/** Most balls home early, and a stop so early that its name would stand on the title of y. */
const early = { ...stop, best: stop.best && { ...stop.best, timeS: 1 } };
const limit = { cost: 121, words: "time allowed" };

const DRAWINGS: readonly (readonly [string, Drawing])[] = [
  ["time", timeChart(timeToHome(fates, 60), stop)],
  ["time, narrow", timeChart(timeToHome(fates, 60), early, NARROW_PX)],
  ["fixes, narrow", fixChart(FIXES, NARROW_PX)],
  ["trades, narrow", tradeChart({ ...TRADE_FACTS, limit }, TRADES, NARROW_PX)],
  ["losses", lossChart(lossesByMove(fates), 4)],
  ["no losses", lossChart([], 4)],
  ["fixes", fixChart(FIXES)],
  ["no fixes", fixChart([])],
  ["trades", tradeChart({ ...TRADE_FACTS, limit }, TRADES)],
  ["no trades", tradeChart(TRADE_FACTS, [])],
];

const textsOf = ({ shapes }: Drawing): string[] =>
  shapes.flatMap((shape) => (shape.kind === "text" ? [shape.text] : []));

function cornersOf(shape: Shape): readonly (readonly [number, number])[] {
  switch (shape.kind) {
    case "line":
    case "area":
      return shape.points;
    case "bar":
      return [
        [shape.xPx, shape.yPx],
        [shape.xPx + shape.widthPx, shape.yPx + shape.heightPx],
      ];
    case "dot":
    case "text":
      return [[shape.xPx, shape.yPx]];
    default:
      return shape satisfies never;
  }
}

/** About the room a text takes. */
function boxOf({ xPx, yPx, text, anchor }: Extract<Shape, { kind: "text" }>) {
  const width = textWidthPx(text);
  const left = xPx - (anchor === "start" ? 0 : anchor === "end" ? width : width / 2);
  return { text, left, right: left + width, top: yPx - 0.75 * TEXT_PX, foot: yPx + 0.2 * TEXT_PX };
}

describe.each(DRAWINGS)("the chart of %s", (name, drawing) => {
  test("stays on its sheet", () => {
    for (const [x, y] of drawing.shapes.flatMap(cornersOf)) {
      expect(x).toBeGreaterThanOrEqual(0);
      expect(x).toBeLessThanOrEqual(drawing.widthPx);
      expect(y).toBeGreaterThanOrEqual(0);
      expect(y).toBeLessThanOrEqual(drawing.heightPx);
    }
  });

  test("writes no label over another, nor over its edge", () => {
    const labels = drawing.shapes.flatMap((shape) => (shape.kind === "text" ? [boxOf(shape)] : []));
    expect(labels.length).toBeGreaterThan(0);
    for (const [i, a] of labels.entries()) {
      expect(a.left, a.text).toBeGreaterThanOrEqual(-1);
      expect(a.right, a.text).toBeLessThanOrEqual(drawing.widthPx + 1);
      for (const b of labels.slice(i + 1)) {
        const apart = a.right <= b.left || b.right <= a.left || a.foot <= b.top || b.foot <= a.top;
        expect(apart, `${a.text} | ${b.text}`).toBe(true);
      }
    }
  });

  test("is well-formed, in one colour, and says in words what it shows", () => {
    const id = name.replace(" ", "-");
    const svg = svgOf(drawing, id);
    // Every tag is closed, in order.
    const open: string[] = [];
    for (const [, close, tag = "", self] of svg.matchAll(/<(\/?)([a-z]+)[^<>]*?(\/?)>/gi)) {
      if (close) expect(open.pop()).toBe(tag);
      else if (!self) open.push(tag);
    }
    expect(open).toEqual([]);
    expect(svg).toContain(`aria-labelledby="${id}-title ${id}-desc"`);
    expect(svg).toContain(`<title id="${id}-title">${drawing.title}</title>`);
    expect(drawing.description.length).toBeGreaterThan(15);
    expect(svg).not.toMatch(/#[0-9a-f]{3}|rgb|hsl|NaN|undefined|Infinity/i);
  });
});

describe("what the charts show", () => {
  const of = (name: string): Drawing => DRAWINGS.find(([each]) => each === name)?.[1] ?? fixChart([]);

  test("time: every curve has its own dashes, its share at the end, and the moment to stop", () => {
    const texts = textsOf(of("time"));
    expect(texts).toEqual(
      expect.arrayContaining(["1 or more: 100", "all 2: 25", "stop at 25 s", "seconds since the start"]),
    );
    const curves = of("time").shapes.filter((shape) => shape.kind === "line" && shape.ink === "strong");
    const dashes = curves.map((shape) => (shape.kind === "line" ? shape.dashes.join(" ") : ""));
    expect(new Set(dashes).size).toBe(2);
    expect(of("time").shapes.filter(({ kind }) => kind === "area")).toHaveLength(2);
    expect(of("time").description).toMatch(/at least 2 home in 25 of 100 runs.*stop is at 25 seconds/);
  });

  test("losses: bars as long as their numbers, most first", () => {
    expect(textsOf(of("losses"))).toEqual([
      "slipped off the pusher",
      "2 (0.50 a run)",
      "never touched",
      "1 (0.25 a run)",
    ]);
    const widths = of("losses").shapes.flatMap((shape) => (shape.kind === "bar" ? [shape.widthPx] : []));
    expect((widths[0] ?? 0) / (widths[1] ?? 1)).toBeCloseTo(2, 9);
  });

  test("fixes: what is too close to call is hatched and open", () => {
    const bars = of("fixes").shapes.flatMap((shape) => (shape.kind === "bar" ? [shape.fill] : []));
    const dots = of("fixes").shapes.flatMap((shape) => (shape.kind === "dot" ? [shape.fill] : []));
    expect([bars, dots]).toEqual([
      ["tint", "hatched"],
      ["full", "open"],
    ]);
    expect(of("fixes").description).toContain("a pusher 20 mm wider +9 of 100 runs (+6 to +12), helps");
    expect(svgOf(of("fixes"), "f")).toContain("slower &lt;&quot;&amp;&quot;&gt;");
  });
});

describe("labels spaced out", () => {
  test("move only where they would collide, and stay before the end", () => {
    expect(spacedOut([10, 100, 40], 20, 200)).toEqual([10, 100, 40]);
    expect(spacedOut([50, 50, 60], 20, 200)).toEqual([50, 70, 90]);
    expect(spacedOut([195, 10, 198], 20, 200)).toEqual([180, 10, 200]);
  });
});

describe("a scale", () => {
  test("has round ticks within its range", () => {
    expect(linearScale([0, 115], [0, 1], 6).ticks).toEqual([0, 20, 40, 60, 80, 100]);
    expect(linearScale([-22, 16], [0, 1], 6).ticks).toEqual([-20, -10, 0, 10]);
    expect(linearScale([0, 0.35], [0, 1]).ticks.map((tick) => tick.toFixed(2))).toEqual([
      "0.00",
      "0.10",
      "0.20",
      "0.30",
    ]);
  });

  test("is straight, and may run downward", () => {
    const { at } = linearScale([0, 100], [300, 20]);
    expect([at(0), at(50), at(100)]).toEqual([300, 160, 20]);
  });
});

describe("a trade-off", () => {
  const { shapes, spots, description } = tradeChart(TRADE_FACTS, TRADES);

  test("goes up and to the right, with a spot on every dot", () => {
    const dots = shapes.flatMap((shape) => (shape.kind === "dot" ? [shape] : []));
    expect(dots.map(({ fill }) => fill)).toEqual(["open", "full", "full"]);
    expect(spots.map(({ xPx, yPx }) => [xPx, yPx])).toEqual(dots.map(({ xPx, yPx }) => [xPx, yPx]));
    for (const [i, { xPx, yPx }] of spots.entries()) {
      const before = spots[i - 1];
      if (before === undefined) continue;
      expect(xPx).toBeGreaterThan(before.xPx);
      expect(yPx).toBeLessThan(before.yPx);
    }
  });

  test("is told in words", () => {
    expect(description).toContain("40 s, 20 of 100 runs; 80 s, 50 of 100 runs");
  });
});
