import { distanceToPolygon } from "../geometry/polygon.ts";
import type { BallGroup } from "./ball.ts";
import { CHECK_TOLERANCE_MM } from "./checkZone.ts";
import type { Issue } from "./issue.ts";
import { tryLayout } from "./layoutTrial.ts";
import { mm } from "./lengthText.ts";
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
  const expected = `1 to ${MAX_BALLS} balls`;
  if (count === 0) {
    return [
      {
        code: "no-balls",
        path: "balls",
        message: "There are no balls; add at least one group.",
        got: "no balls",
        expected,
      },
    ];
  }
  if (count <= MAX_BALLS) return [];
  const message = `There are ${count} balls in all; at most ${MAX_BALLS} can be simulated.`;
  return [{ code: "too-many-balls", path: "balls", message, got: `${count} balls`, expected }];
}

function checkGroup(zone: Zone, rules: Rules, { kind }: BallGroup, index: number): readonly Issue[] {
  const { wedge } = zone;
  const radius = kind.diameterMm / 2;
  const issues: Issue[] = [];
  if (wedge.lipMm >= radius) {
    const message = `No push can lift ball "${kind.name}" over a lip as high as its radius: lower the lip.`;
    issues.push({
      code: "lip-too-high",
      path: "zone.wedge.lipMm",
      message,
      got: mm(wedge.lipMm),
      expected: `below ${mm(radius)}`,
    });
  }
  if (!holds(wedge.legXMm, wedge.legYMm, radius, rules.delivered)) {
    const message = `A ball "${kind.name}" in the very corner does not count as delivered: the wedge is too small for it, or rules.delivered too strict.`;
    const expected =
      rules.delivered === "centre" ? "its centre over the wedge" : "the whole ball over the wedge";
    issues.push({
      code: "wedge-too-small",
      path: `balls[${index}]`,
      message,
      got: `a diameter of ${mm(kind.diameterMm)}`,
      expected,
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
  const message = "The balls cannot be laid out: use fewer balls, smaller gaps, or fewer forbidden regions.";
  return [
    {
      code: "balls-do-not-fit",
      path,
      message,
      got: result.reason,
      expected: "room for all balls with their gaps",
    },
  ];
}

function checkPositions(project: Project, positions: readonly PointMm[]): readonly Issue[] {
  const balls = ballsOf(project);
  const path = "rules.layout.positionsMm";
  if (positions.length !== balls.length) {
    const message = "A fixed layout gives one position for each ball, in the order of the groups.";
    return [
      {
        code: "positions-count",
        path,
        message,
        got: `${positions.length} positions`,
        expected: `${balls.length} positions`,
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
      issues.push(
        issue(
          "ball-in-wall",
          "The ball reaches into a wall or a keep-out, or lies outside the zone.",
          `its centre at least ${mm(radius)} inside`,
        ),
      );
    }
    if (distanceToPolygon(point, footprint) < radius - CHECK_TOLERANCE_MM) {
      issues.push(
        issue(
          "ball-on-robot",
          "The ball lies where the robot starts.",
          `its centre at least ${mm(radius)} from the robot`,
        ),
      );
    }
    const other = positions.findIndex(
      (q, j) => j < i && distance(point, q) < radius + (balls[j]?.diameterMm ?? 0) / 2 - CHECK_TOLERANCE_MM,
    );
    if (other >= 0)
      issues.push(
        issue("balls-overlap", `The ball overlaps the ball at position ${other}.`, "balls side by side"),
      );
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
