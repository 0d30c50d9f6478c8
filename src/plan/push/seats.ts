import { PROFILE_STEP_MM, type Profile } from "./profile.ts";

/**
 * A place in the pusher where a ball stays on a straight push: the middle of a plate, the bottom of a V, the body's front
 * between two arms. Robot frame, mm.
 */
export interface Seat {
  readonly xMm: number;
  /** The level part, from right to left; one point in a V. */
  readonly rightMm: number;
  readonly leftMm: number;
  /** From here a ball slides to the level part by itself: up to the crests on both sides (the level part itself where it falls off). */
  readonly catchRightMm: number;
  readonly catchLeftMm: number;
  /** How far the lower of both crests is ahead of the seat: 0 for a plain plate, which loses a ball that gets past its ends. */
  readonly depthMm: number;
}

/** Levels that differ by less than this are one: rounding. mm */
const LEVEL_MM = 1e-6;
/** A level stretch narrower than this is no place to push with, mm; the bottom of a V is one point and needs none. */
const NARROWEST_MM = 4;

/** All seats of a profile, from right to left. */
export function seatsOf(profile: Profile): readonly Seat[] {
  const { xMm } = profile;
  const seats: Seat[] = [];
  let from = 0;
  while (from < xMm.length) {
    let to = from;
    while (to + 1 < xMm.length && Math.abs(at(xMm, to + 1) - at(xMm, from)) < LEVEL_MM) to++;
    const seat = seatAt(profile, from, to);
    if (seat !== null) seats.push(seat);
    from = to + 1;
  }
  return seats;
}

function seatAt(profile: Profile, from: number, to: number): Seat | null {
  const { xMm } = profile;
  const level = at(xMm, from);
  if (level === Number.NEGATIVE_INFINITY) return null;
  const risesRight = at(xMm, from - 1) > level;
  const risesLeft = at(xMm, to + 1) > level;
  const width = (to - from) * PROFILE_STEP_MM;
  if (width < NARROWEST_MM && !(risesRight && risesLeft)) return null;
  let right = from;
  while (risesRight && at(xMm, right - 1) > at(xMm, right)) right--;
  let left = to;
  while (risesLeft && at(xMm, left + 1) > at(xMm, left)) left++;
  return {
    xMm: level,
    rightMm: yAt(profile, from),
    leftMm: yAt(profile, to),
    catchRightMm: yAt(profile, right),
    catchLeftMm: yAt(profile, left),
    depthMm: Math.min(at(xMm, right), at(xMm, left)) - level,
  };
}

function at(xMm: Float64Array, i: number): number {
  return xMm[i] ?? Number.NEGATIVE_INFINITY;
}

function yAt(profile: Profile, i: number): number {
  return profile.firstYMm + i * PROFILE_STEP_MM;
}
