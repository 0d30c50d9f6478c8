import type { Zone } from "../model/zone.ts";
import { boxOf, doorwayParts, wholeWalls } from "./obstacles.ts";

/** What a beam can meet that does not move: segments x0, y0, x1, y1, … of walls, doorposts and keep-outs, mm. */
export function facesOf(zone: Zone): Float64Array {
  const { widthMm: w, heightMm: h } = zone;
  const faces: number[] = [];
  for (const { nx, ny } of wholeWalls(zone)) {
    const [x0, x1] = nx === 0 ? [0, w] : nx > 0 ? [0, 0] : [w, w];
    const [y0, y1] = ny === 0 ? [0, h] : ny > 0 ? [0, 0] : [h, h];
    faces.push(x0, y0, x1, y1);
  }
  for (const box of [...doorwayParts(zone), ...zone.keepOuts.map(boxOf)]) {
    const { minX, minY, maxX, maxY } = box;
    faces.push(
      minX,
      minY,
      maxX,
      minY,
      maxX,
      minY,
      maxX,
      maxY,
      maxX,
      maxY,
      minX,
      maxY,
      minX,
      maxY,
      minX,
      minY,
    );
  }
  return Float64Array.from(faces);
}

/**
 * Distance from (x, y) to the nearest point of the faces within the cone about the unit direction (c, s), whose half angle
 * has cosine ch and sine sh (below 45°); +∞ if there is none. The nearest point of a segment within a cone is its foot, one
 * of its ends, or where a side of the cone cuts it.
 */
export function faceDistance(
  faces: Float64Array,
  x: number,
  y: number,
  c: number,
  s: number,
  ch: number,
  sh: number,
): number {
  let best = Number.POSITIVE_INFINITY;
  for (let k = 0; k < faces.length; k += 4) {
    const ax = c * (faces[k]! - x) + s * (faces[k + 1]! - y);
    const ay = c * (faces[k + 1]! - y) - s * (faces[k]! - x);
    const ex = c * (faces[k + 2]! - x) + s * (faces[k + 3]! - y) - ax;
    const ey = c * (faces[k + 3]! - y) - s * (faces[k + 2]! - x) - ay;
    const length2 = ex * ex + ey * ey;
    if (length2 === 0) continue;
    const foot = -(ax * ex + ay * ey) / length2;
    best = Math.min(best, at(ax, ay, ex, ey, foot < 0 ? 0 : foot > 1 ? 1 : foot, ch, sh));
    best = Math.min(best, at(ax, ay, ex, ey, 0, ch, sh), at(ax, ay, ex, ey, 1, ch, sh));
    best = Math.min(best, cut(ax, ay, ex, ey, ch, sh), cut(ax, ay, ex, ey, ch, -sh));
  }
  return best;
}

/** Distance of a point of a segment, if it lies in the cone. */
function at(ax: number, ay: number, ex: number, ey: number, share: number, ch: number, sh: number): number {
  const px = ax + share * ex;
  const py = ay + share * ey;
  const aside = py < 0 ? -py : py;
  return px > 0 && aside * ch <= px * sh ? Math.sqrt(px * px + py * py) : Number.POSITIVE_INFINITY;
}

/** Distance along a ray to a segment. */
function cut(ax: number, ay: number, ex: number, ey: number, rx: number, ry: number): number {
  const across = rx * ey - ry * ex;
  if (across === 0) return Number.POSITIVE_INFINITY;
  const share = (ry * ax - rx * ay) / across;
  const along = (ax * ey - ay * ex) / across;
  return share >= 0 && share <= 1 && along > 0 ? along : Number.POSITIVE_INFINITY;
}
