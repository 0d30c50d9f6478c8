import { boundingBox, distanceToPolygon, pointInPolygon } from "../../geometry/polygon.ts";
import { robotOutline } from "../../model/outline.ts";
import type { Project } from "../../model/project.ts";
import type { PointMm } from "../../model/zone.ts";
import { distanceToRect } from "../../model/zoneFrame.ts";

/** Cells of the body's middle are not cut finer than this, mm; what is still open then counts as room, which is the safe side. */
const LEAST_CELL_MM = 2;
const DIAGONAL = Math.sqrt(2);

/**
 * Whether walls and keep-outs leave the robot no room near a ball to touch it: its ground outline holds a disc, whose middle must
 * keep its radius away from everything solid, and no part of the robot is farther from that middle than its reach. Certain where
 * it says true, by bisection of the places of the middle; where the robot is not round, more may be blocked than it says.
 * Positions in the doorway are left to doorwayGap.ts: it must have been asked too.
 *
 * @returns for a ball's centre and how near the robot must come to it, mm
 */
export function blockedByKeepOuts(project: Project): (x: number, y: number, touchMm: number) => boolean {
  const { zone, robot } = project;
  const { footprint, ground } = robotOutline(robot);
  const middle = middleOf(ground);
  const insideMm = insideMmOf(middle, ground);
  const reachMm = [...footprint, ...ground].reduce((most, p) => Math.max(most, distance(p, middle)), 0);
  const solidAt = (x: number, y: number): number =>
    zone.keepOuts.reduce(
      (least, rect) => Math.min(least, distanceToRect(rect, x, y)),
      Math.min(x, y, zone.widthMm - x, zone.heightMm - y),
    );
  return (x, y, touchMm) => {
    const near = reachMm + touchMm;
    if (zone.keepOuts.every((rect) => distanceToRect(rect, x, y) > near + insideMm)) return false;
    if (insideMm <= 0) return false;
    const cells = [{ x, y, half: near }];
    for (let cell = cells.pop(); cell !== undefined; cell = cells.pop()) {
      const { half } = cell;
      const corner = half * DIAGONAL;
      if (distance({ xMm: cell.x, yMm: cell.y }, { xMm: x, yMm: y }) - corner > near) continue;
      if (solidAt(cell.x, cell.y) + corner < insideMm) continue;
      if (half < LEAST_CELL_MM) return false;
      const h = half / 2;
      for (let k = 0; k < 4; k++) {
        cells.push({ x: cell.x + ((k & 1) * 2 - 1) * h, y: cell.y + ((k >> 1) * 2 - 1) * h, half: h });
      }
    }
    return true;
  };
}

function middleOf(outline: readonly PointMm[]): PointMm {
  const { minXMm, minYMm, maxXMm, maxYMm } = boundingBox(outline);
  return { xMm: (minXMm + maxXMm) / 2, yMm: (minYMm + maxYMm) / 2 };
}

/** Radius of the disc about a point that an outline holds, mm; 0 where the point is outside. */
function insideMmOf(middle: PointMm, outline: readonly PointMm[]): number {
  if (!pointInPolygon(middle, outline)) return 0;
  return outline.reduce((least, from, i) => {
    const to = outline[(i + 1) % outline.length] ?? from;
    return Math.min(least, distanceToPolygon(middle, [from, to]));
  }, Number.POSITIVE_INFINITY);
}

function distance(a: PointMm, b: PointMm): number {
  const dx = a.xMm - b.xMm;
  const dy = a.yMm - b.yMm;
  return Math.sqrt(dx * dx + dy * dy);
}
