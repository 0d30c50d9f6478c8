import { atan2 } from "../num/elementary.ts";
import { type ArcStyle, appendArc } from "./arc.ts";
import type { Ring } from "./ring.kernel.ts";

/** Corners closer than this to the one before are dropped, mm: half the grid, below which a direction is noise. */
const SAME_MM = 0.0005;

/** Cosine below which two edges count as turning back on each other (within 2.6°): such a tip gets an arc whichever way it turns. */
const TIP_COS = -0.999;

/**
 * Raw offset outline of one ring, crossing itself where the offset is narrow: what it winds around counter-clockwise is
 * the offset region. Each edge moves by `distance` to its right; corners that open up get an arc, the others are
 * led over the corner itself so that the loop there winds the wrong way round and drops out.
 * Source: Chen & McMains, Polygon Offsetting by Computing Winding Numbers, ASME DETC 2005 (from memory).
 *
 * @param distance signed, mm; positive: outward for a filled ring
 * @param step largest angle of one straight piece of an arc, rad
 */
export function rawOffset(ring: Ring, distance: number, step: number, style: ArcStyle): Ring {
  const corners = distinctCorners(ring);
  const n = corners.length;
  if (n < 4) return [];
  const out: number[] = [];
  let px = corners[n - 2]!;
  let py = corners[n - 1]!;
  const before = edgeNormal(corners[n - 4]!, corners[n - 3]!, px, py);
  let nx = before.x;
  let ny = before.y;
  // (p) is the corner between the edge that ends in it, normal (n), and the edge from it to the next corner, normal (m).
  for (let i = 0; i < n; i += 2) {
    const qx = corners[i]!;
    const qy = corners[i + 1]!;
    const m = edgeNormal(px, py, qx, qy);
    joinCorner(
      out,
      px,
      py,
      nx * distance,
      ny * distance,
      m.x * distance,
      m.y * distance,
      distance,
      step,
      style,
    );
    nx = m.x;
    ny = m.y;
    px = qx;
    py = qy;
  }
  return out;
}

/** One outline round each straight piece of a polyline; round a single point, or several alike, a disc. */
export function bandOutlines(flat: readonly number[], radius: number, step: number, style: ArcStyle): Ring[] {
  const out: Ring[] = [];
  for (let i = 0; i + 3 < flat.length; i += 2) {
    const band = rawOffset([flat[i]!, flat[i + 1]!, flat[i + 2]!, flat[i + 3]!], radius, step, style);
    if (band.length > 0) out.push(band);
  }
  if (out.length > 0 || flat.length < 2) return out;
  const disc: number[] = [];
  if (style === "inscribed") disc.push(flat[0]! + radius, flat[1]!);
  appendArc(disc, flat[0]!, flat[1]!, radius, 0, TAU, step, style);
  return [disc];
}

/** u, v: from the corner to the moved end of the edge before and to the moved start of the edge after it. */
function joinCorner(
  out: number[],
  px: number,
  py: number,
  ux: number,
  uy: number,
  vx: number,
  vy: number,
  distance: number,
  step: number,
  style: ArcStyle,
): void {
  const square = distance * distance;
  const cosA = (ux * vx + uy * vy) / square;
  const sinA = (ux * vy - uy * vx) / square;
  if (sinA * distance < 0 && cosA > TIP_COS) {
    out.push(px + ux, py + uy, px, py, px + vx, py + vy);
    return;
  }
  let angle = atan2(sinA, cosA);
  // A tip turns the whole way round on the outer side.
  if (angle * distance < 0) angle += distance > 0 ? TAU : -TAU;
  if (style === "inscribed") out.push(px + ux, py + uy);
  appendArc(out, px, py, ux, uy, angle, step, style);
  if (style === "inscribed") out.push(px + vx, py + vy);
}

const TAU = 6.283185307179586;

/** Unit normal to the right of the edge. */
function edgeNormal(ax: number, ay: number, bx: number, by: number): { x: number; y: number } {
  const dx = bx - ax;
  const dy = by - ay;
  const length = Math.sqrt(dx * dx + dy * dy);
  return { x: dy / length, y: -dx / length };
}

function distinctCorners(ring: Ring): number[] {
  const out: number[] = [];
  for (let i = 0; i < ring.length; i += 2) {
    const n = out.length;
    const x = ring[i]!;
    const y = ring[i + 1]!;
    if (n === 0 || Math.abs(x - out[n - 2]!) > SAME_MM || Math.abs(y - out[n - 1]!) > SAME_MM) out.push(x, y);
  }
  const n = out.length;
  const closes =
    n >= 4 && Math.abs(out[0]! - out[n - 2]!) <= SAME_MM && Math.abs(out[1]! - out[n - 1]!) <= SAME_MM;
  if (closes) out.length = n - 2;
  return out;
}
