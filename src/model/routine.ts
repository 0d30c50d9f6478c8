import type { Program } from "./program.ts";

/**
 * A routine: the moves a robot runs, open loop, from its entry pose. Signs: forward and left (counter-clockwise) positive.
 * Every move starts and ends at rest, with a trapezoidal speed profile.
 */
export type Move =
  /** Straight. */
  | {
      readonly kind: "drive";
      readonly distanceMm: number;
      readonly speedMmPerS: number;
      readonly beside?: Beside;
    }
  /** On the spot, about the axle midpoint. */
  | { readonly kind: "turn"; readonly angleRad: number; readonly rateRadPerS: number }
  /** The axle midpoint drives `distanceMm` along a circle while the heading changes by `angleRad`. */
  | {
      readonly kind: "arc";
      readonly distanceMm: number;
      readonly angleRad: number;
      readonly speedMmPerS: number;
    }
  /** Straight until a wall (or the wedge's edge) stops it: nominal distance plus an overrun of the same sign; the robot pushes on until the time for both has passed, and squares up if its drive can turn it. */
  | {
      readonly kind: "toWall";
      readonly distanceMm: number;
      readonly overrunMm: number;
      readonly speedMmPerS: number;
      readonly beside?: Beside;
    }
  | { readonly kind: "wait"; readonly durationS: number }
  /** The arms' motor runs toward open or closed for so long while the robot stands; a robot whose arms do not move just stands. */
  | { readonly kind: "arms"; readonly to: ArmsEnd; readonly durationS: number };

/** Keeps its distance from the wall beside it: steers on the way so that a distance sensor (its place in the robot's list) reads this. */
export interface Beside {
  readonly sensor: number;
  readonly readsMm: number;
}

export type ArmsEnd = "open" | "closed";

export interface Routine {
  /** Short, stable, unique in its project: the same project always gives the same id for the same routine. */
  readonly id: string;
  /** Name of the pattern that made it, or "own". */
  readonly pattern: string;
  /** One line in plain words. */
  readonly label: string;
  readonly params: Readonly<Record<string, number | string | boolean>>;
  /** What the robot drives, or, with a program, what it would drive if it saw and met nothing. */
  readonly moves: readonly Move[];
  /** What it does instead, deciding by what it senses. */
  readonly program?: Program;
}
