import { type PointMm as Point, signedArea } from "../geometry/polygon.ts";
import { cos, sin } from "../num/elementary.ts";
import type {
  ArmsShape,
  BodyMm,
  HingedShape,
  PlateShape,
  PolygonShape,
  Robot,
  RobotShape,
  ScoopShape,
} from "./robot.ts";
import type { PointMm } from "./zone.ts";

/** The robot seen from above, in its own frame: origin midway between the driven wheels, x forward, y left. */
export interface RobotOutline {
  /** At ball height; simple, counter-clockwise, first vertex not repeated, no two neighbours alike. */
  readonly footprint: readonly PointMm[];
  /** Increasing indices of the footprint's edges meant to touch balls; edge i runs from vertex i to vertex i + 1. */
  readonly pusherEdges: readonly number[];
  /** Tracks and whatever is low; counter-clockwise. */
  readonly ground: readonly PointMm[];
}

/** Depth of a plate where it sticks out beside the body, mm: stiff sheet or board. Common practice, no source. */
export const PLATE_THICKNESS_MM = 8;

/** Two edges count as one straight edge when they turn by less than this (sine of the angle): rounding of sin and cos, far below a cut of the saw. */
const STRAIGHT_SIN = 1e-9;

/** Shorter edges are dropped, mm. */
const SHORTEST_EDGE_MM = 1e-6;

interface Corner {
  readonly xMm: number;
  readonly yMm: number;
  /** Whether the edge from here to the next corner is meant to touch balls. */
  readonly pusher: boolean;
}

/**
 * Footprint, pusher edges and ground outline of a robot.
 * A plate wider than the body is a T whose bar is `PLATE_THICKNESS_MM` deep; a plate as wide or narrower is a block in front of the body.
 * For a shape that is an own polygon and a ground outline of kind "body", the whole footprint is low.
 *
 * Hinged arms are open; `withArmsAt` (arms.ts) gives the robot with its arms at another angle.
 *
 * The result is simple for every robot that passes `checkProject`; others may give an outline that crosses itself.
 */
export function robotOutline(robot: Pick<Robot, "shape" | "ground">): RobotOutline {
  const { shape, ground } = robot;
  const { footprint, pusherEdges } = footprintOf(shape);
  if (ground.kind === "polygon") return { footprint, pusherEdges, ground: ccw(ground.outline) };
  if (shape.kind === "polygon") return { footprint, pusherEdges, ground: footprint };
  return { footprint, pusherEdges, ground: bodyRectangle(shape) };
}

/** The same polygon, counter-clockwise, with the marked edges renumbered to match. */
export function counterClockwise(shape: PolygonShape): PolygonShape {
  if (signedArea(shape.outline) >= 0) return shape;
  const last = shape.outline.length - 1;
  // Reversed, vertex i becomes last − i, so that edge i (vertices i, i + 1) starts at last − i − 1.
  const pusherEdges = shape.pusherEdges.map((edge) => (edge === last ? last : last - 1 - edge));
  return {
    kind: "polygon",
    outline: [...shape.outline].reverse(),
    pusherEdges: pusherEdges.sort((a, b) => a - b),
  };
}

function footprintOf(shape: RobotShape): Omit<RobotOutline, "ground"> {
  switch (shape.kind) {
    case "plate":
      return tidy(plateCorners(shape));
    case "arms":
      return tidy(armsCorners(shape, shape.armAngleRad));
    case "hinged":
      return tidy(armsCorners(shape, shape.openAngleRad));
    case "scoop":
      return tidy(scoopCorners(shape));
    case "polygon": {
      const turned = counterClockwise(shape);
      return { footprint: turned.outline, pusherEdges: turned.pusherEdges };
    }
    default:
      return shape satisfies never;
  }
}

function bodyRectangle(body: BodyMm): readonly PointMm[] {
  const { rear, front, half } = extent(body);
  return [
    { xMm: rear, yMm: -half },
    { xMm: front, yMm: -half },
    { xMm: front, yMm: half },
    { xMm: rear, yMm: half },
  ];
}

function plateCorners(shape: PlateShape): readonly Corner[] {
  const { rear, front, half } = extent(shape);
  const face = front + shape.plateReachMm;
  const plate = shape.plateWidthMm / 2;
  const back = plate > half ? Math.max(rear, face - PLATE_THICKNESS_MM) : front;
  return mirrored([
    { xMm: rear, yMm: -half, pusher: false },
    { xMm: back, yMm: -half, pusher: false },
    { xMm: back, yMm: -plate, pusher: false },
    { xMm: face, yMm: -plate, pusher: true },
  ]);
}

function armsCorners(shape: ArmsShape | HingedShape, angleRad: number): readonly Corner[] {
  const { rear, front, half } = extent(shape);
  const { armLengthMm: length, armThicknessMm: thickness } = shape;
  const c = cos(angleRad);
  const s = sin(angleRad);
  // A fixed arm's outer side starts at the body's front corner, a hinged one's at its hinge; its inner side is extended back to the body's front.
  const root = shape.kind === "hinged" ? shape.hingeAsideMm : half;
  const tipX = front + length * c;
  const tipY = root + length * s;
  return mirrored([
    { xMm: rear, yMm: -half, pusher: false },
    ...(root < half ? [{ xMm: front, yMm: -half, pusher: false }] : []),
    { xMm: front, yMm: -root, pusher: false },
    { xMm: tipX, yMm: -tipY, pusher: true },
    { xMm: tipX + thickness * s, yMm: thickness * c - tipY, pusher: true },
    { xMm: front, yMm: thickness / c - root, pusher: true },
  ]);
}

function scoopCorners(shape: ScoopShape): readonly Corner[] {
  const { rear, front, half } = extent(shape);
  const { depthMm: depth, sideThicknessMm: thickness } = shape;
  const tip = shape.openingMm / 2;
  const side = Math.sqrt(depth * depth + tip * tip);
  // The outer side runs parallel to the inner one and meets the body's front here.
  const root = Math.min(half, (thickness * side) / depth);
  const outerX = front + depth - (thickness * tip) / side;
  const outerY = tip + (thickness * depth) / side;
  const right: readonly Corner[] = [
    { xMm: rear, yMm: -half, pusher: false },
    { xMm: front, yMm: -half, pusher: false },
    { xMm: front, yMm: -root, pusher: false },
    { xMm: outerX, yMm: -outerY, pusher: true },
    { xMm: front + depth, yMm: -tip, pusher: true },
    { xMm: front, yMm: 0, pusher: true },
  ];
  return mirrored(right);
}

function extent(body: BodyMm) {
  return {
    rear: -body.axleFromRearMm,
    front: body.bodyLengthMm - body.axleFromRearMm,
    half: body.bodyWidthMm / 2,
  };
}

/** Completes a right half, given from the rear to the front, by its mirror image. A corner on the axis stays single (tidy drops its copy). */
function mirrored(right: readonly Corner[]): readonly Corner[] {
  const left = right.map((corner, i) => ({
    xMm: corner.xMm,
    yMm: 0 - corner.yMm,
    pusher: i > 0 && (right[i - 1]?.pusher ?? false),
  }));
  return [...right, ...left.reverse()];
}

/** Drops corners that repeat the one before, and those in the middle of a straight edge of one sort. */
function tidy(corners: readonly Corner[]): Omit<RobotOutline, "ground"> {
  const apart = corners.filter((corner, i) => {
    const next = corners[(i + 1) % corners.length] ?? corner;
    return distance(corner, next) > SHORTEST_EDGE_MM;
  });
  const kept = apart.filter((corner, i) => {
    const before = apart[(i + apart.length - 1) % apart.length] ?? corner;
    const after = apart[(i + 1) % apart.length] ?? corner;
    return before.pusher !== corner.pusher || bends(before, corner, after);
  });
  return {
    footprint: kept.map(({ xMm, yMm }) => ({ xMm, yMm })),
    pusherEdges: kept.flatMap((corner, i) => (corner.pusher ? [i] : [])),
  };
}

function bends(before: Point, at: Point, after: Point): boolean {
  const ax = at.xMm - before.xMm;
  const ay = at.yMm - before.yMm;
  const bx = after.xMm - at.xMm;
  const by = after.yMm - at.yMm;
  const scale = distance(before, at) * distance(at, after);
  // A fold (straight back) is kept: the check for self-crossing outlines must see it.
  return Math.abs(ax * by - ay * bx) > STRAIGHT_SIN * scale || ax * bx + ay * by < 0;
}

function distance(a: Point, b: Point): number {
  const dx = b.xMm - a.xMm;
  const dy = b.yMm - a.yMm;
  return Math.sqrt(dx * dx + dy * dy);
}

function ccw(outline: readonly PointMm[]): readonly PointMm[] {
  return signedArea(outline) >= 0 ? outline : [...outline].reverse();
}
