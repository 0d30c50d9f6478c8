import { degFromRad, degPerMFromRadPerMm } from "../model/degrees.ts";
import type { Calibration, CalibrationWarning } from "../practice/calibrate.ts";
import type { Estimate } from "../practice/estimate.ts";
import { calibrationTexts } from "../texts/english/calibration.ts";
import { numberTexts } from "../texts/english/number.ts";
import { fixed } from "../texts/numbers.ts";

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
  readonly unit: string;
  readonly decimals: number;
  readonly shown: (value: number) => number;
  readonly meaning: (value: number, aroundOne: boolean) => string;
}

const same = (value: number): number => value;
const percent = (share: number): number => 100 * share;
const size = (value: number, decimals: number): string => fixed(Math.abs(value), decimals);

const DISPLAYS = {
  distanceScale: {
    unit: "%",
    decimals: 2,
    shown: percent,
    meaning: (x) => calibrationTexts.distance(size(10 * x, 0), x < 0),
  },
  distanceSdFrac: {
    unit: "%",
    decimals: 2,
    shown: percent,
    meaning: (x) => calibrationTexts.distanceScatter(size(10 * x, 0)),
  },
  turnScale: {
    unit: "%",
    decimals: 2,
    shown: percent,
    meaning: (x) => calibrationTexts.turn(size(0.9 * x, 1), x < 0),
  },
  turnSdRad: {
    unit: "°",
    decimals: 2,
    shown: degFromRad,
    meaning: (x) => calibrationTexts.turnScatter(size(x, 1)),
  },
  curvatureRadPerMm: {
    unit: "°/m",
    decimals: 2,
    shown: degPerMFromRadPerMm,
    meaning: (x) => calibrationTexts.curve(size(x, 1), x < 0),
  },
  curvatureSdRadPerMm: {
    unit: "°/m",
    decimals: 2,
    shown: degPerMFromRadPerMm,
    meaning: () => calibrationTexts.curveScatter,
  },
  effectiveGaugeMm: {
    unit: "mm",
    decimals: 1,
    shown: same,
    meaning: () => calibrationTexts.gauge,
  },
  wheelRatio: {
    unit: "",
    decimals: 4,
    shown: same,
    meaning: (x, aroundOne) =>
      aroundOne ? calibrationTexts.wheelsAlike : calibrationTexts.largerWheel(x > 1),
  },
  rollingResistance: {
    unit: "",
    decimals: 4,
    shown: same,
    meaning: (x) => calibrationTexts.rolls(fixed(90_000 / (2 * 9810 * x), 0)),
  },
  restitution: {
    unit: "",
    decimals: 3,
    shown: same,
    meaning: (x) => calibrationTexts.bounces(size(100 * x, 0)),
  },
} as const satisfies Record<string, Display>;

type Quantity = keyof typeof DISPLAYS;

/** What is known, in the order in which a team goes through it. */
export function calibrationLines(found: Calibration): readonly CalibrationLine[] {
  return (Object.keys(DISPLAYS) as Quantity[]).flatMap((quantity) => {
    const estimate = found[quantity];
    return estimate === null ? [] : [lineOf(quantity, estimate)];
  });
}

function lineOf(quantity: Quantity, { value, low, high, count }: Estimate): CalibrationLine {
  const { unit, decimals, shown, meaning }: Display = DISPLAYS[quantity];
  const text = (x: number): string => fixed(shown(x), decimals);
  const behind = unit === "" ? "" : unit.startsWith("°") ? unit : ` ${unit}`;
  return {
    what: calibrationTexts.what[quantity],
    value: `${text(value)}${behind}`,
    range: `${numberTexts.range(text(low), text(high))}${behind}`,
    count,
    meaning: meaning(shown(value), low < 1 && high > 1),
  };
}

export function warningWords(warning: CalibrationWarning): string {
  return calibrationTexts.warnings[warning];
}
