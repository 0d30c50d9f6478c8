import { AT_END, PIECE, posePiece } from "../motion/path.kernel.ts";
import type { Pose } from "../motion/pose.ts";
import { Trapezoid } from "../motion/trapezoid.ts";
import {
  bx,
  by,
  inertia,
  mode,
  OUT,
  REST,
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
import { BALL_STRIDE, FRAME_STRIDE, MOVE_STRIDE, type Recording } from "./recording.ts";

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

/** Where ball `ball` is at second tS, by the engine's own free motion from the frame before. */
export function ballAt(recording: Recording, ball: number, tS: number): BallAt {
  const frame = lastAtMost(recording.frameTimeS, tS);
  const at = (frame * recording.ballCount + ball) * FRAME_STRIDE;
  const constants = ball * BALL_STRIDE;
  const { frames, ballConstants } = recording;
  bx[SLOT] = num(frames, at);
  by[SLOT] = num(frames, at + 1);
  vx[SLOT] = num(frames, at + 2);
  vy[SLOT] = num(frames, at + 3);
  sx[SLOT] = num(frames, at + 4);
  sy[SLOT] = num(frames, at + 5);
  mode[SLOT] = num(frames, at + 6);
  inertia[SLOT] = num(ballConstants, constants + 1);
  rollDecel[SLOT] = num(ballConstants, constants + 2);
  slideDecel[SLOT] = num(ballConstants, constants + 3);
  const dt = Math.min(tS, recording.durationS) - num(recording.frameTimeS, frame);
  if (dt > 0) roam(SLOT, dt);
  const state =
    mode[SLOT] === OUT
      ? "out"
      : mode[SLOT] === REST
        ? "rest"
        : mode[SLOT] === ROLLING
          ? "rolling"
          : "sliding";
  return { xMm: num(bx, SLOT), yMm: num(by, SLOT), state };
}
