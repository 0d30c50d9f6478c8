import { plain } from "../../texts/numbers.ts";
import { lineOf, type Shape, TEXT_PX, textAt, textWidthPx } from "./drawing.ts";
import type { Scale } from "./scale.ts";

/** The part of a chart that the curves are drawn in, px from its upper left corner. */
export interface Plot {
  readonly leftPx: number;
  readonly rightPx: number;
  readonly topPx: number;
  readonly footPx: number;
  /** Of the whole chart. */
  readonly heightPx: number;
}

/** Width of a chart that has all the room it wants. */
export const FULL_PX = 640;
const LEFT_PX = 52;
const TOP_PX = 30;
const BOTTOM_PX = 44;
/** Ticks below stand at least this far apart. */
const TICK_PX = 45;

/** The plot of a chart so wide; a narrow one is less high, and never so low that the labels at its side collide. */
export function plotOf(widthPx: number, rightMarginPx: number): Plot {
  const heightPx = Math.round(Math.max(240, 0.52 * widthPx));
  return {
    leftPx: LEFT_PX,
    rightPx: widthPx - rightMarginPx,
    topPx: TOP_PX,
    footPx: heightPx - BOTTOM_PX,
    heightPx,
  };
}

/** How many ticks have room below a plot. */
export function ticksFor({ leftPx, rightPx }: Plot): number {
  return Math.max(2, Math.min(6, Math.floor((rightPx - leftPx) / TICK_PX)));
}

/** A dotted line across the plot with its name above it, beside the title of y if that stands in its way. */
export function markAt(atPx: number, words: string, plot: Plot, titleOfY: string): readonly Shape[] {
  const half = textWidthPx(words) / 2;
  const free = plot.leftPx - TITLE_OUT_PX + textWidthPx(titleOfY) + 10;
  const middle = Math.max(Math.min(atPx, plot.rightPx + 10 - half), free + half);
  return [
    lineOf(
      [
        [atPx, plot.topPx],
        [atPx, plot.footPx],
      ],
      "soft",
      1.5,
      [2, 3],
    ),
    textAt(middle, plot.topPx - 12, words, "middle"),
  ];
}

/** The title of y begins so far left of the plot. */
const TITLE_OUT_PX = 40;

/** Lines across at the ticks of y, marks below at those of x, and what both count. */
export function axes(
  { leftPx, rightPx, topPx, footPx }: Plot,
  x: Scale,
  y: Scale,
  titles: { readonly x: string; readonly y: string },
): readonly Shape[] {
  return [
    ...y.ticks.flatMap((tick): Shape[] => [
      lineOf(
        [
          [leftPx, y.at(tick)],
          [rightPx, y.at(tick)],
        ],
        "faint",
        1,
      ),
      textAt(leftPx - 8, y.at(tick) + TEXT_PX / 3, plain(tick), "end", "soft"),
    ]),
    ...x.ticks.flatMap((tick): Shape[] => [
      lineOf(
        [
          [x.at(tick), footPx],
          [x.at(tick), footPx + 5],
        ],
        "soft",
        1,
      ),
      textAt(x.at(tick), footPx + 20, plain(tick), "middle", "soft"),
    ]),
    textAt(leftPx - TITLE_OUT_PX, topPx - 12, titles.y, "start", "soft"),
    textAt(rightPx, footPx + 38, titles.x, "end", "soft"),
  ];
}
