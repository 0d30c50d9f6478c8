import { distanceToPolygon } from "../geometry/polygon.ts";
import { issueTexts } from "../texts/english/issue.ts";
import { zoneIssueTexts as t } from "../texts/english/zoneIssue.ts";
import type { BallGroup } from "./ball.ts";
import { CHECK_TOLERANCE_MM } from "./checkZone.ts";
import type { Issue } from "./issue.ts";
import { tryLayout } from "./layoutTrial.ts";
import { mm } from "./lengthText.ts";
import { shownBallName } from "./presetNames.ts";
import { ballsOf, MAX_BALLS, type Project } from "./project.ts";
import type { Rules } from "./rules.ts";
import type { PointMm, Zone } from "./zone.ts";
import { distanceToRect, entryOutlines } from "./zoneFrame.ts";

/** Whether the balls fit the zone, its wedge and their own layout. */
export function checkBalls(project: Project): readonly Issue[] {
  const wedge = project.balls.flatMap((group, i) => checkGroup(project.zone, project.rules, group, i));
  const { layout } = project.rules;
  return [
    ...wedge,
    ...(layout.kind === "fixed" ? checkPositions(project, layout.positions) : checkRandomLayout(project)),
  ];
}

/** How many balls there are; needs nothing else of the project. */
export function checkBallCount(groups: readonly BallGroup[]): readonly Issue[] {
  const count = groups.reduce((sum, group) => sum + group.count, 0);
  const expected = t.ballCount(MAX_BALLS);
  if (count === 0) {
    return [
      {
        code: "no-balls",
        path: "balls",
        message: t.noBalls,
        got: t.noBall,
        expected,
      },
    ];
  }
  if (count <= MAX_BALLS) return [];
  const message = t.tooManyBalls(count, MAX_BALLS);
  return [{ code: "too-many-balls", path: "balls", message, got: t.balls(count), expected }];
}

function checkGroup(zone: Zone, rules: Rules, { kind }: BallGroup, index: number): readonly Issue[] {
  const { wedge } = zone;
  const radius = kind.diameterMm / 2;
  const issues: Issue[] = [];
  if (wedge.lipMm >= radius) {
    const message = t.lipTooHigh(shownBallName(kind));
    issues.push({
      code: "lip-too-high",
      path: "zone.wedge.lipMm",
      message,
      got: mm(wedge.lipMm),
      expected: issueTexts.below(mm(radius)),
    });
  }
  if (!holds(wedge.legXMm, wedge.legYMm, radius, rules.delivered)) {
    const message = t.wedgeTooSmall(shownBallName(kind));
    issues.push({
      code: "wedge-too-small",
      path: `balls[${index}]`,
      message,
      got: t.diameter(mm(kind.diameterMm)),
      expected: t.overWedge[rules.delivered],
    });
  }
  return issues;
}

/** Whether a ball that touches both walls counts as delivered. */
function holds(legX: number, legY: number, radius: number, rule: Rules["delivered"]): boolean {
  const inside = legX * legY - radius * (legX + legY);
  const needed = rule === "centre" ? 0 : radius * Math.sqrt(legX * legX + legY * legY);
  return inside >= needed;
}

function checkRandomLayout(project: Project): readonly Issue[] {
  const result = tryLayout(project);
  if (result.fits) return [];
  const path = "rules.layout";
  return [
    {
      code: "balls-do-not-fit",
      path,
      message: t.noRoom,
      got: result.reason,
      expected: t.allRoom,
    },
  ];
}

function checkPositions(project: Project, positions: readonly PointMm[]): readonly Issue[] {
  const balls = ballsOf(project);
  const path = "rules.layout.positionsMm";
  if (positions.length !== balls.length) {
    return [
      {
        code: "positions-count",
        path,
        message: t.positionsCount,
        got: t.positions(positions.length),
        expected: t.positions(balls.length),
      },
    ];
  }
  const { footprint } = entryOutlines(project.zone, project.robot);
  return positions.flatMap((point, i) => {
    const radius = (balls[i]?.diameterMm ?? 0) / 2;
    const issue = (code: string, message: string, expected: string): Issue => ({
      code,
      path: `${path}[${i}]`,
      message,
      got: `[${point.xMm}, ${point.yMm}]`,
      expected,
    });
    const issues: Issue[] = [];
    if (roomTo(project.zone, point) < radius - CHECK_TOLERANCE_MM) {
      issues.push(issue("ball-in-wall", t.ballInWall, t.inside(mm(radius))));
    }
    if (distanceToPolygon(point, footprint) < radius - CHECK_TOLERANCE_MM) {
      issues.push(issue("ball-on-robot", t.ballOnRobot, t.fromRobot(mm(radius))));
    }
    const other = positions.findIndex(
      (q, j) => j < i && distance(point, q) < radius + (balls[j]?.diameterMm ?? 0) / 2 - CHECK_TOLERANCE_MM,
    );
    if (other >= 0) issues.push(issue("balls-overlap", t.ballsOverlap(other), t.sideBySide));
    return issues;
  });
}

/** Distance from a point to the nearest wall or keep-out, mm; negative outside the zone. */
function roomTo(zone: Zone, { xMm, yMm }: PointMm): number {
  const blocks = zone.keepOuts.map((rect) => distanceToRect(rect, xMm, yMm));
  return Math.min(xMm, yMm, zone.widthMm - xMm, zone.heightMm - yMm, ...blocks);
}

function distance(a: PointMm, b: PointMm): number {
  const dx = a.xMm - b.xMm;
  const dy = a.yMm - b.yMm;
  return Math.sqrt(dx * dx + dy * dy);
}
