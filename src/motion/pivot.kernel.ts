import { sinCos } from "../num/elementary.ts";
import { type FaceSpan, leftOn, spanOf } from "./face.kernel.ts";
import { findTouch } from "./findTouch.kernel.ts";
import {
  flushAngle,
  leavingAngle,
  leverAt,
  MIN_LEVER_MM,
  placeOn,
  pressing,
  restingOn,
  restOn,
  slideSpeed,
  straightAngle,
} from "./leaning.kernel.ts";
import { slipOff } from "./slip.kernel.ts";
import { RATE_EPS, TOUCH_MM, trig } from "./touch.kernel.ts";
import { MAX_PIECES, type Trace } from "./trace.kernel.ts";

const span: FaceSpan = { low: 0, high: 0 };

/** Turns about the touching vertex, up to the end of the face. Returns the progress reached, or −1 − progress when the robot is held there. */
export function pivot(trace: Trace, q0: number, length: number): number {
  const { pose, touch } = trace;
  const outline = touch.ground ? trace.around.ground : trace.around.whole;
  let q = q0;
  restingOn(touch, pose, outline, span);
  spanOf(trace.around, touch, span.low, span.high, span);
  const vertex = pressing(touch, pose, outline, span);
  if (vertex < 0) {
    trace.flush = true;
    return -1 - q;
  }
  const a = outline.x[vertex]!;
  const b = outline.y[vertex]!;
  if (leftOn(span, placeOn(touch, pose, a, b), 0) < -TOUCH_MM)
    return slipOff(trace, span, outline, vertex, q, length, 0);
  restOn(touch, pose, a, b);
  let angle = -1;
  let turn = 0;
  while (trace.count < MAX_PIECES - 1) {
    const rate = pose.sigma * (touch.nx * pose.c + touch.ny * pose.s);
    const lever = leverAt(touch, pose.c, pose.s, a, b);
    // By itself the robot would take the vertex off the face: driving away, or in a curve that turns faster than the wall.
    const own = rate + pose.kappa * lever;
    if (rate >= 0 || own >= -RATE_EPS) return q;
    if (Math.abs(lever) < Math.max(MIN_LEVER_MM, -rate * trace.minLeverMm)) return -1 - q;
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
    const turning = -hn / leverMid;
    const speed = slideSpeed(touch, pose, a, b, turning);
    const left = leftOn(span, placeOn(touch, pose, a, b), speed);
    if (left <= TOUCH_MM) return slipOff(trace, span, outline, vertex, q, length, q - q0);
    pose.kappa = turning;
    const dq = Math.min(step / Math.abs(turning), length - q, left / Math.abs(speed));
    findTouch(trace.around, pose, dq, trace.second, touch);
    trace.push(q, q + trace.second.q, true);
    q += trace.second.q;
    angle -= Math.abs(pose.kappa) * trace.second.q;
    pose.kappa = kappa;
    if (trace.second.kind !== "none") {
      return trace.second.kind === "corner" && trace.handOver(trace.second.q) ? q : -1 - q;
    }
    if (q >= length || angle <= 1e-12) return q;
  }
  return -1 - q;
}
