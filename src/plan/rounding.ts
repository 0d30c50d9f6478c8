import { PI } from "../model/units.ts";
import type { PointMm } from "../model/zone.ts";
import { atan2, cos, sin, wrapAngle } from "../num/elementary.ts";

export function direction(from: PointMm, to: PointMm): number {
  return atan2(to.yMm - from.yMm, to.xMm - from.xMm);
}

export function distance(from: PointMm, to: PointMm): number {
  const dx = to.xMm - from.xMm;
  const dy = to.yMm - from.yMm;
  return Math.sqrt(dx * dx + dy * dy);
}

/** A point of a polyline. */
export interface Waypoint extends PointMm {
  /** Radius wanted for its corner, 0 or none: a turn on the spot. */
  readonly radiusMm?: number;
  /** After the turn, back up to the wall behind and square up. */
  readonly squareUp?: boolean;
}

/** A corner of a polyline with the curve that replaces it. */
export interface RoundedCorner {
  readonly point: Waypoint;
  /** Turn from the stretch before to the one after, left positive. */
  readonly turnRad: number;
  readonly radiusMm: number;
  /** From the corner to either end of the curve: radius · tan(turn/2). */
  readonly tangentMm: number;
}

/** Half turns beyond this count as a reversal, which no curve replaces. */
const REVERSAL_RAD = PI / 2 - 1e-6;

/** Rounds the inner corners of a polyline; where two curves would overlap on a short stretch, both shrink alike. */
export function roundedCorners(way: readonly Waypoint[]): readonly RoundedCorner[] {
  const wanted = way.map((point, i) => wantedCorner(way[i - 1], point, way[i + 1]));
  const scales = wanted.map(({ point, tangentMm }, i) => {
    const next = wanted[i + 1];
    if (next === undefined || tangentMm + next.tangentMm === 0) return 1;
    return distance(point, next.point) / (tangentMm + next.tangentMm);
  });
  return wanted.slice(1, -1).map((corner, i) => {
    const scale = Math.min(1, scales[i] ?? 1, scales[i + 1] ?? 1);
    return { ...corner, radiusMm: corner.radiusMm * scale, tangentMm: corner.tangentMm * scale };
  });
}

function wantedCorner(
  before: PointMm | undefined,
  point: Waypoint,
  after: PointMm | undefined,
): RoundedCorner {
  if (before === undefined || after === undefined) {
    return { point, turnRad: 0, radiusMm: 0, tangentMm: 0 };
  }
  const turnRad = wrapAngle(direction(point, after) - direction(before, point));
  const half = Math.abs(turnRad) / 2;
  const radiusMm = half > REVERSAL_RAD ? 0 : (point.radiusMm ?? 0);
  return { point, turnRad, radiusMm, tangentMm: radiusMm === 0 ? 0 : (radiusMm * sin(half)) / cos(half) };
}
