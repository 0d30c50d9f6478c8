import { cos, sin } from "../num/elementary.ts";
import type { Bound } from "./arc.ts";
import { GeometryError } from "./error.ts";
import { ARC_TOLERANCE_MM, bandRings, offsetOf } from "./offset.ts";
import { type Region, regionInside, unionOf } from "./region.ts";
import { placed, type Ring } from "./ring.kernel.ts";
import { type SweepLists, sweepRotation, sweepStraight, THIN_MM } from "./sweep.kernel.ts";

export interface SweepPose {
  readonly xMm: number;
  readonly yMm: number;
  readonly headingRad: number;
}

/** A stretch of a path: a straight line without turning, or a rotation about a fixed point. A motion's own pieces fit. */
export interface SweepPiece {
  readonly kind: "line" | "rotation";
  readonly from: SweepPose;
  readonly to: SweepPose;
  /** rotation only */
  readonly centreXMm: number;
  readonly centreYMm: number;
  /** rotation only; signed, counter-clockwise positive */
  readonly angleRad: number;
}

/**
 * The region swept by polylines that move with a robot. Straight moves are exact (parallelograms); rotations have true
 * circular arcs for sides, replaced by straight pieces that stray at most ARC_TOLERANCE_MM: `inside` has chords for
 * outer arcs and tangents for inner ones, `outside` the other way round, so that the true region lies between the two
 * (but for the rounding to the grid, see region.ts). Where no width is swept, a line stands for the part (`threads`).
 */
export interface Sweep {
  readonly inside: Region;
  readonly outside: Region;
  /** Flat polylines; the part each stands for lies within THREAD_SLACK_MM of it, and it within that of the part. */
  readonly threads: readonly (readonly number[])[];
}

/** Largest distance between a thread and the thin part it stands for, mm. */
export const THREAD_SLACK_MM = THIN_MM + ARC_TOLERANCE_MM;

/**
 * Sweeps open polylines along a path. About 8 ms for 5 edges and 40 pieces, half of them turns.
 *
 * @param chains flat [x0, y0, x1, y1, …] in the robot's frame, at least 2 corners each
 * @param start pose before the first piece: what is swept when there is none
 * @param pieces in any order; nothing is assumed between them
 * @throws GeometryError 'too-few-vertices'
 */
export function sweepOf(
  chains: readonly (readonly number[])[],
  start: SweepPose,
  pieces: readonly SweepPiece[],
): Sweep {
  if (chains.some((chain) => chain.length < 4)) {
    throw new GeometryError("too-few-vertices", "a polyline has at least 2 corners");
  }
  const lists: SweepLists = { inside: [], outside: [], threads: [] };
  if (pieces.length === 0) for (const chain of chains) lists.threads.push(at(chain, start));
  for (const piece of pieces) {
    for (const chain of chains) sweepPiece(at(chain, piece.from), piece, lists);
  }
  return { inside: unionOf(lists.inside), outside: unionOf(lists.outside), threads: lists.threads };
}

/**
 * Counter-clockwise rings, overlapping, that together are all points within a distance of what was swept.
 * Bounded as `Sweep` and `offsetOf` say.
 *
 * @param radiusMm ≥ 0; with 0 the swept region itself, threads left out
 */
export function ringsNear(sweep: Sweep, radiusMm: number, bound: Bound): readonly Ring[] {
  const swept = bound === "inside" ? sweep.inside : sweep.outside;
  if (radiusMm === 0) return swept;
  const slack = bound === "inside" ? -THREAD_SLACK_MM : THREAD_SLACK_MM;
  const bands = sweep.threads.flatMap((thread) => bandRings(thread, radiusMm + slack, bound));
  return [...offsetOf(swept, radiusMm, bound), ...bands];
}

/** The region swept by a filled outline (robot's frame, either way round): where it starts, and what its edges sweep. */
export function sweptByOutline(
  outline: Ring,
  start: SweepPose,
  pieces: readonly SweepPiece[],
  bound: Bound,
): Region {
  const sweep = sweepOf([[...outline, ...outline.slice(0, 2)]], start, pieces);
  // A point that is covered later but not at the start of a piece is passed by an edge in between.
  const poses = [start, ...pieces.map((piece) => piece.from)];
  const starts = poses.flatMap((pose) => regionInside(at(outline, pose)));
  return unionOf([...starts, ...(bound === "inside" ? sweep.inside : sweep.outside)]);
}

/** A rotation by less is a straight move: no point within half a metre of the robot leaves the line by half a grid step, and no far centre costs digits. */
const STRAIGHT_RAD = 1e-6;

function sweepPiece(chain: readonly number[], piece: SweepPiece, lists: SweepLists): void {
  const { from, to, centreXMm, centreYMm, angleRad } = piece;
  if (piece.kind === "line" || Math.abs(angleRad) < STRAIGHT_RAD) {
    sweepStraight(chain, to.xMm - from.xMm, to.yMm - from.yMm, lists);
  } else {
    sweepRotation(chain, centreXMm, centreYMm, angleRad, ARC_TOLERANCE_MM, lists);
  }
}

function at(flat: readonly number[], pose: SweepPose): number[] {
  return placed(flat, pose.xMm, pose.yMm, cos(pose.headingRad), sin(pose.headingRad));
}
