import type { Drive } from "../model/robot.ts";
import type { Surroundings } from "./surroundings.ts";
import { advancePose, type Motion, noTouch, type Touch } from "./touch.kernel.ts";

/** Pieces of one move: first contact, pivot pieces (one or two near square, up to 30 for a long grazing slide), and slides. */
export const MAX_PIECES = 80;
/** Numbers per piece: q0, q1, x, y, c, s, heading, sigma, kappa, pivot flag. */
export const PIECE = 10;
/** Progress this near to the end of a piece is at its end: rounding of a step that was to end there. */
export const AT_END = 1e-9;

/**
 * The way of one move as far as it has been planned: pieces of constant velocity and heading rate per unit of progress (mm
 * driven, or rad turned), where the robot is at their end, and what it touches there.
 */
export class Trace {
  readonly pieces = new Float64Array(MAX_PIECES * PIECE);
  count = 0;
  /** Progress at which the robot stopped for good; equals the move's length when nothing stopped it. */
  stopQ = 0;
  /** How the move ended against a wall: flush on a face, crooked, or not at all. */
  flush = false;

  /** At the end of the pieces, with the commanded motion. */
  readonly pose: Motion = { x: 0, y: 0, c: 1, s: 0, sigma: 0, kappa: 0 };
  heading = 0;
  touch: Touch = noTouch();
  second: Touch = noTouch();
  /** The touch to look at next is known already: a turn about a post, or into one, ended there. */
  handed = false;
  /** Two touches that each stop the turn about the other hold the robot: one may be handed to the other once without way. */
  private isStuck = false;
  /** May be changed between two moves: arms that have swung. */
  around: Surroundings;
  /** Yaw resistance over drive force, as a lever arm, mm. */
  readonly minLeverMm: number;

  constructor(around: Surroundings, drive: Drive) {
    this.around = around;
    this.minLeverMm = (drive.lateralFrictionCoeff * drive.trackContactMm) / (4 * drive.tractionCoeff);
  }

  /** The robot is free of what it touched. */
  letGo(): void {
    this.isStuck = false;
  }

  /** Appends the current motion for q0 … q1 and moves the pose to its end. */
  push(q0: number, q1: number, pivot: boolean): void {
    const { pose, pieces } = this;
    const at = this.count * PIECE;
    pieces[at] = q0;
    pieces[at + 1] = q1;
    pieces[at + 2] = pose.x;
    pieces[at + 3] = pose.y;
    pieces[at + 4] = pose.c;
    pieces[at + 5] = pose.s;
    pieces[at + 6] = this.heading;
    pieces[at + 7] = pose.sigma;
    pieces[at + 8] = pose.kappa;
    pieces[at + 9] = pivot ? 1 : 0;
    this.count++;
    advancePose(pose, pose.sigma, pose.kappa, q1 - q0);
    this.heading += pose.kappa * (q1 - q0);
  }

  /** Lets the second touch turn the robot on, `dq` after the first began to; false if each of them stops the other's turn. */
  handOver(dq: number): boolean {
    if (dq <= AT_END && this.isStuck) return false;
    this.isStuck = dq <= AT_END;
    const { touch } = this;
    this.touch = this.second;
    this.second = touch;
    this.handed = true;
    return true;
  }

  /** Pose at progress q (clamped to where the robot stopped), written to `out` [x, y, c, s, heading, sigma, kappa]; sigma and kappa 0 once stopped. */
  poseAt(q: number, out: Float64Array): void {
    const { pieces, count } = this;
    if (count === 0) {
      out[0] = this.pose.x;
      out[1] = this.pose.y;
      out[2] = this.pose.c;
      out[3] = this.pose.s;
      out[4] = this.heading;
      out[5] = 0;
      out[6] = 0;
      return;
    }
    let i = 0;
    while (i < count - 1 && pieces[i * PIECE + 1]! <= q + AT_END) i++;
    posePiece(pieces, i * PIECE, Math.min(q, this.stopQ), out);
    if (q >= this.stopQ) {
      out[5] = 0;
      out[6] = 0;
    }
  }
}

const at = { x: 0, y: 0, c: 1, s: 0 };

/** Pose on one piece at progress q, the same closed form for the engine and for playing back. */
export function posePiece(pieces: Float64Array, offset: number, q: number, out: Float64Array): void {
  const dq = Math.min(q, pieces[offset + 1]!) - pieces[offset]!;
  at.x = pieces[offset + 2]!;
  at.y = pieces[offset + 3]!;
  at.c = pieces[offset + 4]!;
  at.s = pieces[offset + 5]!;
  const sigma = pieces[offset + 7]!;
  const kappa = pieces[offset + 8]!;
  advancePose(at, sigma, kappa, dq);
  out[0] = at.x;
  out[1] = at.y;
  out[2] = at.c;
  out[3] = at.s;
  out[4] = pieces[offset + 6]! + kappa * dq;
  out[5] = sigma;
  out[6] = kappa;
}
