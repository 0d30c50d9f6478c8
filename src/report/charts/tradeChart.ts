import type { Rate } from "../../num/interval.ts";
import { chartTexts as t } from "../../texts/english/chart.ts";
import { axes, FULL_PX, markAt, plotOf, ticksFor } from "./axes.ts";
import { type Drawing, lineOf, type Shape } from "./drawing.ts";
import { linearScale } from "./scale.ts";

const RIGHT_PX = 24;
const DOT_PX = 6;

/** One routine of a trade-off. */
export interface Trade {
  readonly cost: number;
  /** In [0, 1]. */
  readonly figure: Rate;
  /** Figures from fresh runs. */
  readonly isFresh: boolean;
  /** The point in words. */
  readonly words: string;
}

/** What the chart is about. */
export interface TradeFacts {
  readonly title: string;
  /** Along x, with its unit. */
  readonly costTitle: string;
  /** Up y, in hundredths. */
  readonly worthTitle: string;
  /** A cost that must not be passed, and its name. */
  readonly limit?: { readonly cost: number; readonly words: string };
}

/** Where a trade-off's points lie, to be pointed at: in the order of the trades. */
export interface TradeChart extends Drawing {
  readonly spots: readonly { readonly xPx: number; readonly yPx: number; readonly words: string }[];
}

/**
 * What more of a cost buys: a stair from point to point, each with the line of its interval. Open dots have had few runs.
 *
 * @param widthPx of the place it is shown in: labels keep their size
 */
export function tradeChart(facts: TradeFacts, trades: readonly Trade[], widthPx = FULL_PX): TradeChart {
  const { limit } = facts;
  const most = Math.max(1, limit?.cost ?? 0, ...trades.map(({ cost }) => cost));
  const plot = plotOf(widthPx, RIGHT_PX);
  const x = linearScale([0, 1.05 * most], [plot.leftPx, plot.rightPx], ticksFor(plot));
  const y = linearScale([0, 100], [plot.footPx, plot.topPx]);
  const spots = trades.map(({ cost, figure, words }) => ({
    xPx: x.at(cost),
    yPx: y.at(100 * figure.value),
    words,
  }));
  return {
    widthPx,
    heightPx: plot.heightPx,
    title: facts.title,
    description: trades.length === 0 ? t.noTrades : t.trades(trades.map(({ words }) => words).join("; ")),
    shapes: [
      ...axes(plot, x, y, { x: facts.costTitle, y: facts.worthTitle }),
      ...(limit ? markAt(x.at(limit.cost), limit.words, plot, facts.worthTitle) : []),
      ...(trades.length > 1 ? [lineOf(stair(spots), "soft", 1.5, [5, 4])] : []),
      ...trades.flatMap(({ cost, figure, isFresh }): Shape[] => [
        lineOf(
          [
            [x.at(cost), y.at(100 * figure.low)],
            [x.at(cost), y.at(100 * figure.high)],
          ],
          "soft",
          1.5,
        ),
        {
          kind: "dot",
          xPx: x.at(cost),
          yPx: y.at(100 * figure.value),
          radiusPx: DOT_PX,
          fill: isFresh ? "full" : "open",
        },
      ]),
    ],
    spots,
  };
}

/** Whoever may spend as much as the next point costs has it; until then, the one before. */
function stair(spots: TradeChart["spots"]): (readonly [number, number])[] {
  return spots.flatMap(({ xPx, yPx }, i) => {
    const before = spots[i - 1];
    return before === undefined ? [[xPx, yPx] as const] : [[xPx, before.yPx] as const, [xPx, yPx] as const];
  });
}
