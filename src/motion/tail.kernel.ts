import { type FaceSpan, leftOn, spanOf } from "./face.kernel.ts";
import { findTouch } from "./findTouch.kernel.ts";
import {
  flushAngle,
  leverAt,
  PIVOT_STEP_RAD,
  placeOn,
  restingOn,
  restOn,
  STRAY_MM,
  slideSpeed,
  slidingCurve,
  trailing,
} from "./leaning.kernel.ts";
import { slipOff } from "./slip.kernel.ts";
import { RATE_EPS, TOUCH_MM } from "./touch.kernel.ts";
import { AT_END, MAX_PIECES, type Trace } from "./trace.kernel.ts";

/** A tail slides along a wall in pieces of this share of its lever arm: the angle grows by a tenth in each. */
const SWING_SHARE = 0.1;
/** Shorter pieces of such a slide are driven at the curvature they begin with, mm. */
const SWING_END_MM = 0.05;
/** A face that no vertex presses on yet guides the robot this far before it is looked at again, mm. */
const GUIDE_MM = 1;

const span: FaceSpan = { low: 0, high: 0 };

/**
 * Drives along or away from the touched face in a curve that presses a vertex on it, turning only as fast as that allows,
 * κ = −(h·n)/ℓ, until the commanded curve takes it off or the face ends. Returns the progress reached, −1 − progress when the
 * robot is held there; `q0` where it drives along a face that has no end.
 */
export function swingTail(trace: Trace, q0: number, length: number): number {
  const { pose, touch } = trace;
  const outline = touch.ground ? trace.around.ground : trace.around.whole;
  const wanted = pose.kappa;
  restingOn(touch, pose, outline, span);
  spanOf(trace.around, touch, span.low, span.high, span);
  let q = q0;
  while (trace.count < MAX_PIECES - 1 && q < length) {
    const rate = pose.sigma * (touch.nx * pose.c + touch.ny * pose.s);
    const isAlong = rate <= RATE_EPS;
    if (isAlong && span.high === Number.POSITIVE_INFINITY) break;
    const vertex = trailing(touch, pose, outline, span);
    if (vertex < 0 && !(isAlong && q === q0)) break;
    let dq = Math.min(GUIDE_MM, length - q);
    pose.kappa = 0;
    if (vertex >= 0) {
      const a = outline.x[vertex]!;
      const b = outline.y[vertex]!;
      const lever = leverAt(touch, pose.c, pose.s, a, b);
      const first = isAlong ? 0 : -rate / lever;
      const speed = slideSpeed(touch, pose, a, b, first);
      const left = leftOn(span, placeOn(touch, pose, a, b), speed);
      if (left <= TOUCH_MM) {
        pose.kappa = wanted;
        return slipOff(trace, span, outline, vertex, q, length, q - q0);
      }
      dq = Math.min(length - q, left / Math.abs(speed));
      if (!isAlong) dq = slide(trace, vertex, lever, first, wanted, dq);
    }
    findTouch(trace.around, pose, dq, trace.second, touch);
    trace.push(q, q + trace.second.q, true);
    q += trace.second.q;
    pose.kappa = wanted;
    if (trace.second.kind !== "none") break;
    if (vertex >= 0) restOn(touch, pose, outline.x[vertex]!, outline.y[vertex]!);
  }
  pose.kappa = wanted;
  return q;
}

/** Sets the curvature of a piece, `most` long at most, in which the vertex slides along the face, `first` at its beginning; returns its length. */
function slide(
  trace: Trace,
  vertex: number,
  lever: number,
  first: number,
  wanted: number,
  most: number,
): number {
  const { pose, touch } = trace;
  const outline = touch.ground ? trace.around.ground : trace.around.whole;
  const a = outline.x[vertex]!;
  const b = outline.y[vertex]!;
  const angle = Math.min(
    PIVOT_STEP_RAD,
    flushAngle(touch, pose, outline, vertex, first > 0 ? 1 : -1) + AT_END,
  );
  // At an even curvature the vertex leaves the face and comes back to it: bend·dq²/8 away at most.
  const bend = Math.abs(first * slideSpeed(touch, pose, a, b, first)) + 1e-12;
  let dq = Math.min(
    most,
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
  return dq;
}
