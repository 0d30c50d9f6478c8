import type { Pose } from "../../src/motion/pose.ts";
import type { ConvexOutline } from "../../src/motion/surroundings.ts";

/** A block that stands in the zone, by its sides, mm. */
export interface Sides {
  readonly x0: number;
  readonly x1: number;
  readonly y0: number;
  readonly y1: number;
}

/** How deep something is in something else, mm, and how fast a turn of the robot takes it out, mm per rad. */
interface Sunk {
  readonly depth: number;
  readonly lever: number;
}

/** A point of the zone within the robot's hull, by the edge it is nearest to; negative outside. */
export function sunkInHull(
  hull: ConvexOutline,
  { xMm, yMm, headingRad }: Pose,
  px: number,
  py: number,
): Sunk {
  const [c, s] = [Math.cos(headingRad), Math.sin(headingRad)];
  const [x, y] = [c * (px - xMm) + s * (py - yMm), c * (py - yMm) - s * (px - xMm)];
  let found = { depth: Number.POSITIVE_INFINITY, lever: 0 };
  for (let i = 0; i < hull.count; i++) {
    const [ex, ey] = [hull.normalX[i]!, hull.normalY[i]!];
    const depth = -(ex * (x - hull.x[i]!) + ey * (y - hull.y[i]!));
    if (depth < found.depth) found = { depth, lever: ex * y - ey * x };
  }
  return found;
}

/** A corner of the hull within the block, by the side it is nearest to; negative outside. */
function sunkInBlock(hull: ConvexOutline, { xMm, yMm, headingRad }: Pose, block: Sides, i: number): Sunk {
  const [c, s] = [Math.cos(headingRad), Math.sin(headingRad)];
  const [dx, dy] = [c * hull.x[i]! - s * hull.y[i]!, s * hull.x[i]! + c * hull.y[i]!];
  const [x, y] = [xMm + dx, yMm + dy];
  const sides: readonly Sunk[] = [
    { depth: x - block.x0, lever: dy },
    { depth: block.x1 - x, lever: -dy },
    { depth: y - block.y0, lever: -dx },
    { depth: block.y1 - y, lever: dx },
  ];
  return sides.reduce((least, side) => (side.depth < least.depth ? side : least));
}

/** A drive in steps of `ds` mm: whatever has sunk in deepest turns the robot until it is out, step by step. */
export function courseInSteps(
  hull: ConvexOutline,
  block: Sides,
  from: Pose,
  wayMm: number,
  angleRad: number,
  ds: number,
): Pose {
  let { xMm, yMm, headingRad } = from;
  const corners = [block.x0, block.x1].flatMap((x) => [block.y0, block.y1].map((y) => [x, y] as const));
  const steps = Math.round(Math.abs(wayMm) / ds);
  for (let n = 0; n < steps; n++) {
    xMm += (wayMm / steps) * Math.cos(headingRad);
    yMm += (wayMm / steps) * Math.sin(headingRad);
    headingRad += angleRad / steps;
    for (let k = 0; k < 3; k++) {
      const pose = { xMm, yMm, headingRad };
      let deepest: Sunk = { depth: 0, lever: 1 };
      for (const [x, y] of corners) {
        const sunk = sunkInHull(hull, pose, x, y);
        if (sunk.depth > deepest.depth) deepest = sunk;
      }
      for (let i = 0; i < hull.count; i++) {
        const sunk = sunkInBlock(hull, pose, block, i);
        if (sunk.depth > deepest.depth) deepest = sunk;
      }
      if (deepest.depth === 0) break;
      headingRad += deepest.depth / deepest.lever;
    }
  }
  return { xMm, yMm, headingRad };
}
