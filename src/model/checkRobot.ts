import { boundingBox, isSimple } from "../geometry/polygon.ts";
import { cos, sin } from "../num/elementary.ts";
import { issueTexts } from "../texts/english/issue.ts";
import { robotIssueTexts as t } from "../texts/english/robotIssue.ts";
import { plain } from "../texts/numbers.ts";
import { checkSensors } from "./checkSensors.ts";
import { degFromRad } from "./degrees.ts";
import type { Issue } from "./issue.ts";
import { mm } from "./lengthText.ts";
import type { ArmsShape, BodyMm, HingedShape, PolygonShape, Robot, RobotShape, ScoopShape } from "./robot.ts";
import type { PointMm } from "./zone.ts";

const SHAPE = "robot.shape";

/** Smallest robot that makes sense, along its longer side, mm. */
const SMALLEST_ROBOT_MM = 20;

/** What contradicts itself in a robot. */
export function checkRobot(robot: Robot): readonly Issue[] {
  const shape = checkShape(robot);
  const ground =
    robot.ground.kind === "polygon" ? checkOutline(robot.ground.outline, "robot.ground.outlineMm") : [];
  return [...shape, ...ground, ...checkSensors(robot.sensors)];
}

function checkShape(robot: Robot): readonly Issue[] {
  const { shape } = robot;
  if (shape.kind === "polygon") {
    return [...checkOutline(shape.outline, `${SHAPE}.outlineMm`), ...checkPusherEdges(shape)];
  }
  return [...checkAxle(shape), ...checkFront(shape)];
}

function checkFront(shape: Exclude<RobotShape, PolygonShape>): readonly Issue[] {
  switch (shape.kind) {
    case "plate":
      return [];
    case "arms":
      return checkArms(shape, shape.bodyWidthMm / 2, shape.armAngleRad, "armAngleDeg");
    case "scoop":
      return checkScoop(shape);
    case "hinged":
      return checkHinges(shape);
    default:
      return shape satisfies never;
  }
}

function checkAxle(body: BodyMm): readonly Issue[] {
  if (body.axleFromRearMm <= body.bodyLengthMm) return [];
  const expected = issueTexts.atMost(mm(body.bodyLengthMm));
  return [
    {
      code: "axle-outside-body",
      path: `${SHAPE}.axleFromRearMm`,
      message: t.axleAhead,
      got: mm(body.axleFromRearMm),
      expected,
    },
  ];
}

/** The two arms must leave a gap at their roots and at their tips, and stand out of the body. */
function checkArms(
  shape: ArmsShape | HingedShape,
  rootMm: number,
  angleRad: number,
  key: string,
): readonly Issue[] {
  const { armLengthMm: length, armThicknessMm: thickness } = shape;
  const c = cos(angleRad);
  const s = sin(angleRad);
  const atRoots = 2 * rootMm - (2 * thickness) / c;
  const atTips = 2 * rootMm + 2 * (length * s - thickness * c);
  const gap = Math.min(atRoots, atTips);
  if (gap <= 0) {
    const got = t.tooClose(mm(-gap));
    return [{ code: "arms-meet", path: `${SHAPE}.${key}`, message: t.armsMeet, got, expected: t.aGap }];
  }
  // Turned inward, a thick arm's tip is cut off by the body: its inner side would have no length.
  if (length * c + thickness * s > 0) return [];
  const message = t.armsTooShort;
  const expected = issueTexts.above(mm((-thickness * s) / c));
  return [{ code: "arms-too-short", path: `${SHAPE}.armLengthMm`, message, got: mm(length), expected }];
}

/** The hinges must sit on the body, the arms must open outward of where they close, and leave a gap at both ends of their swing. */
function checkHinges(shape: HingedShape): readonly Issue[] {
  const { hingeAsideMm, bodyWidthMm, openAngleRad, closedAngleRad } = shape;
  const issues: Issue[] = [];
  if (hingeAsideMm > bodyWidthMm / 2) {
    const expected = issueTexts.atMost(mm(bodyWidthMm / 2));
    issues.push({
      code: "hinge-outside-body",
      path: `${SHAPE}.hingeAsideMm`,
      message: t.hingeBeside,
      got: mm(hingeAsideMm),
      expected,
    });
  }
  if (openAngleRad <= closedAngleRad) {
    const message = t.armsStayShut;
    const got = t.openClosed(plain(degFromRad(openAngleRad)), plain(degFromRad(closedAngleRad)));
    const expected = issueTexts.above(`${plain(degFromRad(closedAngleRad))}°`);
    issues.push({ code: "arms-do-not-open", path: `${SHAPE}.openAngleDeg`, message, got, expected });
  }
  return [
    ...issues,
    ...checkArms(shape, hingeAsideMm, closedAngleRad, "closedAngleDeg"),
    ...checkArms(shape, hingeAsideMm, openAngleRad, "openAngleDeg"),
  ];
}

/** The V's sides must start within the body's front and stand out of it. */
function checkScoop({ openingMm, depthMm, sideThicknessMm, bodyWidthMm }: ScoopShape): readonly Issue[] {
  const half = openingMm / 2;
  const side = Math.sqrt(depthMm * depthMm + half * half);
  const most = Math.min(((bodyWidthMm / 2) * depthMm) / side, (depthMm * side) / half);
  if (sideThicknessMm < most) return [];
  const path = `${SHAPE}.sideThicknessMm`;
  const expected = issueTexts.below(mm(most));
  return [{ code: "scoop-too-thick", path, message: t.scoopTooThick, got: mm(sideThicknessMm), expected }];
}

function checkOutline(outline: readonly PointMm[], path: string): readonly Issue[] {
  const issue = (
    code: string,
    at: string,
    message: string,
    got: string,
    expected: string,
  ): readonly Issue[] => [{ code, path: at, message, got, expected }];
  if (outline.length < 3) {
    const expected = issueTexts.atLeast(t.points(3));
    return issue("too-few-vertices", path, t.tooFewPoints, t.points(outline.length), expected);
  }
  const repeated = outline.findIndex((point, i) => {
    const next = outline[(i + 1) % outline.length];
    return next?.xMm === point.xMm && next.yMm === point.yMm;
  });
  if (repeated >= 0) {
    const point = outline[repeated];
    const got = t.twice(`[${point?.xMm}, ${point?.yMm}]`);
    return issue("repeated-vertex", `${path}[${repeated}]`, t.pointTwice, got, t.onceEach);
  }
  if (!isSimple(outline)) {
    return issue("outline-crosses-itself", path, t.crosses, t.crossing(outline.length), t.aSimpleOne);
  }
  const box = boundingBox(outline);
  const longer = Math.max(box.maxXMm - box.minXMm, box.maxYMm - box.minYMm);
  if (longer >= SMALLEST_ROBOT_MM) return [];
  const expected = issueTexts.atLeast(mm(SMALLEST_ROBOT_MM));
  return issue("outline-too-small", path, t.tooSmall, mm(longer), expected);
}

function checkPusherEdges({ outline, pusherEdges }: PolygonShape): readonly Issue[] {
  const path = `${SHAPE}.pusherEdges`;
  const expected = t.edges(outline.length - 1);
  const issue = (code: string, message: string, got: string): Issue => ({
    code,
    path,
    message,
    got,
    expected,
  });
  if (pusherEdges.length === 0) {
    return [issue("no-pusher", t.noPusher, issueTexts.none)];
  }
  const issues: Issue[] = [];
  const outside = pusherEdges.filter((edge) => !Number.isInteger(edge) || edge < 0 || edge >= outline.length);
  if (outside.length > 0) {
    issues.push(issue("edge-out-of-range", t.noEdge, outside.join(", ")));
  }
  const twice = pusherEdges.filter((edge, i) => pusherEdges.indexOf(edge) < i);
  if (twice.length > 0) issues.push(issue("repeated-edge", t.edgeTwice, twice.join(", ")));
  return issues;
}
