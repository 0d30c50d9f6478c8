import type { StopAdvice, TimeToHome } from "../../score/timeToHome.ts";
import { chartTexts as t } from "../../texts/english/chart.ts";
import { outOf100 } from "../rateWords.ts";
import { axes, type Plot } from "./axes.ts";
import { type Drawing, lineOf, type Shape, TEXT_PX, textAt } from "./drawing.ts";
import { linearScale, type Scale } from "./scale.ts";

const WIDTH_PX = 640;
const HEIGHT_PX = 340;
const LEFT_PX = 52;
/** Room for the curves' own labels. */
const RIGHT_PX = 110;
const TOP_PX = 30;
const BOTTOM_PX = 44;
const PLOT: Plot = {
  leftPx: LEFT_PX,
  rightPx: WIDTH_PX - RIGHT_PX,
  topPx: TOP_PX,
  footPx: HEIGHT_PX - BOTTOM_PX,
};

/** All balls: unbroken; fewer: ever shorter dashes. */
const DASHES: readonly (readonly number[])[] = [[], [10, 4], [4, 4], [1.5, 4], [10, 3, 2, 3]];

/** Share of runs with at least k balls home over time, each curve with its band, and the best moment to stop. */
export function timeChart(time: TimeToHome, stop: StopAdvice): Drawing {
  const endS = time.timesS.at(-1) ?? 1;
  const x = linearScale([0, endS], [LEFT_PX, WIDTH_PX - RIGHT_PX], 6);
  const y = linearScale([0, 100], [HEIGHT_PX - BOTTOM_PX, TOP_PX]);
  const balls = time.curves.length;
  const stepped = time.curves.map((curve) => ({
    label: curve.balls === balls ? t.allBalls(balls) : t.someBalls(curve.balls),
    dashes: DASHES[balls - curve.balls] ?? [2, 2],
    shares: curve.shareFrac,
  }));
  const places = spacedOut(stepped.map(({ shares }) => y.at(100 * (shares.at(-1) ?? 0))));
  const curves = stepped.flatMap((curve, i) => [
    ...curveOf(time, curve.shares, curve.dashes, x, y),
    textAt(
      WIDTH_PX - RIGHT_PX + 8,
      (places[i] ?? 0) + TEXT_PX / 3,
      `${curve.label}: ${outOf100(curve.shares.at(-1) ?? 0)}`,
      "start",
    ),
  ]);
  return {
    widthPx: WIDTH_PX,
    heightPx: HEIGHT_PX,
    title: t.time,
    description: describe(time, stop),
    shapes: [...axes(PLOT, x, y, { x: t.timeAxis, y: t.runsAxis }), ...curves, ...stopMark(stop, x)],
  };
}

/** Places as near as can be to where they should be, and far enough apart for their labels; given in falling or rising order. */
function spacedOut(wanted: readonly number[]): readonly number[] {
  const order = wanted.map((_, i) => i).sort((a, b) => (wanted[a] ?? 0) - (wanted[b] ?? 0));
  const places = [...wanted];
  let last = Number.NEGATIVE_INFINITY;
  for (const i of order) {
    last = Math.max(wanted[i] ?? 0, last + TEXT_PX + 2);
    places[i] = last;
  }
  // Pushed below the chart's foot, the whole stack moves up.
  const below = Math.max(0, last - (HEIGHT_PX - BOTTOM_PX));
  return places.map((place) => place - below);
}

function pathOf(
  timesS: readonly number[],
  shares: readonly number[],
  x: Scale,
  y: Scale,
): (readonly [number, number])[] {
  return timesS.map((timeS, i) => [x.at(timeS), y.at(100 * (shares[i] ?? 0))] as const);
}

/** A curve and its band. */
function curveOf(
  { timesS, bandFrac }: TimeToHome,
  shares: readonly number[],
  dashes: readonly number[],
  x: Scale,
  y: Scale,
): readonly Shape[] {
  const above = shares.map((share) => Math.min(1, share + bandFrac));
  const below = shares.map((share) => Math.max(0, share - bandFrac));
  const band = [...pathOf(timesS, above, x, y), ...pathOf(timesS, below, x, y).reverse()];
  return [
    { kind: "area", fill: "tint", points: band },
    lineOf(pathOf(timesS, shares, x, y), "strong", 2, dashes),
  ];
}

function stopMark({ best, savedS }: StopAdvice, x: Scale): readonly Shape[] {
  if (best === null || savedS < 1) return [];
  const at = x.at(best.timeS);
  return [
    lineOf(
      [
        [at, TOP_PX],
        [at, HEIGHT_PX - BOTTOM_PX],
      ],
      "soft",
      1.5,
      [2, 3],
    ),
    textAt(at, TOP_PX - 12, t.stopAt(best.timeS.toFixed(0)), "middle"),
  ];
}

function describe({ curves, trials, timesS, bandFrac }: TimeToHome, { best }: StopAdvice): string {
  const ends = curves.map(({ balls, shareFrac }) => t.homeIn(balls, outOf100(shareFrac.at(-1) ?? 0)));
  const stop = best === null ? "" : t.bestStop(best.timeS.toFixed(0));
  const endS = (timesS.at(-1) ?? 0).toFixed(0);
  return t.timeInWords(endS, ends.join(", "), trials, outOf100(bandFrac)) + stop;
}
