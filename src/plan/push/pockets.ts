import type { Project } from "../../model/project.ts";
import { PI } from "../../model/units.ts";
import { distanceToRect, distanceToWedge } from "../../model/zoneFrame.ts";
import { blockedByKeepOuts } from "./blocked.ts";
import { doorwayGap } from "./doorwayGap.ts";
import { standingOf } from "./standing.ts";
import { gapAt, type Standing } from "./touchGap.kernel.ts";

/**
 * Dead pockets: places of a ball's centre at which the robot cannot touch the ball at all, wherever it stands and whichever
 * way it faces. No routine can bring such a ball home; only another ball could knock it out. Certain: "dead" is said only
 * where a bound proves it. Keep-outs are taken in by the disc that the robot's body holds (blocked.ts), and the doorway's
 * surroundings as touched, which can only make the dead area smaller; beside keep-outs more may be dead than the upper bound says.
 */
export interface Pockets {
  /** Certainly dead, and at most dead, mm² of places of the centre. */
  readonly deadLowMm2: number;
  readonly deadHighMm2: number;
  /** Whether a ball with its centre here is certainly dead. */
  isDead(xMm: number, yMm: number): boolean;
}

/** Half widths of the first sectors of headings, rad: 10°. */
const FIRST_SECTOR_RAD = PI / 36;
/** Sectors are not cut finer than this, rad; what is still open then is called touched, which is the safe side. */
const LEAST_SECTOR_RAD = 1e-4;

/** @param precisionMm side of the smallest cells, mm */
export function pocketsOf(project: Project, radiusMm: number, precisionMm = 1): Pockets {
  const robot = standingOf(project);
  const gapOf = doorwayGap(project, radiusMm);
  const sides = { x: project.zone.widthMm - 2 * radiusMm, y: project.zone.heightMm - 2 * radiusMm };
  const isBlocked = blockedByKeepOuts(project);
  /** Dead, with everything within so much of it. */
  const cannotTouch = (x: number, y: number, about: number): boolean =>
    gapOf(x, y) > about && (isBlocked(x, y, radiusMm + about) || farther(robot, x, y, radiusMm + about));
  const isDead = (x: number, y: number): boolean => isPlace(project, x, y, radiusMm) && cannotTouch(x, y, 0);
  let low = 0;
  let high = 0;
  const cells = [{ x: radiusMm, y: radiusMm, w: sides.x, h: sides.y }];
  for (let cell = cells.pop(); cell !== undefined; cell = cells.pop()) {
    const { w, h } = cell;
    const x = cell.x + w / 2;
    const y = cell.y + h / 2;
    const half = Math.sqrt(w * w + h * h) / 2;
    if (distanceToWedge(project.zone, x, y) < -half) continue;
    const free = isPlace(project, x, y, radiusMm);
    const isBesideKeepOut = isBlocked(x, y, radiusMm - half);
    if (!isBesideKeepOut && nearer(robot, x, y, radiusMm - half)) continue;
    if (free && cannotTouch(x, y, half)) {
      low += w * h;
      high += w * h;
    } else if (Math.max(w, h) < precisionMm) {
      if (free) high += w * h;
    } else {
      for (let k = 0; k < 4; k++) {
        cells.push({ x: cell.x + ((k & 1) * w) / 2, y: cell.y + ((k >> 1) * h) / 2, w: w / 2, h: h / 2 });
      }
    }
  }
  return { deadLowMm2: low, deadHighMm2: high, isDead };
}

/** A ball can lie here: beside keep-outs, not over the wedge. */
function isPlace(project: Project, x: number, y: number, radiusMm: number): boolean {
  const { zone } = project;
  if (distanceToWedge(zone, x, y) < 0) return false;
  return zone.keepOuts.every((rect) => distanceToRect(rect, x, y) >= radiusMm);
}

/** Some heading brings the robot within `reach` of the point: looked for at sampled headings, so that "true" is certain. */
function nearer(robot: Standing, x: number, y: number, reach: number): boolean {
  if (reach < 0) return false;
  for (let heading = -PI; heading < PI; heading += FIRST_SECTOR_RAD) {
    if (gapAt(robot, x, y, heading) <= reach) return true;
  }
  return false;
}

/** No heading brings the robot within `reach` of the point: certain, by bisection of the headings. */
function farther(robot: Standing, x: number, y: number, reach: number): boolean {
  const sectors: [number, number][] = [];
  for (let heading = -PI + FIRST_SECTOR_RAD; heading < PI; heading += 2 * FIRST_SECTOR_RAD) {
    sectors.push([heading, FIRST_SECTOR_RAD]);
  }
  for (let sector = sectors.pop(); sector !== undefined; sector = sectors.pop()) {
    const [heading, half] = sector;
    const gap = gapAt(robot, x, y, heading);
    if (gap <= reach) return false;
    if (gap - robot.perRad * half > reach) continue;
    if (half < LEAST_SECTOR_RAD) return false;
    sectors.push([heading - half / 2, half / 2], [heading + half / 2, half / 2]);
  }
  return true;
}
