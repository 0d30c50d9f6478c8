import type { StopAdvice, TimeToHome } from "../../score/timeToHome.ts";
import { outOf100 } from "../rateWords.ts";
import { type Drawing, type Shape, TEXT_PX } from "./drawing.ts";
import { linearScale, type Scale } from "./scale.ts";

const WIDTH_PX = 640;
const HEIGHT_PX = 340;
const LEFT_PX = 52;
/** Room for the curves' own labels. */
const RIGHT_PX = 110;
const TOP_PX = 30;
const BOTTOM_PX = 44;

/** All balls: unbroken; fewer: ever shorter dashes. */
const DASHES: readonly (readonly number[])[] = [[], [10, 4], [4, 4], [1.5, 4], [10, 3, 2, 3]];

/** Share of runs with at least k balls home over time, each curve with its band, and the best moment to stop. */
export function timeChart(time: TimeToHome, stop: StopAdvice): Drawing {
  const endS = time.timesS.at(-1) ?? 1;
  const x = linearScale([0, endS], [LEFT_PX, WIDTH_PX - RIGHT_PX], 6);
  const y = linearScale([0, 100], [HEIGHT_PX - BOTTOM_PX, TOP_PX]);
  const balls = time.curves.length;
  const stepped = time.curves.map((curve) => ({
    label: curve.balls === balls ? (balls === 1 ? "the ball" : `all ${balls}`) : `${curve.balls} or more`,
    dashes: DASHES[balls - curve.balls] ?? [2, 2],
    shares: curve.shareFrac,
  }));
  const places = spacedOut(stepped.map(({ shares }) => y.at(100 * (shares.at(-1) ?? 0))));
  const curves = stepped.flatMap(({ label, dashes, shares }, i): Shape[] => [
    {
      kind: "area",
      fill: "tint",
      points: [
        ...pathOf(
          time.timesS,
          shares.map((share) => Math.min(1, share + time.bandFrac)),
          x,
          y,
        ),
        ...pathOf(
          time.timesS,
          shares.map((share) => Math.max(0, share - time.bandFrac)),
          x,
          y,
        ).reverse(),
      ],
    },
    { kind: "line", points: pathOf(time.timesS, shares, x, y), ink: "strong", widthPx: 2, dashes },
    {
      kind: "text",
      xPx: WIDTH_PX - RIGHT_PX + 8,
      yPx: (places[i] ?? 0) + TEXT_PX / 3,
      text: `${label}: ${outOf100(shares.at(-1) ?? 0)}`,
      anchor: "start",
      ink: "strong",
    },
  ]);
  return {
    widthPx: WIDTH_PX,
    heightPx: HEIGHT_PX,
    title: "How soon the balls are home",
    description: describe(time, stop),
    shapes: [...axes(x, y), ...curves, ...stopMark(stop, x)],
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

function axes(x: Scale, y: Scale): readonly Shape[] {
  const foot = HEIGHT_PX - BOTTOM_PX;
  return [
    ...y.ticks.flatMap((tick): Shape[] => [
      {
        kind: "line",
        points: [
          [LEFT_PX, y.at(tick)],
          [WIDTH_PX - RIGHT_PX, y.at(tick)],
        ],
        ink: "faint",
        widthPx: 1,
        dashes: [],
      },
      {
        kind: "text",
        xPx: LEFT_PX - 8,
        yPx: y.at(tick) + TEXT_PX / 3,
        text: String(tick),
        anchor: "end",
        ink: "soft",
      },
    ]),
    ...x.ticks.flatMap((tick): Shape[] => [
      {
        kind: "line",
        points: [
          [x.at(tick), foot],
          [x.at(tick), foot + 5],
        ],
        ink: "soft",
        widthPx: 1,
        dashes: [],
      },
      { kind: "text", xPx: x.at(tick), yPx: foot + 20, text: String(tick), anchor: "middle", ink: "soft" },
    ]),
    { kind: "text", xPx: LEFT_PX - 40, yPx: TOP_PX - 12, text: "runs of 100", anchor: "start", ink: "soft" },
    {
      kind: "text",
      xPx: WIDTH_PX - RIGHT_PX,
      yPx: foot + 38,
      text: "seconds since the start",
      anchor: "end",
      ink: "soft",
    },
  ];
}

function stopMark({ best, savedS }: StopAdvice, x: Scale): readonly Shape[] {
  if (best === null || savedS < 1) return [];
  const at = x.at(best.timeS);
  return [
    {
      kind: "line",
      points: [
        [at, TOP_PX],
        [at, HEIGHT_PX - BOTTOM_PX],
      ],
      ink: "soft",
      widthPx: 1.5,
      dashes: [2, 3],
    },
    {
      kind: "text",
      xPx: at,
      yPx: TOP_PX - 12,
      text: `stop at ${best.timeS.toFixed(0)} s`,
      anchor: "middle",
      ink: "strong",
    },
  ];
}

function describe({ curves, trials, timesS, bandFrac }: TimeToHome, { best }: StopAdvice): string {
  const ends = curves.map(
    ({ balls, shareFrac }) => `at least ${balls} home in ${outOf100(shareFrac.at(-1) ?? 0)} of 100 runs`,
  );
  const stop = best === null ? "" : ` The best moment to stop is at ${best.timeS.toFixed(0)} seconds.`;
  return `By ${(timesS.at(-1) ?? 0).toFixed(0)} seconds: ${ends.join(", ")}. From ${trials} runs; the shares are known to within ${outOf100(bandFrac)} of 100.${stop}`;
}
