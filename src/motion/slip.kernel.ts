import type { FaceSpan } from "./face.kernel.ts";
import { findTouch } from "./findTouch.kernel.ts";
import { placeOn } from "./leaning.kernel.ts";
import { type Lean, leanOn } from "./post.kernel.ts";
import type { ConvexOutline } from "./surroundings.ts";
import { RATE_EPS, type Touch } from "./touch.kernel.ts";
import type { Trace } from "./trace.kernel.ts";

/** What becomes of a vertex that slides off the end of a face. */

/** Way driven past the end of a face before the robot is looked at again, mm: what its curve takes it down meanwhile is less than the overlap that is allowed. */
const SLIP_MM = 0.05;

/** Makes `out` the touch of the post at the end of the face that the vertex is nearest to, by the edge that comes to lie on it. */
function postAt(
  touch: Touch,
  { low, high }: FaceSpan,
  place: number,
  outline: ConvexOutline,
  vertex: number,
  out: Touch,
): void {
  const isHigh = high - place < place - low;
  const end = isHigh ? high : low;
  const { nx, ny, offset } = touch;
  out.kind = "corner";
  out.ground = touch.ground;
  out.nx = offset * nx + end * ny;
  out.ny = offset * ny - end * nx;
  out.offset = Number.NaN;
  out.edge = isHigh ? (vertex + outline.count - 1) % outline.count : vertex;
}

const lean: Lean = { px: 0, py: 0, lever: 0, rate: 0, gap: 0 };

/**
 * The vertex has come to the end of the face, or lies beyond it: from here on the post turns the robot, if its own motion
 * presses on it; otherwise it drives on. Returns the progress reached, or −1 − progress when the robot is held there.
 */
export function slipOff(
  trace: Trace,
  span: FaceSpan,
  outline: ConvexOutline,
  vertex: number,
  q: number,
  length: number,
  way: number,
): number {
  const { pose, touch, second } = trace;
  const place = placeOn(touch, pose, outline.x[vertex]!, outline.y[vertex]!);
  postAt(touch, span, place, outline, vertex, second);
  leanOn(second, outline, pose.x, pose.y, pose.c, pose.s, pose.sigma, lean);
  if (lean.rate + pose.kappa * lean.lever < -RATE_EPS) return trace.handOver(way) ? q : -1 - q;
  findTouch(trace.around, pose, Math.min(SLIP_MM, length - q), second, touch);
  if (second.q > 0) {
    trace.push(q, q + second.q, false);
    return q + second.q;
  }
  return second.kind !== "guided" && trace.handOver(way) ? q : -1 - q;
}
