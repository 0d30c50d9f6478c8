import { findTouch } from "./findTouch.kernel.ts";
import { MIN_LEVER_MM } from "./leaning.kernel.ts";
import { type Lean, leaningStep, leanOn, restOnPost } from "./post.kernel.ts";
import { advancePose, RATE_EPS } from "./touch.kernel.ts";
import { AT_END, MAX_PIECES, type Trace } from "./trace.kernel.ts";

const lean: Lean = { px: 0, py: 0, lever: 0, rate: 0, gap: 0 };
const at = { x: 0, y: 0, c: 1, s: 0 };

/**
 * Turns about a corner of a doorpost or keep-out along which an edge of the robot slides. Returns the progress reached, or
 * −1 − progress when the robot is held there.
 */
export function roundPost(trace: Trace, q0: number, length: number): number {
  const { pose, touch } = trace;
  const outline = trace.around.whole;
  const { sigma, kappa: wanted } = pose;
  let q = q0;
  while (trace.count < MAX_PIECES - 1 && q < length) {
    leanOn(touch, outline, pose.x, pose.y, pose.c, pose.s, sigma, lean);
    const { lever, rate, gap } = lean;
    // By itself it would leave the post. If only its curve keeps it there, the post lets it curve less.
    if (rate + wanted * lever >= -RATE_EPS) return q;
    if (rate < -RATE_EPS && Math.abs(lever) < Math.max(MIN_LEVER_MM, -rate * trace.minLeverMm)) return -1 - q;
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
    findTouch(trace.around, pose, dq, trace.second, touch);
    dq = trace.second.q;
    if (dq > 0) trace.push(q, q + dq, true);
    else restOnPost(touch, pose, outline, -gap);
    q += dq;
    pose.kappa = wanted;
    if (trace.second.kind !== "none") return trace.handOver(dq) ? q : -1 - q;
  }
  return q;
}
