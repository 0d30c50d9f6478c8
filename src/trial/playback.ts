import type { Pose } from "../motion/pose.ts";
import { AT_END, PIECE, posePiece } from "../motion/trace.kernel.ts";
import { Trapezoid } from "../motion/trapezoid.ts";
import {
  bx,
  by,
  inertia,
  mode,
  OUT,
  REST,
  RIDING,
  ROLLING,
  roam,
  rollDecel,
  PLAYBACK_SLOT as SLOT,
  slideDecel,
  sx,
  sy,
  vx,
  vy,
} from "./balls.kernel.ts";
import { ARMS_STRIDE, BALL_STRIDE, FRAME_STRIDE, MOVE_STRIDE, type Recording } from "./recording.ts";

export interface BallAt {
  readonly xMm: number;
  readonly yMm: number;
  readonly state: "rest" | "rolling" | "sliding" | "out";
}

/** Index of the last entry ≤ value; 0 if there is none. */
function lastAtMost(sorted: Float64Array, value: number): number {
  let low = 0;
  let high = sorted.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (num(sorted, middle) <= value) low = middle;
    else high = middle - 1;
  }
  return low;
}

function num(values: Float64Array, i: number): number {
  return values[i] ?? 0;
}

/** Index of the move under way at second tS. */
export function moveAt(recording: Recording, tS: number): number {
  return lastAtMost(recording.moveStartS, tS);
}

const profile = new Trapezoid();
const pose = new Float64Array(7);

/** Where the robot is at second tS (clamped to the run). The heading is not wrapped. */
export function robotAt(recording: Recording, tS: number): Pose {
  const { moves, pieces } = recording;
  let index = moveAt(recording, tS);
  let q = progressOf(recording, index, tS);
  while (index > 0 && num(moves, index * MOVE_STRIDE + 7) === 0) {
    index--;
    q = num(moves, index * MOVE_STRIDE + 5);
    q = Math.min(q, progressOf(recording, index, Number.POSITIVE_INFINITY));
  }
  const count = num(moves, index * MOVE_STRIDE + 7);
  let piece = num(moves, index * MOVE_STRIDE + 6);
  const last = piece + count - 1;
  while (piece < last && num(pieces, piece * PIECE + 1) <= q + AT_END) piece++;
  posePiece(pieces, piece * PIECE, q, pose);
  return { xMm: num(pose, 0), yMm: num(pose, 1), headingRad: num(pose, 4) };
}

function progressOf(recording: Recording, index: number, tS: number): number {
  const at = index * MOVE_STRIDE;
  const { moves } = recording;
  profile.set(num(moves, at + 1), num(moves, at + 2) || 1, num(moves, at + 3) || 1);
  const q = profile.distanceAt(tS - num(recording.moveStartS, index)) * num(moves, at);
  return Math.min(q, num(moves, at + 5));
}

/** Angle of the hinged arms at second tS, outward from straight ahead; null where nothing swings. */
export function armsAt(recording: Recording, tS: number): number | null {
  const { arms } = recording;
  if (arms === undefined) return null;
  const index = moveAt(recording, tS);
  const [from = 0, to = 0, rate = 0] = arms.subarray(index * ARMS_STRIDE, (index + 1) * ARMS_STRIDE);
  const way = Math.min(Math.abs(to - from), rate * Math.max(0, tS - num(recording.moveStartS, index)));
  return to < from ? from - way : from + way;
}

/**
 * Where ball `ball` is at second tS: by the engine's own free motion from the frame before, and at an even pace as far aside
 * of it as the contacts of the step took the ball by the next frame, so that a carried ball does not lag and jump.
 */
export function ballAt(recording: Recording, ball: number, tS: number): BallAt {
  const { frameTimeS, frames, ballCount } = recording;
  const frame = lastAtMost(frameTimeS, tS);
  const startS = num(frameTimeS, frame);
  const dt = Math.min(tS, recording.durationS) - startS;
  const state = roamFrom(recording, frame, ball, dt);
  const xMm = num(bx, SLOT);
  const yMm = num(by, SLOT);
  const stepS = num(frameTimeS, frame + 1) - startS;
  if (!(dt > 0 && stepS > dt)) return { xMm, yMm, state };
  roamFrom(recording, frame, ball, stepS);
  const next = ((frame + 1) * ballCount + ball) * FRAME_STRIDE;
  const share = dt / stepS;
  return {
    xMm: xMm + (num(frames, next) - num(bx, SLOT)) * share,
    yMm: yMm + (num(frames, next + 1) - num(by, SLOT)) * share,
    state,
  };
}

/** Puts a ball into the spare slot as it was in a frame and lets it roam for dt seconds; returns its state then. */
function roamFrom(recording: Recording, frame: number, ball: number, dt: number): BallAt["state"] {
  const { frames, ballConstants, ballCount } = recording;
  const at = (frame * ballCount + ball) * FRAME_STRIDE;
  const constants = ball * BALL_STRIDE;
  bx[SLOT] = num(frames, at);
  by[SLOT] = num(frames, at + 1);
  vx[SLOT] = num(frames, at + 2);
  vy[SLOT] = num(frames, at + 3);
  sx[SLOT] = num(frames, at + 4);
  sy[SLOT] = num(frames, at + 5);
  const riding = num(frames, at + 6) === RIDING;
  mode[SLOT] = riding ? ROLLING : num(frames, at + 6);
  inertia[SLOT] = num(ballConstants, constants + 1);
  rollDecel[SLOT] = num(ballConstants, constants + 2);
  slideDecel[SLOT] = num(ballConstants, constants + 3);
  // A riding ball goes as straight and evenly as the robot: the shift to its next place is all there is.
  if (dt > 0 && !riding) roam(SLOT, dt);
  const now = mode[SLOT];
  return now === OUT ? "out" : now === REST ? "rest" : now === ROLLING ? "rolling" : "sliding";
}
