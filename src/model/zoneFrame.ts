import { cos, sin } from "../num/elementary.ts";
import { robotOutline } from "./outline.ts";
import type { Robot } from "./robot.ts";
import type { PointMm, RectMm, Wall, Zone } from "./zone.ts";

/** Unit vector from the wall into the zone. */
const INWARD: Readonly<Record<Wall, readonly [number, number]>> = {
  left: [1, 0],
  right: [-1, 0],
  bottom: [0, 1],
  top: [0, -1],
};

/** Outlines of the robot as it stands when the routine starts, without start pose error; zone frame, counter-clockwise. */
export interface EntryOutlines {
  readonly footprint: readonly PointMm[];
  readonly ground: readonly PointMm[];
}

export function entryOutlines(zone: Zone, robot: Robot): EntryOutlines {
  const outline = robotOutline(robot);
  const place = zoneFromRobot(zone, robot);
  return { footprint: outline.footprint.map(place), ground: outline.ground.map(place) };
}

/** Turns the robot's forward axis out of the doorway's inward normal: exact for a heading of 0, whatever the wall. */
function zoneFromRobot(zone: Zone, robot: Robot): (point: PointMm) => PointMm {
  const { doorway } = zone;
  const { alongMm, insetMm, headingRad } = robot.entry;
  const [inX, inY] = INWARD[doorway.wall];
  const c = cos(headingRad);
  const s = sin(headingRad);
  const forwardX = c * inX - s * inY;
  const forwardY = s * inX + c * inY;
  const along = doorway.centreMm + alongMm;
  const lineX = doorway.wall === "right" ? zone.widthMm : doorway.wall === "left" ? 0 : along;
  const lineY = doorway.wall === "top" ? zone.heightMm : doorway.wall === "bottom" ? 0 : along;
  const originX = lineX + insetMm * inX;
  const originY = lineY + insetMm * inY;
  return ({ xMm, yMm }) => ({
    xMm: originX + xMm * forwardX - yMm * forwardY,
    yMm: originY + xMm * forwardY + yMm * forwardX,
  });
}

/** Length of a wall, mm. */
export function wallLengthMm(zone: Zone, wall: Wall): number {
  return wall === "left" || wall === "right" ? zone.heightMm : zone.widthMm;
}

/** The wedge's three corners, counter-clockwise, the one in the zone's corner first. */
export function wedgeTriangle(zone: Zone): readonly PointMm[] {
  const { corner, legXMm, legYMm } = zone.wedge;
  const right = corner === "lower-right" || corner === "upper-right";
  const upper = corner === "upper-left" || corner === "upper-right";
  const x = right ? zone.widthMm : 0;
  const y = upper ? zone.heightMm : 0;
  const tipX = { xMm: right ? x - legXMm : x + legXMm, yMm: y };
  const tipY = { xMm: x, yMm: upper ? y - legYMm : y + legYMm };
  // Lower left and upper right turn the same way.
  return right === upper ? [{ xMm: x, yMm: y }, tipX, tipY] : [{ xMm: x, yMm: y }, tipY, tipX];
}

/** Distance from a point to the line of the wedge's long side, mm: positive on the floor, negative over the wedge. */
export function distanceToWedge(zone: Zone, xMm: number, yMm: number): number {
  const { corner, legXMm, legYMm } = zone.wedge;
  const u = corner === "lower-right" || corner === "upper-right" ? zone.widthMm - xMm : xMm;
  const v = corner === "upper-left" || corner === "upper-right" ? zone.heightMm - yMm : yMm;
  return (u * legYMm + v * legXMm - legXMm * legYMm) / Math.sqrt(legXMm * legXMm + legYMm * legYMm);
}

export function rectPolygon({ xMm, yMm, widthMm, heightMm }: RectMm): readonly PointMm[] {
  return [
    { xMm, yMm },
    { xMm: xMm + widthMm, yMm },
    { xMm: xMm + widthMm, yMm: yMm + heightMm },
    { xMm, yMm: yMm + heightMm },
  ];
}

/** Distance from a point to a rectangle, mm; 0 inside. */
export function distanceToRect(rect: RectMm, xMm: number, yMm: number): number {
  const dx = Math.max(rect.xMm - xMm, xMm - rect.xMm - rect.widthMm, 0);
  const dy = Math.max(rect.yMm - yMm, yMm - rect.yMm - rect.heightMm, 0);
  return Math.sqrt(dx * dx + dy * dy);
}
