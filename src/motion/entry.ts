import type { Entry, Robot } from "../model/robot.ts";
import { PI } from "../model/units.ts";
import type { Wall, Zone } from "../model/zone.ts";
import { wrapAngle } from "../num/elementary.ts";
import type { Pose } from "./pose.ts";

/** The entry that makes a robot start at a pose of the zone, wherever its doorway is. */
export function entryAt(zone: Zone, { xMm, yMm, headingRad }: Pose): Entry {
  const { wall, centreMm } = zone.doorway;
  const upright = wall === "left" || wall === "right";
  const insets = { left: xMm, right: zone.widthMm - xMm, bottom: yMm, top: zone.heightMm - yMm };
  return {
    alongMm: (upright ? yMm : xMm) - centreMm,
    insetMm: insets[wall],
    headingRad: wrapAngle(headingRad - INWARD_RAD[wall]),
  };
}

const INWARD_RAD: Record<Wall, number> = { left: 0, bottom: PI / 2, right: PI, top: -PI / 2 };

/** Where the robot stands when the routine starts, without the start pose error. */
export function entryPose(zone: Zone, robot: Robot): Pose {
  const { alongMm, insetMm, headingRad } = robot.entry;
  const along = zone.doorway.centreMm + alongMm;
  const heading = wrapAngle(INWARD_RAD[zone.doorway.wall] + headingRad);
  switch (zone.doorway.wall) {
    case "left":
      return { xMm: insetMm, yMm: along, headingRad: heading };
    case "right":
      return { xMm: zone.widthMm - insetMm, yMm: along, headingRad: heading };
    case "bottom":
      return { xMm: along, yMm: insetMm, headingRad: heading };
    case "top":
      return { xMm: along, yMm: zone.heightMm - insetMm, headingRad: heading };
    default:
      return zone.doorway.wall satisfies never;
  }
}
