import type { Drive } from "../model/robot.ts";
import { sinCos } from "../num/elementary.ts";
import {
  flushAngle,
  leavingAngle,
  leverAt,
  PIVOT_STEP_RAD,
  pressing,
  restOn,
  STRAY_MM,
  slidingCurve,
  straightAngle,
  trailing,
} from "./leaning.kernel.ts";
import { type Lean, leaningStep, leanOn, restOnPost } from "./post.kernel.ts";
import type { Surroundings } from "./surroundings.ts";
import {
  advancePose,
  findTouch,
  isSameFace,
  type Motion,
  noTouch,
  RATE_EPS,
  type Touch,
  trig,
} from "./touch.kernel.ts";

/**
 * The path of one move: pieces of constant velocity and heading rate per unit of progress (mm driven, or rad turned),
 * walls included. A blocked drive turns about the touching vertex, which slides along the wall, until a face is flush,
 * if its drive can turn it: N·|ℓ| with N ≤ F/|h·n| must beat the yaw resistance of the tracks μ_lat·W·l/4
 * (Wong, Theory of Ground Vehicles; from memory), F = μ_trac·W. ℓ is the lever arm of the wall's push about the robot's
 * origin. Otherwise it stalls crooked. A blocked turn on the spot stalls: the wall would have to shove the robot
 * sideways, which takes more than its tracks can press. Friction along the wall is left out.
 * Over 300 lines: planning, pivoting, rounding posts and swinging work on one pose and one list of pieces.
 */

/** Pieces of one move: first contact, pivot pieces (one or two near square, up to 30 for a long grazing slide), and slides. */
export const MAX_PIECES = 80;
/** Numbers per piece: q0, q1, x, y, c, s, heading, sigma, kappa, pivot flag. */
export const PIECE = 10;
/** Progress this near to the end of a piece is at its end: rounding of a step that was to end there. */
export const AT_END = 1e-9;
/** A tail slides along a wall in pieces of this share of its lever arm: the angle grows by a tenth in each. */
const SWING_SHARE = 0.1;
/** Shorter pieces of such a slide are driven at the curvature they begin with, mm. */
const SWING_END_MM = 0.05;
/** Lever arms below this never turn the robot, mm. */
const MIN_LEVER_MM = 1;
export class PathTracer {
  readonly pieces = new Float64Array(MAX_PIECES * PIECE);
  count = 0;
  /** Progress at which the robot stopped for good; equals the move's length when nothing stopped it. */
  stopQ = 0;
  /** The robot met a wall, keep-out or the wedge during this move. */
  touched = false;
  /** It ended pressed against something. */
  stalled = false;
  /** How the move ended against a wall: flush on a face, crooked, or not at all. */
  flush = false;

  private readonly pose: Motion = { x: 0, y: 0, c: 1, s: 0, sigma: 0, kappa: 0 };
  private heading = 0;
  private touch: Touch = noTouch();
  private second: Touch = noTouch();
  /** The touch to look at next is known already: a turn about a post, or into one, ended there. */
  private handed = false;
  /** Two touches that each stop the turn about the other hold the robot: one may be handed to the other once without way. */
  private isStuck = false;
  private readonly lean: Lean = { px: 0, py: 0, lever: 0, rate: 0, gap: 0 };
  /** May be changed between two moves: arms that have swung. */
  around: Surroundings;
  /** Yaw resistance over drive force, as a lever arm, mm. */
  private readonly minLeverMm: number;

  constructor(around: Surroundings, drive: Drive) {
    this.around = around;
    this.minLeverMm = (drive.lateralFrictionCoeff * drive.trackContactMm) / (4 * drive.tractionCoeff);
  }

  /**
   * Plans one move from a pose. sigma: +1 forward, −1 backward, 0 turn on the spot; kappa: heading change per unit of
   * progress; length ≥ 0 in units of progress. Fills `pieces`, `count`, `stopQ` and the flags.
   */
  plan(
    x: number,
    y: number,
    c: number,
    s: number,
    heading: number,
    sigma: number,
    kappa: number,
    length: number,
  ): void {
    const { pose, around } = this;
    pose.x = x;
    pose.y = y;
    pose.c = c;
    pose.s = s;
    this.heading = heading;
    pose.sigma = sigma;
    pose.kappa = kappa;
    this.count = 0;
    this.touched = this.stalled = this.flush = this.handed = this.isStuck = false;
    let q = 0;
    while (q < length && this.count < MAX_PIECES - 1) {
      if (!this.handed) findTouch(around, pose, length - q, this.touch, null);
      const { touch } = this;
      if (!this.handed && touch.q > 0) {
        this.push(q, q + touch.q, false);
        q += touch.q;
        this.isStuck = false;
      }
      this.handed = false;
      if (touch.kind === "none") break;
      this.touched = true;
      if (touch.kind === "guided") {
        // The wall holds the heading: the tracks slip instead of curving.
        if (sigma === 0) {
          this.stall(q);
          return;
        }
        pose.kappa = 0;
        continue;
      }
      if (sigma === 0) {
        this.stall(q);
        return;
      }
      const after = touch.kind === "corner" ? this.round(q, length) : this.pivot(q, length);
      if (after < 0) {
        this.stall(-after - 1);
        return;
      }
      if (this.handed) {
        q = after;
        pose.kappa = kappa;
        continue;
      }
      if (after === q) {
        // Only the turning presses: a curve whose tail swings into the wall it drives away from.
        if (pose.kappa === 0 || touch.kind === "corner") {
          this.stall(q);
          return;
        }
        q = this.swing(q, length);
        if (q > after) {
          pose.kappa = kappa;
          continue;
        }
        // It drives along the wall: guided.
        pose.kappa = 0;
        continue;
      }
      q = after;
      pose.kappa = kappa;
    }
    if (q < length && this.count >= MAX_PIECES - 1) {
      this.stall(q);
      return;
    }
    this.stopQ = length;
  }

  /** Progress up to which the motion from a pose touches nothing: `length` if it never does. No path is planned. */
  freeLength(
    x: number,
    y: number,
    c: number,
    s: number,
    sigma: number,
    kappa: number,
    length: number,
  ): number {
    const { pose, touch, around } = this;
    pose.x = x;
    pose.y = y;
    pose.c = c;
    pose.s = s;
    pose.sigma = sigma;
    pose.kappa = kappa;
    findTouch(around, pose, length, touch, null);
    return touch.kind === "none" ? length : touch.q;
  }

  private stall(q: number): void {
    this.stopQ = q;
    this.stalled = true;
  }

  /** Appends the current motion for q0 … q1 and moves the pose to its end. */
  private push(q0: number, q1: number, pivot: boolean): void {
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

  /** Turns about the touching vertex. Returns the progress reached, or −1 − progress when the robot is held there. */
  private pivot(q0: number, length: number): number {
    const { pose, touch } = this;
    const outline = touch.ground ? this.around.ground : this.around.whole;
    let q = q0;
    const vertex = pressing(touch, pose, outline);
    if (vertex < 0) {
      this.flush = true;
      return -1 - q;
    }
    const a = outline.x[vertex]!;
    const b = outline.y[vertex]!;
    restOn(touch, pose, a, b);
    let angle = -1;
    let turn = 0;
    while (this.count < MAX_PIECES - 1) {
      const rate = pose.sigma * (touch.nx * pose.c + touch.ny * pose.s);
      const lever = leverAt(touch, pose.c, pose.s, a, b);
      // By itself the robot would take the vertex off the face: driving away, or in a curve that turns faster than the wall.
      const own = rate + pose.kappa * lever;
      if (rate >= 0 || own >= -RATE_EPS) return q;
      if (Math.abs(lever) < Math.max(MIN_LEVER_MM, -rate * this.minLeverMm)) return -1 - q;
      if (angle < 0) {
        turn = lever > 0 ? 1 : -1;
        angle = flushAngle(touch, pose, outline, vertex, turn);
      } else if (lever * turn < 0) return -1 - q;
      if (angle <= 1e-12) return q;
      const step = Math.min(
        angle,
        straightAngle(touch, pose, a, b, rate, lever),
        pose.kappa === 0 ? angle : leavingAngle(touch, pose, a, b, own, turn),
      );
      // The mean over the piece of both rates of a turning body are those at its middle heading, so that the piece ends
      // with the vertex on the face again.
      sinCos(0.5 * turn * step, trig);
      const c = pose.c * trig[1]! - pose.s * trig[0]!;
      const s = pose.s * trig[1]! + pose.c * trig[0]!;
      const hn = pose.sigma * (touch.nx * c + touch.ny * s);
      const leverMid = leverAt(touch, c, s, a, b);
      if (leverMid * turn < MIN_LEVER_MM) return -1 - q;
      if (hn >= 0) return q;
      const kappa = pose.kappa;
      pose.kappa = -hn / leverMid;
      const dq = Math.min(step / Math.abs(pose.kappa), length - q);
      findTouch(this.around, pose, dq, this.second, touch);
      this.push(q, q + this.second.q, true);
      q += this.second.q;
      angle -= Math.abs(pose.kappa) * this.second.q;
      pose.kappa = kappa;
      if (this.second.kind !== "none") {
        return this.second.kind === "corner" && this.handOver(this.second.q) ? q : -1 - q;
      }
      if (q >= length || angle <= 1e-12) return q;
    }
    return -1 - q;
  }

  /**
   * Turns about a corner of a doorpost or keep-out along which an edge of the robot slides. Returns the progress reached, or
   * −1 − progress when the robot is held there.
   */
  private round(q0: number, length: number): number {
    const { pose, touch, lean } = this;
    const outline = this.around.whole;
    const { sigma, kappa: wanted } = pose;
    let q = q0;
    while (this.count < MAX_PIECES - 1 && q < length) {
      leanOn(touch, outline, pose.x, pose.y, pose.c, pose.s, sigma, lean);
      const { lever, rate, gap } = lean;
      // By itself it would leave the post. If only its curve keeps it there, the post lets it curve less.
      if (rate + wanted * lever >= -RATE_EPS) return q;
      if (rate < -RATE_EPS && Math.abs(lever) < Math.max(MIN_LEVER_MM, -rate * this.minLeverMm))
        return -1 - q;
      let dq = Math.min(length - q, leaningStep(touch, pose, outline, lean, -rate / lever));
      // The post has come to the end of the edge: what comes next is another touch.
      if (dq <= AT_END) return q;
      restOnPost(touch, pose, outline, gap);
      // The curvature halfway, so that the piece ends with the post on the edge again.
      at.x = pose.x;
      at.y = pose.y;
      at.c = pose.c;
      at.s = pose.s;
      advancePose(at, sigma, -rate / lever, 0.5 * dq);
      leanOn(touch, outline, at.x, at.y, at.c, at.s, sigma, lean);
      if (lean.lever * lever <= 0) return -1 - q;
      pose.kappa = -lean.rate / lean.lever;
      findTouch(this.around, pose, dq, this.second, touch);
      dq = this.second.q;
      if (dq > 0) this.push(q, q + dq, true);
      else restOnPost(touch, pose, outline, -gap);
      q += dq;
      pose.kappa = wanted;
      if (this.second.kind !== "none") return this.handOver(dq) ? q : -1 - q;
    }
    return q;
  }

  /** Lets the second touch turn the robot on, `dq` after the first began to; false if each of them stops the other's turn. */
  private handOver(dq: number): boolean {
    if (dq <= AT_END && this.isStuck) return false;
    this.isStuck = dq <= AT_END;
    const { touch } = this;
    this.touch = this.second;
    this.second = touch;
    this.handed = true;
    return true;
  }

  /**
   * Drives away from the touched face in a curve whose tail slides along it, turning only as fast as that allows,
   * κ = −(h·n)/ℓ, until the commanded curve takes it off. Returns the progress reached; `q0` where it drives along the face.
   */
  private swing(q0: number, length: number): number {
    const { pose, touch } = this;
    const outline = touch.ground ? this.around.ground : this.around.whole;
    const wanted = pose.kappa;
    let q = q0;
    // A doorpost or a block has ends, about which more than one corner would have to be watched: there the robot is guided.
    if (!isWhole(this.around, touch)) return q0;
    while (this.count < MAX_PIECES - 1 && q < length) {
      const vertex = trailing(touch, pose, outline);
      if (vertex < 0) break;
      const a = outline.x[vertex]!;
      const b = outline.y[vertex]!;
      const rate = pose.sigma * (touch.nx * pose.c + touch.ny * pose.s);
      const lever = leverAt(touch, pose.c, pose.s, a, b);
      if (rate <= RATE_EPS) break;
      const first = -rate / lever;
      const angle = Math.min(
        PIVOT_STEP_RAD,
        flushAngle(touch, pose, outline, vertex, first > 0 ? 1 : -1) + AT_END,
      );
      const along = touch.ny * pose.c - touch.nx * pose.s;
      const ahead = touch.nx * (pose.c * a - pose.s * b) + touch.ny * (pose.s * a + pose.c * b);
      // At an even curvature the vertex leaves the face and comes back to it: bend·dq²/8 away at most.
      const bend = Math.abs(first * (pose.sigma * along - first * ahead)) + 1e-12;
      let dq = Math.min(
        length - q,
        SWING_SHARE * Math.abs(lever),
        angle / Math.abs(first),
        Math.sqrt((8 * STRAY_MM) / bend),
      );
      pose.kappa = slidingCurve(touch, pose, a, b, first, dq);
      // Ends just before the commanded curve is the looser one.
      while (Math.abs(pose.kappa) >= Math.abs(wanted)) {
        dq *= 0.5;
        pose.kappa = dq < SWING_END_MM ? first : slidingCurve(touch, pose, a, b, first, dq);
      }
      findTouch(this.around, pose, dq, this.second, touch);
      this.push(q, q + this.second.q, true);
      q += this.second.q;
      pose.kappa = wanted;
      if (this.second.kind !== "none") break;
      restOn(touch, pose, a, b);
    }
    pose.kappa = wanted;
    return q;
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

/** The face touched is a whole wall or the wedge's edge. */
function isWhole({ planes }: Surroundings, touch: Touch): boolean {
  return planes.some(({ nx, ny, offset }) => isSameFace(touch, nx, ny, offset));
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
