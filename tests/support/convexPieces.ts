import type { PointMm } from "../../src/model/zone.ts";

/**
 * Cuts a simple counter-clockwise outline into convex pieces, each with at most `most` vertices: ears first (Meisters
 * 1975), then neighbours are joined again wherever the joint stays convex (Hertel and Mehlhorn 1983).
 */
export function convexPieces(outline: readonly PointMm[], most: number): readonly (readonly PointMm[])[] {
  const pieces: number[][] = earsOf(outline);
  let joined = true;
  while (joined) {
    joined = false;
    for (let a = 0; a < pieces.length && !joined; a++) {
      for (let b = a + 1; b < pieces.length && !joined; b++) {
        const whole = joinedPiece(outline, pieces[a]!, pieces[b]!);
        if (whole === null || whole.length > most) continue;
        pieces[a] = whole;
        pieces.splice(b, 1);
        joined = true;
      }
    }
  }
  return pieces.map((piece) => piece.map((i) => outline[i]!));
}

function earsOf(outline: readonly PointMm[]): number[][] {
  const left = outline.map((_, i) => i);
  const ears: number[][] = [];
  while (left.length > 3) {
    const n = left.length;
    const at = left.findIndex((_, k) => isEar(outline, left, k));
    if (at < 0) throw new Error("the outline has no ear: it is not simple, or not counter-clockwise");
    ears.push([left[(at + n - 1) % n]!, left[at]!, left[(at + 1) % n]!]);
    left.splice(at, 1);
  }
  return [...ears, left];
}

function isEar(outline: readonly PointMm[], left: readonly number[], k: number): boolean {
  const n = left.length;
  const corner = [left[(k + n - 1) % n]!, left[k]!, left[(k + 1) % n]!].map((i) => outline[i]!);
  const [a, b, c] = corner as [PointMm, PointMm, PointMm];
  if (turn(a, b, c) <= 0) return false;
  return left.every((i) => {
    const p = outline[i]!;
    return corner.includes(p) || turn(a, b, p) < 0 || turn(b, c, p) < 0 || turn(c, a, p) < 0;
  });
}

/** Two pieces that share an edge, as one; null when they do not, or when the whole is not convex. */
function joinedPiece(
  outline: readonly PointMm[],
  one: readonly number[],
  other: readonly number[],
): number[] | null {
  for (let i = 0; i < one.length; i++) {
    const from = one[i]!;
    const to = one[(i + 1) % one.length]!;
    const j = other.indexOf(to);
    if (j < 0 || other[(j + 1) % other.length] !== from) continue;
    const rest = other.map((_, k) => other[(j + 2 + k) % other.length]!).slice(0, other.length - 2);
    const whole = [...one.slice(0, i + 1), ...rest, ...one.slice(i + 1)];
    return isConvex(whole.map((k) => outline[k]!)) ? whole : null;
  }
  return null;
}

function isConvex(ring: readonly PointMm[]): boolean {
  return ring.every((p, i) => turn(p, ring[(i + 1) % ring.length]!, ring[(i + 2) % ring.length]!) > 0);
}

/** Twice the area of the triangle, positive when it turns left. */
function turn(a: PointMm, b: PointMm, c: PointMm): number {
  return (b.xMm - a.xMm) * (c.yMm - a.yMm) - (b.yMm - a.yMm) * (c.xMm - a.xMm);
}
