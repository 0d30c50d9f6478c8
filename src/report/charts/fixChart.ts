import type { Fix } from "../../jobs/fixes.ts";
import { chartTexts as t } from "../../texts/english/chart.ts";
import { gainWords, signed } from "../fixWords.ts";
import { FULL_PX } from "./axes.ts";
import { type Drawing, fitted, lineOf, linesOf, type Shape, TEXT_PX, textAt } from "./drawing.ts";
import { linearScale } from "./scale.ts";

const LABEL_PX = 270;
/** In a narrower place each title stands above its bar. */
const BESIDE_PX = 520;
const NARROW_LEFT_PX = 16;
const LINE_PX = 20;
const ROW_PX = 28;
const BAR_PX = 14;
const TOP_PX = 16;
const FOOT_PX = 46;
const RIGHT_PX = 24;

/**
 * What each change would bring: a bar for the gain, a line for its interval; hatched where it is too close to call.
 *
 * @param widthPx of the place it is shown in: labels keep their size
 */
export function fixChart(fixes: readonly Fix[], widthPx = FULL_PX): Drawing {
  const isBeside = widthPx >= BESIDE_PX;
  const rowPx = ROW_PX + (isBeside ? 0 : LINE_PX);
  const foot = TOP_PX + Math.max(1, fixes.length) * rowPx;
  const ends = fixes.flatMap(({ gain }) => [100 * gain.low, 100 * gain.high]);
  const x = linearScale(
    [Math.floor(Math.min(-5, ...ends)), Math.ceil(Math.max(5, ...ends))],
    [isBeside ? LABEL_PX : NARROW_LEFT_PX, widthPx - RIGHT_PX],
    isBeside ? 6 : 4,
  );
  const rows = fixes.flatMap((fix, i) => {
    const topPx = TOP_PX + i * rowPx;
    const title = isBeside
      ? textAt(LABEL_PX - 10, topPx + BAR_PX / 2 + TEXT_PX / 3, fitted(fix.title, LABEL_PX - 14), "end")
      : textAt(0, topPx + TEXT_PX - 1, fitted(fix.title, widthPx), "start");
    return [title, ...barOf(fix, isBeside ? topPx : topPx + LINE_PX, x.at)];
  });
  // A title above its bar is not crossed by the lines of the scale.
  const spans: readonly (readonly [number, number])[] = isBeside
    ? [[TOP_PX - 6, foot]]
    : fixes.map((_, i) => [TOP_PX + i * rowPx + LINE_PX - 3, TOP_PX + (i + 1) * rowPx - 3]);
  const counted = linesOf(t.fixAxis, widthPx);
  const told = fixes.map(
    (fix) =>
      `${fix.title} ${gainWords(fix.gain)}, ${t.verdict[fix.verdict === "not told apart" ? "open" : fix.verdict]}`,
  );
  return {
    widthPx,
    heightPx: foot + FOOT_PX + 16 * (counted.length - 1),
    title: t.fixes,
    description: fixes.length === 0 ? t.noFixes : `${told.join("; ")}.`,
    shapes: [
      ...x.ticks.flatMap((tick): Shape[] => [
        ...spans.map(([fromPx, toPx]) =>
          lineOf(
            [
              [x.at(tick), fromPx],
              [x.at(tick), toPx],
            ],
            tick === 0 ? "strong" : "faint",
            tick === 0 ? 1.5 : 1,
          ),
        ),
        textAt(x.at(tick), foot + 16, signed(tick), "middle", "soft"),
      ]),
      ...counted.map((line, i) => textAt(widthPx, foot + 36 + 16 * i, line, "end", "soft")),
      ...rows,
    ],
  };
}

function barOf({ gain, verdict }: Fix, topPx: number, at: (value: number) => number): readonly Shape[] {
  const middle = topPx + BAR_PX / 2;
  const zero = at(0);
  const end = at(100 * gain.value);
  const low = at(100 * gain.low);
  const high = at(100 * gain.high);
  const isOpen = verdict === "not told apart";
  const upright = (xPx: number): Shape =>
    lineOf(
      [
        [xPx, middle - 4],
        [xPx, middle + 4],
      ],
      "strong",
      1.5,
    );
  return [
    {
      kind: "bar",
      xPx: Math.min(zero, end),
      yPx: topPx,
      widthPx: Math.abs(end - zero),
      heightPx: BAR_PX,
      fill: isOpen ? "hatched" : "tint",
    },
    lineOf(
      [
        [low, middle],
        [high, middle],
      ],
      "strong",
      1.5,
    ),
    upright(low),
    upright(high),
    { kind: "dot", xPx: end, yPx: middle, radiusPx: 3.5, fill: isOpen ? "open" : "full" },
  ];
}
