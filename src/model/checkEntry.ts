import { boundingBox, polygonsTouch } from "../geometry/polygon.ts";
import { cos } from "../num/elementary.ts";
import { issueTexts } from "../texts/english/issue.ts";
import { zoneIssueTexts as t } from "../texts/english/zoneIssue.ts";
import { CHECK_TOLERANCE_MM } from "./checkZone.ts";
import { WALLS } from "./choices.ts";
import type { Issue } from "./issue.ts";
import { mm } from "./lengthText.ts";
import { robotOutline } from "./outline.ts";
import type { Robot } from "./robot.ts";
import { canTurnSomewhere, reachMm } from "./turningRoom.ts";
import type { PointMm, Wall, Zone } from "./zone.ts";
import { type EntryOutlines, entryOutlines, rectPolygon, wedgeTriangle } from "./zoneFrame.ts";

/** Whether this robot fits this zone: through the doorway, where it starts, and somewhere to turn. */
export function checkEntry(zone: Zone, robot: Robot): readonly Issue[] {
  const outlines = entryOutlines(zone, robot);
  const width = checkDoorwayWidth(zone, robot, outlines);
  return [
    ...width,
    // A robot wider than the doorway stands in its posts wherever it starts: said once.
    ...(width.length > 0 ? [] : checkStart(zone, outlines)),
    ...checkObstacles(zone, robot, outlines),
    ...checkTurning(zone, robot),
  ];
}

/** Seen along the heading, the doorway is narrower than measured along its wall. */
function checkDoorwayWidth(zone: Zone, robot: Robot, outlines: EntryOutlines): readonly Issue[] {
  if (outlines.footprint.every((point) => beyondWalls(zone, point) <= CHECK_TOLERANCE_MM)) return [];
  const box = boundingBox(robotOutline(robot).footprint);
  const across = box.maxYMm - box.minYMm;
  const opening = zone.doorway.widthMm * Math.abs(cos(robot.entry.headingRad));
  if (across <= opening + CHECK_TOLERANCE_MM) return [];
  return [
    {
      code: "robot-wider-than-doorway",
      path: "robot.shape",
      message: t.robotTooWide,
      got: t.across(mm(across)),
      expected: issueTexts.atMost(mm(opening)),
    },
  ];
}

/** What lies outside the zone must be in the doorway. */
function checkStart(zone: Zone, { footprint }: EntryOutlines): readonly Issue[] {
  const { wall, centreMm, widthMm } = zone.doorway;
  const upright = wall === "left" || wall === "right";
  const outside = pointsOnOrOutsideWalls(zone, footprint);
  const inPost = outside.some((point) => {
    const along = upright ? point.yMm : point.xMm;
    return (
      otherWallsBeyond(zone, point) > CHECK_TOLERANCE_MM ||
      Math.abs(along - centreMm) > widthMm / 2 + CHECK_TOLERANCE_MM
    );
  });
  if (!inPost) return [];
  const box = boundingBox(footprint);
  const got = t.box(mm(box.minXMm), mm(box.maxXMm), mm(box.minYMm), mm(box.maxYMm));
  return [
    {
      code: "entry-in-wall",
      path: "robot.entry",
      message: t.startInWall,
      got,
      expected: t.inDoorway,
    },
  ];
}

/** How far a point lies beyond each wall's line, mm; negative on the inner side. */
function beyond(zone: Zone, { xMm, yMm }: PointMm): Readonly<Record<Wall, number>> {
  return { left: -xMm, right: xMm - zone.widthMm, bottom: -yMm, top: yMm - zone.heightMm };
}

function beyondWalls(zone: Zone, point: PointMm): number {
  return Math.max(...Object.values(beyond(zone, point)));
}

/** The same without the doorway's wall. */
function otherWallsBeyond(zone: Zone, point: PointMm): number {
  const by = beyond(zone, point);
  return Math.max(...WALLS.filter((wall) => wall !== zone.doorway.wall).map((wall) => by[wall]));
}

/** The vertices outside the zone and the points where an edge crosses the doorway's wall: the extremes of the part outside. */
function pointsOnOrOutsideWalls(zone: Zone, outline: readonly PointMm[]): readonly PointMm[] {
  return outline.flatMap((a, i) => {
    const b = outline[(i + 1) % outline.length] ?? a;
    const outA = beyondWalls(zone, a);
    const outB = beyondWalls(zone, b);
    const outside = outA > CHECK_TOLERANCE_MM ? [a] : [];
    const doorA = beyond(zone, a)[zone.doorway.wall];
    const doorB = beyond(zone, b)[zone.doorway.wall];
    if (outA <= CHECK_TOLERANCE_MM === outB <= CHECK_TOLERANCE_MM || doorA > 0 === doorB > 0) return outside;
    const share = doorA / (doorA - doorB);
    return [...outside, { xMm: a.xMm + share * (b.xMm - a.xMm), yMm: a.yMm + share * (b.yMm - a.yMm) }];
  });
}

function checkObstacles(zone: Zone, robot: Robot, { footprint, ground }: EntryOutlines): readonly Issue[] {
  const issues: Issue[] = [];
  if (!robot.climbsWedge && polygonsTouch(ground, wedgeTriangle(zone))) {
    issues.push({
      code: "entry-on-wedge",
      path: "robot.entry",
      message: t.startOnWedge,
      got: t.onWedge,
      expected: t.clearOfWedge,
    });
  }
  zone.keepOuts.forEach((rect, i) => {
    if (!polygonsTouch(footprint, rectPolygon(rect))) return;
    issues.push({
      code: "keep-out-on-entry",
      path: `zone.keepOuts[${i}]`,
      message: t.startOnKeepOut,
      got: t.underRobot,
      expected: t.clearOfStart,
    });
  });
  return issues;
}

function checkTurning(zone: Zone, robot: Robot): readonly Issue[] {
  if (canTurnSomewhere(zone, robot)) return [];
  const reach = reachMm(robotOutline(robot).footprint);
  return [
    {
      code: "robot-cannot-turn",
      path: "robot.shape",
      message: t.noTurn,
      got: t.circle(mm(2 * reach)),
      expected: t.freeCircle,
    },
  ];
}
