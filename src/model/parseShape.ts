import { GROUND_KINDS, SHAPE_KINDS } from "./choices.ts";
import { radFromDeg } from "./degrees.ts";
import type { Findings } from "./findings.ts";
import {
  ARMS_LIMITS,
  BODY_LIMITS,
  HINGED_LIMITS,
  type NumberLimits,
  PLATE_LIMITS,
  SCOOP_LIMITS,
} from "./limits.ts";
import { counterClockwise } from "./outline.ts";
import { parsePoint } from "./parsePoint.ts";
import type { Fields } from "./reader.ts";
import { numberOf } from "./readNumber.ts";
import type { BodyMm, GroundOutline, PolygonShape, RobotShape } from "./robot.ts";
import type { PointMm } from "./zone.ts";

/** A trial's cost grows with the number of edges; a robot cut from board has some ten. */
export const MAX_VERTICES = 64;

/** An own outline may be written clockwise: it is turned, and its pusher edges are renumbered. */
export function parseShape(fields: Fields, findings: Findings): RobotShape {
  const kind = fields.choice("kind", SHAPE_KINDS);
  // Without a known kind nobody can say which keys belong here.
  if (kind === undefined) return NO_SHAPE;
  const shape = shapeOfKind(kind, fields, findings);
  fields.done();
  return shape;
}

const NO_SHAPE: PolygonShape = { kind: "polygon", outline: [], pusherEdges: [] };

function shapeOfKind(kind: RobotShape["kind"], fields: Fields, findings: Findings): RobotShape {
  switch (kind) {
    case "plate":
      return { kind, ...parseBody(fields), ...fields.numbers(PLATE_LIMITS) };
    case "arms": {
      const body = parseBody(fields);
      const { armAngleDeg, ...arms } = fields.numbers(ARMS_LIMITS);
      return { kind, ...body, ...arms, armAngleRad: radFromDeg(armAngleDeg) };
    }
    case "scoop":
      return { kind, ...parseBody(fields), ...fields.numbers(SCOOP_LIMITS) };
    case "hinged": {
      const body = parseBody(fields);
      const { openAngleDeg, closedAngleDeg, swingRateDegPerS, ...arms } = fields.numbers(HINGED_LIMITS);
      return {
        kind,
        ...body,
        ...arms,
        openAngleRad: radFromDeg(openAngleDeg),
        closedAngleRad: radFromDeg(closedAngleDeg),
        swingRateRadPerS: radFromDeg(swingRateDegPerS),
      };
    }
    case "polygon":
      return parsePolygonShape(fields, findings);
    default:
      return kind satisfies never;
  }
}

function parseBody(fields: Fields): BodyMm {
  return fields.numbers(BODY_LIMITS);
}

function parsePolygonShape(fields: Fields, findings: Findings): PolygonShape {
  const before = findings.count;
  const outline = parseOutline(fields, findings);
  // Of an outline that could not be read nobody knows how many edges it was to have.
  const edges = findings.count === before ? outline.length : MAX_VERTICES;
  const limits: NumberLimits = { min: 0, max: Math.max(0, edges - 1), unit: "", whole: true };
  const path = fields.pathOf("pusherEdges");
  const pusherEdges = fields
    .list("pusherEdges", { max: MAX_VERTICES, required: true })
    .map((value, i) => numberOf(value, `${path}[${i}]`, limits, findings));
  const shape: PolygonShape = { kind: "polygon", outline, pusherEdges: pusherEdges.sort((a, b) => a - b) };
  return findings.count === before ? counterClockwise(shape) : shape;
}

function parseOutline(fields: Fields, findings: Findings): readonly PointMm[] {
  const path = fields.pathOf("outlineMm");
  return fields
    .list("outlineMm", { max: MAX_VERTICES, required: true })
    .map((value, i) => parsePoint(value, `${path}[${i}]`, findings));
}

export function parseGround(fields: Fields, findings: Findings): GroundOutline {
  const kind = fields.choice("kind", GROUND_KINDS, "body") ?? "body";
  const before = findings.count;
  const ground: GroundOutline =
    kind === "body" ? { kind } : { kind, outline: parseOutline(fields, findings) };
  fields.done();
  if (ground.kind === "body" || findings.count !== before) return ground;
  return { kind: "polygon", outline: counterClockwise({ ...ground, pusherEdges: [] }).outline };
}
