import { robotOutline } from "../../model/outline.ts";
import type { Project } from "../../model/project.ts";
import { reachMm } from "../../model/turningRoom.ts";

/**
 * How far a ball is from where a robot that stands partly in the doorway could touch it, mm; negative where it could. Such a
 * robot has a point in the gap, and no two of its points are farther apart than twice its reach.
 */
export function doorwayGap(project: Project, radiusMm: number): (xMm: number, yMm: number) => number {
  const { zone, robot } = project;
  const { footprint, ground } = robotOutline(robot);
  const reach = 2 * reachMm([...footprint, ...ground]) + radiusMm;
  const { wall, centreMm, widthMm } = zone.doorway;
  const lies = wall === "left" || wall === "right";
  const line = wall === "right" ? zone.widthMm : wall === "top" ? zone.heightMm : 0;
  return (xMm, yMm) => {
    const [along, off] = lies ? [yMm, xMm - line] : [xMm, yMm - line];
    const aside = Math.max(0, Math.abs(along - centreMm) - widthMm / 2);
    return Math.sqrt(aside * aside + off * off) - reach;
  };
}
