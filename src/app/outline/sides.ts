import type { PointMm } from "../../model/zone.ts";

/** An outline with, for each edge (from a point to the next), whether it is meant to touch balls. */
export interface MarkedOutline {
  readonly points: readonly PointMm[];
  readonly edges: readonly boolean[];
}

interface Corner {
  readonly at: PointMm;
  /** Of the edge that leaves it. */
  readonly pushes: boolean;
}

/** A length as it is typed: tenths of a millimetre. */
function tenth(lengthMm: number): number {
  return Math.round(lengthMm * 10) / 10 + 0;
}

/**
 * The outline whose right side is the mirror image of its left one (y > 0). Null where the outline does not cross the
 * middle line exactly twice, once in front and once behind: then nobody can say what its left side is.
 */
export function leftMirrored({ points, edges }: MarkedOutline): MarkedOutline | null {
  const count = points.length;
  const at = (i: number): PointMm => points[((i % count) + count) % count] ?? { xMm: 0, yMm: 0 };
  const isLeft = points.map(({ yMm }) => yMm > 0);
  const entries = isLeft.flatMap((left, i) => (left && !isLeft[(i + count - 1) % count] ? [i] : []));
  const first = entries[0];
  if (first === undefined || entries.length !== 1) return null;
  const length = isLeft.filter((left) => left).length;
  const pushes = (i: number): boolean => edges[((i % count) + count) % count] ?? false;
  const left = Array.from({ length }, (_, i): Corner => ({ at: at(first + i), pushes: pushes(first + i) }));
  const inAt = crossing(at(first), at(first - 1));
  const outAt = crossing(at(first + length - 1), at(first + length));
  const chain: readonly Corner[] = [
    { at: inAt, pushes: pushes(first - 1) },
    ...left,
    { at: outAt, pushes: false },
  ];
  // Backward along the right side: the edge that leaves a mirrored corner is the image of the one that enters it.
  const right = left.map(({ at: { xMm, yMm } }, i) => ({
    at: { xMm, yMm: 0 - yMm },
    pushes: chain[i]?.pushes ?? false,
  }));
  const last = left.at(-1)?.pushes ?? false;
  const corners = [...chain.slice(0, -1), { at: outAt, pushes: last }, ...right.reverse()];
  return withoutStraights(corners);
}

/** A corner counts as one meant for the middle up to this share of its neighbour's distance from there. */
const NEAR_MIDDLE = 0.25;

/**
 * Where an edge that leaves the left side meets the middle line. One that ends far on the right belongs to that side, which goes: what
 * is left goes straight across, or a box with one corner moved back would get a spike.
 */
function crossing(left: PointMm, right: PointMm): PointMm {
  const isNear = -right.yMm <= NEAR_MIDDLE * left.yMm;
  const share = isNear ? left.yMm / (left.yMm - right.yMm) : 0;
  return { xMm: tenth(left.xMm + share * (right.xMm - left.xMm)), yMm: 0 };
}

/** Without corners on the middle line at which an edge only goes straight on. */
function withoutStraights(corners: readonly Corner[]): MarkedOutline {
  const kept = corners.filter(({ at, pushes }, i) => {
    const before = corners[(i + corners.length - 1) % corners.length];
    const after = corners[(i + 1) % corners.length];
    const straight = at.yMm === 0 && before?.at.xMm === at.xMm && after?.at.xMm === at.xMm;
    return !(straight && before.pushes === pushes);
  });
  return { points: kept.map(({ at }) => at), edges: kept.map(({ pushes }) => pushes) };
}

/** The upright rectangle around an outline; its front pushes. */
export function boxAround(points: readonly PointMm[]): MarkedOutline {
  const xs = points.map(({ xMm }) => xMm);
  const ys = points.map(({ yMm }) => yMm);
  const [rear, front, right, left] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)].map(
    tenth,
  );
  const corner = (xMm = 0, yMm = 0): PointMm => ({ xMm, yMm });
  return {
    points: [corner(rear, right), corner(front, right), corner(front, left), corner(rear, left)],
    edges: [false, true, false, false],
  };
}

/** The edges, the nearest to a place first. */
export function nearestEdges(points: readonly PointMm[], to: PointMm): readonly number[] {
  const distances = points.map((a, edge) => distanceToEdge(a, points[(edge + 1) % points.length] ?? a, to));
  return points.map((_, edge) => edge).sort((a, b) => (distances[a] ?? 0) - (distances[b] ?? 0));
}

function distanceToEdge(a: PointMm, b: PointMm, to: PointMm): number {
  const dx = b.xMm - a.xMm;
  const dy = b.yMm - a.yMm;
  const squared = dx * dx + dy * dy;
  const along = squared === 0 ? 0 : ((to.xMm - a.xMm) * dx + (to.yMm - a.yMm) * dy) / squared;
  const share = Math.min(1, Math.max(0, along));
  return Math.hypot(to.xMm - a.xMm - share * dx, to.yMm - a.yMm - share * dy);
}
