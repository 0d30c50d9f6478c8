import { robotOutline } from "./outline.ts";
import type { Robot } from "./robot.ts";
import type { PointMm, Zone } from "./zone.ts";
import { distanceToRect, distanceToWedge } from "./zoneFrame.ts";

/** A free circle is found when it is larger than needed by this much, mm, or exactly as large in the middle of a cell. */
const PRECISION_MM = 0.05;

/** Greatest distance of an outline from the robot's origin, mm: the radius of the circle it sweeps when turning on the spot. */
export function reachMm(outline: readonly PointMm[]): number {
  return Math.sqrt(outline.reduce((most, { xMm, yMm }) => Math.max(most, xMm * xMm + yMm * yMm), 0));
}

/**
 * Whether there is a place where the robot can turn all around without touching wall, keep-out or (with its ground outline) the wedge.
 *
 * The room to spare around a point changes by at most the distance moved, so that a square cell of half diagonal h whose
 * middle lacks more than h holds no such place; the others are cut into four until they are smaller than the precision.
 */
export function canTurnSomewhere(zone: Zone, robot: Robot): boolean {
  const outline = robotOutline(robot);
  const reach = reachMm(outline.footprint);
  const groundReach = reachMm(outline.ground);
  const spare = (xMm: number, yMm: number): number => {
    const walls = Math.min(xMm, yMm, zone.widthMm - xMm, zone.heightMm - yMm);
    const blocks = zone.keepOuts.map((rect) => distanceToRect(rect, xMm, yMm));
    const wedge = robot.climbsWedge ? Infinity : distanceToWedge(zone, xMm, yMm) - groundReach;
    return Math.min(Math.min(walls, ...blocks) - reach, wedge);
  };
  const half = Math.max(zone.widthMm, zone.heightMm) / 2;
  const cells = [{ xMm: zone.widthMm / 2, yMm: zone.heightMm / 2, half }];
  for (let cell = cells.pop(); cell !== undefined; cell = cells.pop()) {
    const { xMm, yMm } = cell;
    const room = spare(xMm, yMm);
    if (room >= 0) return true;
    if (room + cell.half * Math.sqrt(2) < 0 || cell.half < PRECISION_MM) continue;
    const h = cell.half / 2;
    for (const [sx, sy] of QUARTERS) cells.push({ xMm: xMm + sx * h, yMm: yMm + sy * h, half: h });
  }
  return false;
}

const QUARTERS = [
  [-1, -1],
  [1, -1],
  [-1, 1],
  [1, 1],
] as const;
