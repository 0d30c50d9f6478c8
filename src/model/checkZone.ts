import { issueTexts } from "../texts/english/issue.ts";
import { zoneIssueTexts as t } from "../texts/english/zoneIssue.ts";
import { checkWedgeProfile } from "./checkWedgeProfile.ts";
import type { Issue } from "./issue.ts";
import { mm } from "./lengthText.ts";
import type { Wall, Zone } from "./zone.ts";
import { distanceToWedge, wallLengthMm } from "./zoneFrame.ts";

/** Rounding of sums of lengths, mm; nobody measures to a micrometre. */
export const CHECK_TOLERANCE_MM = 1e-6;

/** What contradicts itself in a zone. */
export function checkZone(zone: Zone): readonly Issue[] {
  return [
    ...checkWedge(zone),
    ...checkWedgeProfile(zone.wedge),
    ...checkDoorway(zone),
    ...checkKeepOuts(zone),
  ];
}

function checkWedge(zone: Zone): readonly Issue[] {
  const { legXMm, legYMm } = zone.wedge;
  const leg = (key: string, length: number, side: number, name: keyof typeof t.legTooLong): Issue[] =>
    length <= side
      ? []
      : [
          {
            code: "wedge-too-large",
            path: `zone.wedge.${key}`,
            message: t.legTooLong[name],
            got: mm(length),
            expected: issueTexts.atMost(mm(side)),
          },
        ];
  return [...leg("legXMm", legXMm, zone.widthMm, "width"), ...leg("legYMm", legYMm, zone.heightMm, "height")];
}

function checkDoorway(zone: Zone): readonly Issue[] {
  const { wall, centreMm, widthMm } = zone.doorway;
  const length = wallLengthMm(zone, wall);
  const from = centreMm - widthMm / 2;
  const to = centreMm + widthMm / 2;
  const got = t.span(mm(from), mm(to));
  if (from < -CHECK_TOLERANCE_MM || to > length + CHECK_TOLERANCE_MM) {
    return [
      {
        code: "doorway-outside-wall",
        path: "zone.doorway.centreMm",
        message: t.doorwayOutside(mm(length)),
        got,
        expected: t.within(0, mm(length)),
      },
    ];
  }
  const free = wallWithoutWedge(zone, wall);
  if (from >= free.from - CHECK_TOLERANCE_MM && to <= free.to + CHECK_TOLERANCE_MM) return [];
  return [
    {
      code: "doorway-on-wedge",
      path: "zone.doorway.centreMm",
      message: t.doorwayOnWedge,
      got,
      expected: t.within(mm(free.from), mm(free.to)),
    },
  ];
}

/** The stretch of a wall that the wedge leaves free. */
function wallWithoutWedge(zone: Zone, wall: Wall): { readonly from: number; readonly to: number } {
  const { corner, legXMm, legYMm } = zone.wedge;
  const right = corner === "lower-right" || corner === "upper-right";
  const upper = corner === "upper-left" || corner === "upper-right";
  const length = wallLengthMm(zone, wall);
  const upright = wall === "left" || wall === "right";
  const touches = upright ? (wall === "right") === right : (wall === "top") === upper;
  const leg = touches ? (upright ? legYMm : legXMm) : 0;
  const atEnd = upright ? upper : right;
  return atEnd ? { from: 0, to: length - leg } : { from: leg, to: length };
}

function checkKeepOuts(zone: Zone): readonly Issue[] {
  return zone.keepOuts.flatMap((rect, i) => {
    const path = `zone.keepOuts[${i}]`;
    const right = rect.xMm + rect.widthMm;
    const top = rect.yMm + rect.heightMm;
    const got = t.box(mm(rect.xMm), mm(right), mm(rect.yMm), mm(top));
    const issue = (code: string, message: string, expected: string): Issue => ({
      code,
      path,
      message,
      got,
      expected,
    });
    if (rect.xMm < 0 || rect.yMm < 0 || right > zone.widthMm || top > zone.heightMm) {
      const expected = t.withinBox(mm(zone.widthMm), mm(zone.heightMm));
      return [issue("keep-out-outside", t.keepOutOutside, expected)];
    }
    const corners = [rect.xMm, right].flatMap((x) => [rect.yMm, top].map((y) => distanceToWedge(zone, x, y)));
    const issues: Issue[] = [];
    if (Math.min(...corners) < 0) {
      issues.push(issue("keep-out-on-wedge", t.keepOutOnWedge, t.clearOfWedge));
    }
    if (blocksDoorway(zone, rect.xMm, right, rect.yMm, top)) {
      issues.push(issue("keep-out-in-doorway", t.keepOutInDoorway, t.clearOfDoorway));
    }
    return issues;
  });
}

function blocksDoorway(zone: Zone, left: number, right: number, bottom: number, top: number): boolean {
  const { wall, centreMm, widthMm } = zone.doorway;
  const atWall = {
    left: left <= 0,
    right: right >= zone.widthMm,
    bottom: bottom <= 0,
    top: top >= zone.heightMm,
  };
  const upright = wall === "left" || wall === "right";
  const [from, to] = upright ? [bottom, top] : [left, right];
  return atWall[wall] && to > centreMm - widthMm / 2 && from < centreMm + widthMm / 2;
}
