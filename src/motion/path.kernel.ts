import { findTouch } from "./findTouch.kernel.ts";
import { pivot } from "./pivot.kernel.ts";
import { roundPost } from "./round.kernel.ts";
import { swingTail } from "./tail.kernel.ts";
import { AT_END, MAX_PIECES, Trace } from "./trace.kernel.ts";

/**
 * The path of one move: pieces of constant velocity and heading rate per unit of progress (mm driven, or rad turned),
 * walls included. A blocked drive turns about the touching vertex, which slides along the wall, until a face is flush,
 * if its drive can turn it: N·|ℓ| with N ≤ F/|h·n| must beat the yaw resistance of the tracks μ_lat·W·l/4
 * (Wong, Theory of Ground Vehicles; from memory), F = μ_trac·W. ℓ is the lever arm of the wall's push about the robot's
 * origin. Otherwise it stalls crooked. A blocked turn on the spot stalls: the wall would have to shove the robot
 * sideways, which takes more than its tracks can press. Friction along the wall is left out.
 */
export class PathTracer extends Trace {
  /** The robot met a wall, keep-out or the wedge during this move. */
  touched = false;
  /** It ended pressed against something. */
  stalled = false;

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
    const { pose } = this;
    pose.x = x;
    pose.y = y;
    pose.c = c;
    pose.s = s;
    this.heading = heading;
    this.count = 0;
    this.touched = this.stalled = this.flush = this.handed = false;
    this.letGo();
    this.lay(0, sigma, kappa, length);
  }

  /** Goes on with the path planned so far at another curvature, up to `length` in all; nothing to do where it ended at a wall. */
  extend(sigma: number, kappa: number, length: number): void {
    if (!this.stalled) this.lay(this.stopQ, sigma, kappa, length);
  }

  /** Plans on from progress q, where the pose is. */
  private lay(from: number, sigma: number, kappa: number, length: number): void {
    const { pose, around } = this;
    pose.sigma = sigma;
    pose.kappa = kappa;
    let q = from;
    while (q < length && this.count < MAX_PIECES - 1) {
      if (!this.handed) findTouch(around, pose, length - q, this.touch, null);
      const { touch } = this;
      if (!this.handed && touch.q > 0) {
        this.push(q, q + touch.q, false);
        q += touch.q;
        this.letGo();
      }
      this.handed = false;
      if (touch.kind === "none") {
        // The search gave up: nobody knows what comes next, and the robot is not driven into it.
        if (q < length - AT_END) {
          this.stall(q);
          return;
        }
        break;
      }
      this.touched = true;
      if (sigma === 0) {
        this.stall(q);
        return;
      }
      let after =
        touch.kind === "guided"
          ? q
          : touch.kind === "corner"
            ? roundPost(this, q, length)
            : pivot(this, q, length);
      if (after === q && !this.handed) {
        if (pose.kappa === 0 || touch.kind === "corner") {
          this.stall(q);
          return;
        }
        // Only the turning presses: a curve into the face beside the robot, or whose tail swings into the one it drives away from.
        after = swingTail(this, q, length);
        if (after === q && !this.handed) {
          // It drives along a wall, which holds the heading: the tracks slip instead of curving.
          pose.kappa = 0;
          continue;
        }
      }
      if (after < 0) {
        this.stall(-after - 1);
        return;
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
    return touch.q;
  }

  private stall(q: number): void {
    this.stopQ = q;
    this.stalled = true;
  }
}
