import type { Fix } from "../../jobs/fixes.ts";
import { chartTexts as t } from "../../texts/english/chart.ts";
import { gainWords, signed } from "../fixWords.ts";
import { type Drawing, fitted, lineOf, type Shape, TEXT_PX, textAt } from "./drawing.ts";
import { linearScale } from "./scale.ts";

const WIDTH_PX = 640;
const LABEL_PX = 270;
const ROW_PX = 28;
const BAR_PX = 14;
const TOP_PX = 16;
const FOOT_PX = 46;
const RIGHT_PX = 24;

/** What each change would bring: a bar for the gain, a line for its interval; hatched where it is too close to call. */
export function fixChart(fixes: readonly Fix[]): Drawing {
  const foot = TOP_PX + Math.max(1, fixes.length) * ROW_PX;
  const ends = fixes.flatMap(({ gain }) => [100 * gain.low, 100 * gain.high]);
  const x = linearScale(
    [Math.floor(Math.min(-5, ...ends)), Math.ceil(Math.max(5, ...ends))],
    [LABEL_PX, WIDTH_PX - RIGHT_PX],
    6,
  );
  const rows = fixes.flatMap((fix, i) => rowOf(fix, TOP_PX + i * ROW_PX, x.at));
  const told = fixes.map(
    (fix) =>
      `${fix.title} ${gainWords(fix.gain)}, ${t.verdict[fix.verdict === "not told apart" ? "open" : fix.verdict]}`,
  );
  return {
    widthPx: WIDTH_PX,
    heightPx: foot + FOOT_PX,
    title: t.fixes,
    description: fixes.length === 0 ? t.noFixes : `${told.join("; ")}.`,
    shapes: [
      ...x.ticks.flatMap((tick): Shape[] => [
        lineOf(
          [
            [x.at(tick), TOP_PX - 6],
            [x.at(tick), foot],
          ],
          tick === 0 ? "strong" : "faint",
          tick === 0 ? 1.5 : 1,
        ),
        textAt(x.at(tick), foot + 16, signed(tick), "middle", "soft"),
      ]),
      textAt(WIDTH_PX - RIGHT_PX, foot + 36, t.fixAxis, "end", "soft"),
      ...rows,
    ],
  };
}

function rowOf(
  { title, gain, verdict }: Fix,
  topPx: number,
  at: (value: number) => number,
): readonly Shape[] {
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
    textAt(LABEL_PX - 10, middle + TEXT_PX / 3, fitted(title, LABEL_PX - 14), "end"),
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
