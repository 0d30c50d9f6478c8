import { advancePose } from "../motion/touch.kernel.ts";
import { MAX_PIECES, PIECE, posePiece } from "../motion/trace.kernel.ts";
import { SCRATCH } from "../num/slots.ts";
import { bx, by, radius } from "./balls.kernel.ts";
import {
  edgeDx,
  edgeDy,
  edgeLen,
  edgeX,
  edgeY,
  FREE,
  found,
  probe,
  robot,
  SAFE,
  safeFor,
  shape,
  TOUCH,
} from "./robot.kernel.ts";

/** When the robot first touches a ball at rest, in units of progress along the planned path of its move. */

const pose = { x: 0, y: 0, c: 1, s: 0 };
const start = new Float64Array(SCRATCH);

/**
 * Progress at which the robot first touches resting ball i on the planned pieces, from progress `q` on; +∞ if never.
 * Conservative advancement in units of progress (Mirtich 1996).
 */
export function touchAt(i: number, pieces: Float64Array, count: number, q: number, stopQ: number): number {
  const x = bx[i]!;
  const y = by[i]!;
  const r = radius[i]!;
  const sigma = robot.sigma;
  const { kappa, rate, accel, top } = robot;
  let hit = Number.POSITIVE_INFINITY;
  for (let k = 0; k < count && k < MAX_PIECES; k++) {
    const at = k * PIECE;
    const end = Math.min(pieces[at + 1]!, stopQ);
    if (end <= q) continue;
    const from = Math.max(q, pieces[at]!);
    if (from >= end) continue;
    posePiece(pieces, at, from, start);
    pose.x = start[0]!;
    pose.y = start[1]!;
    pose.c = start[2]!;
    pose.s = start[3]!;
    robot.sigma = start[5]!;
    robot.kappa = start[6]!;
    if (passes(x, y, r, end - from)) continue;
    robot.rate = robot.top = 1;
    robot.accel = 0;
    hit = touchOnPiece(x, y, r, from, end);
    if (hit < end) break;
    hit = Number.POSITIVE_INFINITY;
  }
  robot.sigma = sigma;
  robot.kappa = kappa;
  robot.rate = rate;
  robot.accel = accel;
  robot.top = top;
  return hit;
}

/** The robot, moving on from `pose` by `length`, stays clear of the circle of radius r around (x, y) by a plain look at where it can be at all. */
function passes(x: number, y: number, r: number, length: number): boolean {
  const { sigma, kappa } = robot;
  const dx = x - pose.x;
  const dy = y - pose.y;
  const far = Math.sqrt(dx * dx + dy * dy);
  const way = length * (sigma < 0 ? -sigma : sigma);
  if (far > way + shape.farthest + r + TOUCH) return true;
  if (sigma === 0) return false;
  // Straight on but for a turn of so much: the strip that the footprint sweeps, wider by what the turn can swing any part of it.
  const swing = (kappa < 0 ? -kappa : kappa) * length;
  if (swing > 0.1) return false;
  const near = r + TOUCH + swing * (shape.farthest + way);
  const px = pose.c * dx + pose.s * dy;
  const py = pose.c * dy - pose.s * dx;
  return (
    py > shape.maxY + near ||
    py < shape.minY - near ||
    px > shape.maxX + near + (sigma > 0 ? way : 0) ||
    px < shape.minX - near - (sigma < 0 ? way : 0)
  );
}

/** Conservative steps before a grazing pass is taken as a touch; 15 are usual at the most. */
const MAX_ADVANCES = 100;

function touchOnPiece(x: number, y: number, r: number, from: number, end: number): number {
  let q = from;
  for (let step = 0; step < MAX_ADVANCES; step++) {
    const dx = x - pose.x;
    const dy = y - pose.y;
    const px = pose.c * dx + pose.s * dy;
    const py = -pose.s * dx + pose.c * dy;
    probe[0] = px;
    probe[1] = py;
    probe[2] = probe[3] = probe[4] = probe[5] = 0;
    probe[6] = r;
    probe[7] = end - q;
    probe[8] = probe[FREE] = 0;
    safeFor();
    const safe = probe[SAFE]!;
    // A lasting touch that the motion closes on is a touch now; one it only slides along is not.
    if (safe === 0 || (found.lasting && closesOn(px, py, r))) return q;
    const turning = Math.abs(robot.kappa);
    const dq =
      found.lasting && turning > 0
        ? Math.min(safe, LEAVE_STEP / Math.max(1, turning * shape.farthest))
        : safe;
    if (q + dq >= end) return Number.POSITIVE_INFINITY;
    q += dq;
    advancePose(pose, robot.sigma, robot.kappa, dq);
  }
  return q;
}

/** While a touching ball is being left in a curve, progress goes on in steps of this length at the fastest point, mm. */
const LEAVE_STEP = 1;
/** Closing slower than this per unit of progress is sliding along. */
const SLIDE_RATE = 1e-7;

function closesOn(px: number, py: number, r: number): boolean {
  const { sigma, kappa } = robot;
  const n = shape.count;
  for (let k = 0; k < n; k++) {
    const qx = px - edgeX[k]!;
    const qy = py - edgeY[k]!;
    let along = qx * edgeDx[k]! + qy * edgeDy[k]!;
    along = along < 0 ? 0 : along > edgeLen[k]! ? edgeLen[k]! : along;
    const dx = qx - along * edgeDx[k]!;
    const dy = qy - along * edgeDy[k]!;
    const d = Math.sqrt(dx * dx + dy * dy);
    if (d - r > TOUCH) continue;
    const face = (sigma * dx + kappa * ((px - dx) * dy - (py - dy) * dx)) / d;
    if (face > SLIDE_RATE) return true;
  }
  return false;
}
