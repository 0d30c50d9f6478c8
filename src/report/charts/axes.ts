import { plain } from "../../texts/numbers.ts";
import { lineOf, type Shape, TEXT_PX, textAt } from "./drawing.ts";
import type { Scale } from "./scale.ts";

/** The part of a chart that the curves are drawn in, px from its upper left corner. */
export interface Plot {
  readonly leftPx: number;
  readonly rightPx: number;
  readonly topPx: number;
  readonly footPx: number;
}

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
    textAt(leftPx - 40, topPx - 12, titles.y, "start", "soft"),
    textAt(rightPx, footPx + 38, titles.x, "end", "soft"),
  ];
}
