import { boundingBox, isSimple } from "../geometry/polygon.ts";
import { cos, sin } from "../num/elementary.ts";
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
  const message = "The axle lies ahead of the body's front; it is measured from the body's rear edge.";
  const expected = `at most ${mm(body.bodyLengthMm)}`;
  return [
    {
      code: "axle-outside-body",
      path: `${SHAPE}.axleFromRearMm`,
      message,
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
    const message =
      "The arms meet, so that no ball can come between them: make them shorter, thinner or turn them outward.";
    const got = `${mm(-gap)} too close`;
    return [{ code: "arms-meet", path: `${SHAPE}.${key}`, message, got, expected: "a gap above 0 mm" }];
  }
  // Turned inward, a thick arm's tip is cut off by the body: its inner side would have no length.
  if (length * c + thickness * s > 0) return [];
  const message =
    "The arms are thicker than they are long, so that their tips lie in the body: make them longer.";
  const expected = `above ${mm((-thickness * s) / c)}`;
  return [{ code: "arms-too-short", path: `${SHAPE}.armLengthMm`, message, got: mm(length), expected }];
}

/** The hinges must sit on the body, the arms must open outward of where they close, and leave a gap at both ends of their swing. */
function checkHinges(shape: HingedShape): readonly Issue[] {
  const { hingeAsideMm, bodyWidthMm, openAngleRad, closedAngleRad } = shape;
  const issues: Issue[] = [];
  if (hingeAsideMm > bodyWidthMm / 2) {
    const message = "The hinges lie beside the body; they sit on its front, measured from its middle.";
    const expected = `at most ${mm(bodyWidthMm / 2)}`;
    issues.push({
      code: "hinge-outside-body",
      path: `${SHAPE}.hingeAsideMm`,
      message,
      got: mm(hingeAsideMm),
      expected,
    });
  }
  if (openAngleRad <= closedAngleRad) {
    const message = "Open arms must be turned farther outward than closed ones.";
    const got = `${degFromRad(openAngleRad)}° open, ${degFromRad(closedAngleRad)}° closed`;
    const expected = `above ${degFromRad(closedAngleRad)}°`;
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
  const message =
    "The scoop's sides are too thick for so flat a V: at the body they would be wider than the body. Make them thinner or the scoop deeper.";
  const path = `${SHAPE}.sideThicknessMm`;
  return [
    { code: "scoop-too-thick", path, message, got: mm(sideThicknessMm), expected: `below ${mm(most)}` },
  ];
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
    return issue(
      "too-few-vertices",
      path,
      "An outline needs at least 3 points.",
      `${outline.length} points`,
      "at least 3 points",
    );
  }
  const repeated = outline.findIndex((point, i) => {
    const next = outline[(i + 1) % outline.length];
    return next?.xMm === point.xMm && next.yMm === point.yMm;
  });
  if (repeated >= 0) {
    const message =
      "This point is followed by the same point again; each is given once, the first not repeated at the end.";
    const point = outline[repeated];
    return issue(
      "repeated-vertex",
      `${path}[${repeated}]`,
      message,
      `[${point?.xMm}, ${point?.yMm}] twice`,
      "each point once",
    );
  }
  if (!isSimple(outline)) {
    const message =
      "The outline crosses or touches itself; give its points in the order in which they follow each other around the robot.";
    return issue(
      "outline-crosses-itself",
      path,
      message,
      `${outline.length} points that cross`,
      "a simple outline",
    );
  }
  const box = boundingBox(outline);
  const longer = Math.max(box.maxXMm - box.minXMm, box.maxYMm - box.minYMm);
  if (longer >= SMALLEST_ROBOT_MM) return [];
  return issue(
    "outline-too-small",
    path,
    "The outline is too small for a robot; lengths are in mm.",
    mm(longer),
    `at least ${mm(SMALLEST_ROBOT_MM)}`,
  );
}

function checkPusherEdges({ outline, pusherEdges }: PolygonShape): readonly Issue[] {
  const path = `${SHAPE}.pusherEdges`;
  const expected = `edge numbers from 0 to ${outline.length - 1}, each once`;
  const issue = (code: string, message: string, got: string): Issue => ({
    code,
    path,
    message,
    got,
    expected,
  });
  if (pusherEdges.length === 0) {
    return [
      issue(
        "no-pusher",
        "No edge is meant to touch balls; number at least one (edge 0 runs from point 0 to point 1).",
        "none",
      ),
    ];
  }
  const issues: Issue[] = [];
  const outside = pusherEdges.filter((edge) => !Number.isInteger(edge) || edge < 0 || edge >= outline.length);
  if (outside.length > 0) {
    issues.push(issue("edge-out-of-range", "There is no edge with this number.", outside.join(", ")));
  }
  const twice = pusherEdges.filter((edge, i) => pusherEdges.indexOf(edge) < i);
  if (twice.length > 0)
    issues.push(issue("repeated-edge", "An edge is numbered twice; keep one.", twice.join(", ")));
  return issues;
}
