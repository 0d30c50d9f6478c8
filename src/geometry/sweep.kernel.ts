import { cos, sin } from "../num/elementary.ts";
import { type ArcStyle, appendArc, arcStepRad } from "./arc.ts";
import { placed, type Ring, ringReversed } from "./ring.kernel.ts";

/** Swept parts narrower than this, mm, count as lines: clipping would lose parts as thin as its grid, and with them all that lies near them. */
export const THIN_MM = 0.02;

/** Straight pieces are merged into one part only where each gains this many tolerances of distance from the centre. */
const MERGE_GAIN = 4;

/** No part of a rotation spans more, rad: keeps every patch a simple outline. */
const WIDEST_PART_RAD = 3.2;

/** What a polyline has swept so far: patches with an inner and an outer outline each, and lines where it swept no width. */
export interface SweepLists {
  readonly inside: Ring[];
  readonly outside: Ring[];
  /** Flat polylines. */
  readonly threads: (readonly number[])[];
}

/** Every edge of a polyline that moves straight by (dx, dy): a parallelogram each, exact. */
export function sweepStraight(chain: readonly number[], dx: number, dy: number, lists: SweepLists): void {
  const shift = Math.sqrt(dx * dx + dy * dy);
  for (let i = 0; i + 3 < chain.length; i += 2) {
    const ax = chain[i]!;
    const ay = chain[i + 1]!;
    const bx = chain[i + 2]!;
    const by = chain[i + 3]!;
    const ex = bx - ax;
    const ey = by - ay;
    const cross = ex * dy - ey * dx;
    const longest = Math.max(shift, Math.sqrt(ex * ex + ey * ey));
    if (Math.abs(cross) <= THIN_MM * longest) {
      // Every point lies within the width of the longer diagonal.
      const along = ex * dx + ey * dy >= 0;
      lists.threads.push(along ? [ax, ay, bx + dx, by + dy] : [bx, by, ax + dx, ay + dy]);
      continue;
    }
    const ring = [ax, ay, bx, by, bx + dx, by + dy, ax + dx, ay + dy];
    const patch = cross > 0 ? ring : ringReversed(ring);
    lists.inside.push(patch);
    lists.outside.push(patch);
  }
}

/**
 * A polyline that rotates about a fixed point. Cut where its distance ρ from the centre has an extreme, each part meets
 * every circle at most once, so that it sweeps {ρ in its range, angle from its own to its own + turn}: a patch with two
 * straight sides (the part before and after) and two arcs. Only the arcs are bounded, everything else is exact.
 */
export function sweepRotation(
  chain: readonly number[],
  centreX: number,
  centreY: number,
  angle: number,
  tolerance: number,
  lists: SweepLists,
): void {
  const count = Math.max(1, Math.ceil(Math.abs(angle) / WIDEST_PART_RAD));
  const turn = angle / count;
  const parts = outwardParts(placed(chain, -centreX, -centreY, 1, 0), MERGE_GAIN * tolerance);
  for (let k = 0; k < count; k++) {
    const c0 = cos(k * turn);
    const s0 = sin(k * turn);
    const c1 = cos((k + 1) * turn);
    const s1 = sin((k + 1) * turn);
    for (const part of parts) {
      const move: PartMove = {
        before: placed(part, 0, 0, c0, s0),
        after: placed(part, 0, 0, c1, s1),
        centreX,
        centreY,
        turn,
      };
      sweepPart(move, tolerance, lists);
    }
  }
}

/** A part before and after its rotation, relative to the centre, nearest corner first. */
interface PartMove {
  readonly before: readonly number[];
  readonly after: readonly number[];
  readonly centreX: number;
  readonly centreY: number;
  readonly turn: number;
}

function sweepPart(move: PartMove, tolerance: number, lists: SweepLists): void {
  const { before, centreX, centreY, turn } = move;
  const n = before.length;
  const near = radiusAt(before, 0);
  const far = radiusAt(before, n - 2);
  if (far * Math.abs(turn) < THIN_MM) {
    lists.threads.push(placed(before, centreX, centreY, 1, 0));
    return;
  }
  if (far - near < THIN_MM) {
    lists.threads.push(thinThread(move, arcStepRad(near, tolerance)));
    return;
  }
  // A quarter of the range at most: then a chord leaves the outer circle more steeply than the last straight piece does, and no outline crosses itself.
  const depth = Math.min(tolerance, (far - near) / MERGE_GAIN);
  const nearStep = arcStepRad(near, depth);
  const farStep = arcStepRad(far, depth);
  lists.inside.push(patchOf(move, nearStep, "circumscribed", farStep, "inscribed"));
  lists.outside.push(patchOf(move, nearStep, "inscribed", farStep, "circumscribed"));
}

function patchOf(
  move: PartMove,
  nearStep: number,
  nearStyle: ArcStyle,
  farStep: number,
  farStyle: ArcStyle,
): Ring {
  const { before, after, centreX, centreY, turn } = move;
  const n = before.length;
  const ring = placed(before, centreX, centreY, 1, 0);
  appendArc(ring, centreX, centreY, before[n - 2]!, before[n - 1]!, turn, farStep, farStyle);
  for (let i = n - 2; i >= 0; i -= 2) ring.push(centreX + after[i]!, centreY + after[i + 1]!);
  appendArc(ring, centreX, centreY, after[0]!, after[1]!, -turn, nearStep, nearStyle);
  return turn > 0 ? ring : ringReversed(ring);
}

/** A part that stays on one circle but for THIN_MM: itself before, along the circle, itself after. */
function thinThread(move: PartMove, step: number): number[] {
  const { before, after, centreX, centreY, turn } = move;
  const thread = [...ringReversed(placed(before, centreX, centreY, 1, 0))];
  appendArc(thread, centreX, centreY, before[0]!, before[1]!, turn, step, "inscribed");
  for (const xy of placed(after, centreX, centreY, 1, 0)) thread.push(xy);
  return thread;
}

/** Cuts a polyline (relative to the centre) into parts whose distance from the centre only grows from corner to corner. */
function outwardParts(chain: readonly number[], shortestGain: number): number[][] {
  const parts: number[][] = [];
  let current: number[] = [];
  let sense = 0;
  const close = (): void => {
    if (current.length >= 4) parts.push(sense < 0 ? [...ringReversed(current)] : current);
    current = [];
  };
  const points = withFeet(chain);
  for (let i = 0; i + 3 < points.length; i += 2) {
    const gain = radiusAt(points, i + 2) - radiusAt(points, i);
    const direction = gain < 0 ? -1 : 1;
    // A piece with little gain stays by itself: merged, the arcs of its neighbours could cross it.
    const short = Math.abs(gain) < shortestGain;
    if (short || direction !== sense || current.length === 0) {
      close();
      current = [points[i]!, points[i + 1]!];
      sense = direction;
    }
    current.push(points[i + 2]!, points[i + 3]!);
    if (short) close();
  }
  close();
  return parts;
}

/** The polyline with the foot of the perpendicular from the centre added to every piece that has it inside. */
function withFeet(chain: readonly number[]): number[] {
  const out: number[] = [chain[0]!, chain[1]!];
  for (let i = 0; i + 3 < chain.length; i += 2) {
    const ax = chain[i]!;
    const ay = chain[i + 1]!;
    const ex = chain[i + 2]! - ax;
    const ey = chain[i + 3]! - ay;
    const square = ex * ex + ey * ey;
    const t = square > 0 ? -(ax * ex + ay * ey) / square : 0;
    if (t > 0 && t < 1) out.push(ax + t * ex, ay + t * ey);
    out.push(chain[i + 2]!, chain[i + 3]!);
  }
  return out;
}

function radiusAt(points: readonly number[], i: number): number {
  return Math.sqrt(points[i]! * points[i]! + points[i + 1]! * points[i + 1]!);
}
