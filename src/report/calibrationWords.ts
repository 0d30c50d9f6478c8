import { degFromRad, degPerMFromRadPerMm } from "../model/degrees.ts";
import type { Calibration, CalibrationWarning } from "../practice/calibrate.ts";
import type { Estimate } from "../practice/estimate.ts";

/** One measured quantity, ready to be shown. */
export interface CalibrationLine {
  readonly what: string;
  /** "−3.1 %" */
  readonly value: string;
  /** "−3.6 to −2.6 %" */
  readonly range: string;
  readonly count: number;
  /** What it means, one sentence. */
  readonly meaning: string;
}

interface Display {
  readonly what: string;
  readonly unit: string;
  readonly decimals: number;
  readonly shown: (value: number) => number;
  readonly meaning: (value: number, aroundOne: boolean) => string;
}

const same = (value: number): number => value;
const percent = (share: number): number => 100 * share;
const size = (value: number, decimals: number): string => Math.abs(value).toFixed(decimals);

const DISPLAYS = {
  distanceScale: {
    what: "distance, real over commanded",
    unit: "%",
    decimals: 2,
    shown: percent,
    meaning: (x) => `Told to drive 1000 mm it drives ${size(10 * x, 0)} mm too ${x < 0 ? "little" : "far"}.`,
  },
  distanceSdFrac: {
    what: "scatter of a distance",
    unit: "%",
    decimals: 2,
    shown: percent,
    meaning: (x) => `Two of three runs of 1000 mm end within ${size(10 * x, 0)} mm of what is usual for it.`,
  },
  turnScale: {
    what: "turn, real over commanded",
    unit: "%",
    decimals: 2,
    shown: percent,
    meaning: (x) => `Told to turn by 90° it turns ${size(0.9 * x, 1)}° too ${x < 0 ? "little" : "far"}.`,
  },
  turnSdRad: {
    what: "scatter of a turn",
    unit: "°",
    decimals: 2,
    shown: degFromRad,
    meaning: (x) => `Two of three turns end within ${size(x, 1)}° of what is usual for it.`,
  },
  curvatureRadPerMm: {
    what: "curve on a straight, left positive",
    unit: "°/m",
    decimals: 2,
    shown: degPerMFromRadPerMm,
    meaning: (x) =>
      `On a straight of 1000 mm its heading turns ${size(x, 1)}° to the ${x < 0 ? "right" : "left"}.`,
  },
  curvatureSdRadPerMm: {
    what: "scatter of that curve",
    unit: "°/m",
    decimals: 2,
    shown: degPerMFromRadPerMm,
    meaning: () => "How differently it curves from run to run, a crooked start included.",
  },
  effectiveGaugeMm: {
    what: "effective gauge",
    unit: "mm",
    decimals: 1,
    shown: same,
    meaning: () => "Reckon turns with this gauge: it has the slip of the tracks in it.",
  },
  wheelRatio: {
    what: "right over left wheel",
    unit: "",
    decimals: 4,
    shown: same,
    meaning: (x, aroundOne) =>
      aroundOne
        ? "The wheels may well be of one size: more runs would tell."
        : `The ${x > 1 ? "right" : "left"} wheel acts as the larger one.`,
  },
  rollingResistance: {
    what: "rolling resistance of the ball",
    unit: "",
    decimals: 4,
    shown: same,
    meaning: (x) => `From 300 mm/s it rolls ${(90_000 / (2 * 9810 * x)).toFixed(0)} mm before it stops.`,
  },
  restitution: {
    what: "bounce of the ball",
    unit: "",
    decimals: 3,
    shown: same,
    meaning: (x) => `It comes off a hard wall with ${size(100 * x, 0)} % of its speed.`,
  },
} as const satisfies Record<string, Display>;

type Quantity = keyof typeof DISPLAYS;

/** What is known, in the order in which a team goes through it. */
export function calibrationLines(found: Calibration): readonly CalibrationLine[] {
  return (Object.keys(DISPLAYS) as Quantity[]).flatMap((quantity) => {
    const estimate = found[quantity];
    return estimate === null ? [] : [lineOf(DISPLAYS[quantity], estimate)];
  });
}

function lineOf(display: Display, { value, low, high, count }: Estimate): CalibrationLine {
  const { what, unit, decimals, shown, meaning } = display;
  const text = (x: number): string => shown(x).toFixed(decimals).replace("-", "−");
  const behind = unit === "" ? "" : unit.startsWith("°") ? unit : ` ${unit}`;
  return {
    what,
    value: `${text(value)}${behind}`,
    range: `${text(low)} to ${text(high)}${behind}`,
    count,
    meaning: meaning(shown(value), low < 1 && high > 1),
  };
}

export function warningWords(warning: CalibrationWarning): string {
  switch (warning) {
    case "turns-and-squares-differ":
      return "Turns and squares contradict each other: the turns are taken. Was the floor the same, the battery as full?";
    case "sides-differ":
      return "The squares have different sides, so they are left out: drive them all of one size.";
    case "too-few":
      return "Some test was made only once, which tells nothing about scatter: make each at least three times.";
    default:
      return warning satisfies never;
  }
}
