import type { Fix } from "../../jobs/fixes.ts";
import { gainWords, signed } from "../fixWords.ts";
import { type Drawing, fitted, type Shape, TEXT_PX } from "./drawing.ts";
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
  const told = fixes.map((fix) => `${fix.title} ${gainWords(fix.gain)}, ${fix.verdict}`);
  return {
    widthPx: WIDTH_PX,
    heightPx: foot + FOOT_PX,
    title: "What each change would bring",
    description: fixes.length === 0 ? "No change was tried." : `${told.join("; ")}.`,
    shapes: [
      ...x.ticks.flatMap((tick): Shape[] => [
        {
          kind: "line",
          points: [
            [x.at(tick), TOP_PX - 6],
            [x.at(tick), foot],
          ],
          ink: tick === 0 ? "strong" : "faint",
          widthPx: tick === 0 ? 1.5 : 1,
          dashes: [],
        },
        { kind: "text", xPx: x.at(tick), yPx: foot + 16, text: signed(tick), anchor: "middle", ink: "soft" },
      ]),
      {
        kind: "text",
        xPx: WIDTH_PX - RIGHT_PX,
        yPx: foot + 36,
        text: "more or fewer of 100 runs with every ball home",
        anchor: "end",
        ink: "soft",
      },
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
  const tick = (xPx: number): Shape => ({
    kind: "line",
    points: [
      [xPx, middle - 4],
      [xPx, middle + 4],
    ],
    ink: "strong",
    widthPx: 1.5,
    dashes: [],
  });
  return [
    {
      kind: "text",
      xPx: LABEL_PX - 10,
      yPx: middle + TEXT_PX / 3,
      text: fitted(title, LABEL_PX - 14),
      anchor: "end",
      ink: "strong",
    },
    {
      kind: "bar",
      xPx: Math.min(zero, end),
      yPx: topPx,
      widthPx: Math.abs(end - zero),
      heightPx: BAR_PX,
      fill: verdict === "not told apart" ? "hatched" : "tint",
    },
    {
      kind: "line",
      points: [
        [low, middle],
        [high, middle],
      ],
      ink: "strong",
      widthPx: 1.5,
      dashes: [],
    },
    tick(low),
    tick(high),
    {
      kind: "dot",
      xPx: end,
      yPx: middle,
      radiusPx: 3.5,
      fill: verdict === "not told apart" ? "open" : "full",
    },
  ];
}
