import { patternTexts } from "../texts/english/pattern.ts";
/**
 * Numbers by which every routine of a pattern can be varied a little at a time, beside its speed. They are set in whole
 * steps, finer than a robot could tell, so that an id holds them exactly.
 */
export interface Dials {
  /** Distance of neighbouring lanes, laps or rounds, share of the pusher's width: 1 − the overlap. */
  readonly spacingFrac?: number;
  /** Radius of the curves, in tip radii of the robot. */
  readonly radiusFrac?: number;
  /** Room beside walls on top of the settings' clearance, mm. */
  readonly standOffMm?: number;
}

export type DialName = keyof Dials;

interface DialScale {
  /** Letter in an id, before the number of steps. */
  readonly letter: string;
  /** Steps in one unit. */
  readonly stepsPerUnit: number;
  /** Range that makes sense for any robot, in steps. */
  readonly low: number;
  readonly high: number;
  /** Widest way from the usual value that a search goes, in steps. */
  readonly reach: number;
  readonly words: (steps: number) => string;
}

/** In the order in which they stand in an id. */
export const DIALS: Readonly<Record<DialName, DialScale>> = {
  spacingFrac: {
    letter: "s",
    stepsPerUnit: 100,
    low: 40,
    high: 110,
    reach: 25,
    words: (steps) => patternTexts.apart(steps),
  },
  radiusFrac: {
    letter: "r",
    stepsPerUnit: 100,
    low: 20,
    high: 150,
    reach: 40,
    words: (steps) => patternTexts.curves(steps),
  },
  standOffMm: {
    letter: "w",
    stepsPerUnit: 1,
    low: 0,
    high: 40,
    reach: 20,
    words: (steps) => patternTexts.moreRoom(steps),
  },
};

export const DIAL_NAMES: readonly DialName[] = ["spacingFrac", "radiusFrac", "standOffMm"];

/** Values in whole steps. */
export type Turned = Readonly<Partial<Record<DialName, number>>>;

export function stepsOf(name: DialName, value: number): number {
  return Math.round(value * DIALS[name].stepsPerUnit);
}

export function dialValue(name: DialName, steps: number): number {
  return steps / DIALS[name].stepsPerUnit;
}

/** "s83-r55" in the order of the dials; "" when none is turned. */
export function turnedCode(turned: Turned): string {
  return DIAL_NAMES.flatMap((name) => {
    const steps = turned[name];
    return steps === undefined ? [] : [`${DIALS[name].letter}${steps}`];
  }).join("-");
}

/** @returns null for what `turnedCode` never prints */
export function turnedFromCode(code: string): Turned | null {
  const turned: Partial<Record<DialName, number>> = {};
  for (const part of code.split("-")) {
    const name = DIAL_NAMES.find((each) => DIALS[each].letter === part[0]);
    const steps = Number(part.slice(1));
    if (name === undefined || !/^\d+$/.test(part.slice(1))) return null;
    if (steps < DIALS[name].low || steps > DIALS[name].high) return null;
    turned[name] = steps;
  }
  return turnedCode(turned) === code ? turned : null;
}
