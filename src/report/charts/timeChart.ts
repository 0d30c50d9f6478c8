import type { StopAdvice, TimeToHome } from "../../score/timeToHome.ts";
import { chartTexts as t } from "../../texts/english/chart.ts";
import { outOf100 } from "../rateWords.ts";
import { axes, FULL_PX, markAt, type Plot, plotOf, ticksFor } from "./axes.ts";
import { type Drawing, lineOf, type Shape, TEXT_PX, textAt } from "./drawing.ts";
import { linearScale, type Scale } from "./scale.ts";
import { spacedOut } from "./spacedOut.ts";

/** Room for the curves' own labels. */
const RIGHT_PX = 130;

/** All balls: unbroken; fewer: ever shorter dashes. */
const DASHES: readonly (readonly number[])[] = [[], [10, 4], [4, 4], [1.5, 4], [10, 3, 2, 3]];

/**
 * Share of runs with at least k balls home over time, each curve with its band, and the best moment to stop.
 *
 * @param widthPx of the place it is shown in: labels keep their size
 */
export function timeChart(time: TimeToHome, stop: StopAdvice, widthPx = FULL_PX): Drawing {
  const endS = time.timesS.at(-1) ?? 1;
  const plot = plotOf(widthPx, RIGHT_PX);
  const titles = { x: t.timeAxis, y: t.runsAxis };
  const x = linearScale([0, endS], [plot.leftPx, plot.rightPx], ticksFor(plot));
  const y = linearScale([0, 100], [plot.footPx, plot.topPx]);
  const balls = time.curves.length;
  const stepped = time.curves.map((curve) => ({
    label: curve.balls === balls ? t.allBalls(balls) : t.someBalls(curve.balls),
    dashes: DASHES[balls - curve.balls] ?? [2, 2],
    shares: curve.shareFrac,
  }));
  const places = spacedOut(
    stepped.map(({ shares }) => y.at(100 * (shares.at(-1) ?? 0))),
    TEXT_PX + 2,
    plot.footPx,
  );
  const curves = stepped.flatMap((curve, i) => [
    ...curveOf(time, curve.shares, curve.dashes, x, y),
    textAt(
      plot.rightPx + 8,
      (places[i] ?? 0) + TEXT_PX / 3,
      `${curve.label}: ${outOf100(curve.shares.at(-1) ?? 0)}`,
      "start",
    ),
  ]);
  return {
    widthPx,
    heightPx: plot.heightPx,
    title: t.time,
    description: describe(time, stop),
    shapes: [...axes(plot, x, y, titles), ...curves, ...stopMark(stop, plot, x, titles.y)],
  };
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

function stopMark({ best, savedS }: StopAdvice, plot: Plot, x: Scale, titleOfY: string): readonly Shape[] {
  if (best === null || savedS < 1) return [];
  return markAt(x.at(best.timeS), t.stopAt(best.timeS.toFixed(0)), plot, titleOfY);
}

function describe({ curves, trials, timesS, bandFrac }: TimeToHome, { best }: StopAdvice): string {
  const ends = curves.map(({ balls, shareFrac }) => t.homeIn(balls, outOf100(shareFrac.at(-1) ?? 0)));
  const stop = best === null ? "" : t.bestStop(best.timeS.toFixed(0));
  const endS = (timesS.at(-1) ?? 0).toFixed(0);
  return t.timeInWords(endS, ends.join(", "), trials, outOf100(bandFrac)) + stop;
}
