import {
  flushAngle,
  leverAt,
  PIVOT_STEP_RAD,
  restOn,
  STRAY_MM,
  slidingCurve,
  trailing,
} from "./leaning.kernel.ts";
import type { Surroundings } from "./surroundings.ts";
import { findTouch, isSameFace, RATE_EPS, type Touch } from "./touch.kernel.ts";
import { AT_END, MAX_PIECES, type Trace } from "./trace.kernel.ts";

/** A tail slides along a wall in pieces of this share of its lever arm: the angle grows by a tenth in each. */
const SWING_SHARE = 0.1;
/** Shorter pieces of such a slide are driven at the curvature they begin with, mm. */
const SWING_END_MM = 0.05;

/**
 * Drives away from the touched face in a curve whose tail slides along it, turning only as fast as that allows,
 * κ = −(h·n)/ℓ, until the commanded curve takes it off. Returns the progress reached; `q0` where it drives along the face.
 */
export function swingTail(trace: Trace, q0: number, length: number): number {
  const { pose, touch } = trace;
  const outline = touch.ground ? trace.around.ground : trace.around.whole;
  const wanted = pose.kappa;
  let q = q0;
  // A doorpost or a block has ends, about which more than one corner would have to be watched: there the robot is guided.
  if (!isWhole(trace.around, touch)) return q0;
  while (trace.count < MAX_PIECES - 1 && q < length) {
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
    findTouch(trace.around, pose, dq, trace.second, touch);
    trace.push(q, q + trace.second.q, true);
    q += trace.second.q;
    pose.kappa = wanted;
    if (trace.second.kind !== "none") break;
    restOn(touch, pose, a, b);
  }
  pose.kappa = wanted;
  return q;
}

/** The face touched is a whole wall or the wedge's edge. */
function isWhole({ planes }: Surroundings, touch: Touch): boolean {
  return planes.some(({ nx, ny, offset }) => isSameFace(touch, nx, ny, offset));
}
