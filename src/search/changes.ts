import type { Project } from "../model/project.ts";
import type { Robot, RobotShape } from "../model/robot.ts";
import type { Move, Routine } from "../model/routine.ts";
import { asin, cos, sin } from "../num/elementary.ts";
import type { Change, Changed } from "./change.ts";
import { squareUpAlways, squareUpOnce } from "./squareUp.ts";

const RAD_5_DEG = 0.08726646259971647;

/** Everything the tool proposes to try, in the order in which it is listed where results are equal. */
export const CHANGES: readonly Change[] = [
  shapeChange("wider", "a pusher 20 mm wider", (shape) => widened(shape, 20)),
  shapeChange("narrower", "a pusher 20 mm narrower", (shape) => widened(shape, -20)),
  shapeChange("deeper", "a pusher 20 mm deeper", (shape) => deepened(shape, 20)),
  shapeChange("shallower", "a pusher 20 mm shallower", (shape) => deepened(shape, -20)),
  shapeChange("arms-out", "arms 5° further open", (shape) => opened(shape, RAD_5_DEG)),
  shapeChange("arms-in", "arms 5° further closed", (shape) => opened(shape, -RAD_5_DEG)),
  surfaceChange("smoother", "a smoother pusher: friction 0.1 less", { frictionCoeff: -0.1 }),
  surfaceChange("grippier", "a grippier pusher: friction 0.1 more", { frictionCoeff: 0.1 }),
  surfaceChange("softer", "a softer pusher: bounce 0.2 less", { restitution: -0.2 }),
  driftChange("turn-half", "turn error halved", (drift) => ({
    ...drift,
    systematic: {
      ...drift.systematic,
      turnScaleMean: drift.systematic.turnScaleMean / 2,
      turnScaleSd: drift.systematic.turnScaleSd / 2,
    },
    random: {
      ...drift.random,
      turnSdFrac: drift.random.turnSdFrac / 2,
      turnSdRad: drift.random.turnSdRad / 2,
    },
  })),
  driftChange("distance-half", "distance error halved", (drift) => ({
    ...drift,
    systematic: {
      ...drift.systematic,
      distanceScaleMean: drift.systematic.distanceScaleMean / 2,
      distanceScaleSd: drift.systematic.distanceScaleSd / 2,
    },
    random: { ...drift.random, distanceSdFrac: drift.random.distanceSdFrac / 2 },
  })),
  driftChange("straighter", "straights half as crooked", (drift) => ({
    ...drift,
    systematic: {
      ...drift.systematic,
      curvatureMeanRadPerMm: drift.systematic.curvatureMeanRadPerMm / 2,
      curvatureSdRadPerMm: drift.systematic.curvatureSdRadPerMm / 2,
    },
    random: { ...drift.random, curvatureSdRadPerMm: drift.random.curvatureSdRadPerMm / 2 },
  })),
  driftChange("start-half", "placed twice as carefully at the start", (drift) => ({
    ...drift,
    start: { positionSdMm: drift.start.positionSdMm / 2, headingSdRad: drift.start.headingSdRad / 2 },
  })),
  moveChange("slower", "driving 10 % slower", (move) => withSpeed(move, 0.9, 1)),
  moveChange("much-slower", "driving 25 % slower", (move) => withSpeed(move, 0.75, 1)),
  moveChange("slower-turns", "turning 25 % slower", (move) => withSpeed(move, 1, 0.75)),
  moveChange("push-longer", "pushing on 20 mm longer at every wall", (move) =>
    move.kind === "toWall" ? { ...move, overrunMm: move.overrunMm + (move.overrunMm < 0 ? -20 : 20) } : move,
  ),
  { id: "square-up", about: "routine", title: "squaring up once more", apply: squareUpOnce },
  { id: "square-up-always", about: "routine", title: "squaring up at every chance", apply: squareUpAlways },
];

function shapeChange(id: string, title: string, turn: (shape: RobotShape) => RobotShape | string): Change {
  const apply = (project: Project, routine: Routine): Changed => {
    const shape = turn(project.robot.shape);
    if (typeof shape === "string") return { reason: shape };
    return { project: { ...project, robot: { ...project.robot, shape } }, routine, replans: true };
  };
  return { id, about: "pusher", title, apply };
}

const NOT_THIS_SHAPE = "This robot's outline has no such part.";

function widened(shape: RobotShape, byMm: number): RobotShape | string {
  switch (shape.kind) {
    case "plate":
      return { ...shape, plateWidthMm: shape.plateWidthMm + byMm };
    case "scoop":
      return { ...shape, openingMm: shape.openingMm + byMm };
    case "arms": {
      const tip = sin(shape.armAngleRad) + byMm / 2 / shape.armLengthMm;
      if (Math.abs(tip) >= 0.9) return "The arms are too short for that.";
      return { ...shape, armAngleRad: asin(tip) };
    }
    case "hinged": {
      const tip = sin(shape.openAngleRad) + byMm / 2 / shape.armLengthMm;
      if (Math.abs(tip) >= 0.9) return "The arms are too short for that.";
      return { ...shape, openAngleRad: asin(tip) };
    }
    case "polygon":
      return NOT_THIS_SHAPE;
    default:
      return shape satisfies never;
  }
}

function deepened(shape: RobotShape, byMm: number): RobotShape | string {
  switch (shape.kind) {
    case "plate":
      return { ...shape, plateReachMm: Math.max(0, shape.plateReachMm + byMm) };
    case "scoop":
      return shape.depthMm + byMm < 1 ? NOT_THIS_SHAPE : { ...shape, depthMm: shape.depthMm + byMm };
    case "arms": {
      const lengthMm = shape.armLengthMm + byMm / cos(shape.armAngleRad);
      return lengthMm <= 0 ? "The arms are too short for that." : { ...shape, armLengthMm: lengthMm };
    }
    case "hinged": {
      const lengthMm = shape.armLengthMm + byMm / cos(shape.openAngleRad);
      return lengthMm <= 0 ? "The arms are too short for that." : { ...shape, armLengthMm: lengthMm };
    }
    case "polygon":
      return NOT_THIS_SHAPE;
    default:
      return shape satisfies never;
  }
}

function opened(shape: RobotShape, byRad: number): RobotShape | string {
  if (shape.kind === "hinged") return { ...shape, openAngleRad: shape.openAngleRad + byRad };
  if (shape.kind !== "arms") return NOT_THIS_SHAPE;
  return { ...shape, armAngleRad: shape.armAngleRad + byRad };
}

function surfaceChange(
  id: string,
  title: string,
  by: { readonly frictionCoeff?: number; readonly restitution?: number },
): Change {
  const apply = (project: Project, routine: Routine): Changed => {
    const { surface } = project.robot;
    const changed = {
      frictionCoeff: Math.max(0, surface.frictionCoeff + (by.frictionCoeff ?? 0)),
      restitution: Math.max(0, surface.restitution + (by.restitution ?? 0)),
    };
    if (changed.frictionCoeff === surface.frictionCoeff && changed.restitution === surface.restitution)
      return { reason: "It is as low as it can be." };
    return { project: { ...project, robot: { ...project.robot, surface: changed } }, routine };
  };
  return { id, about: "pusher", title, apply };
}

function driftChange(id: string, title: string, turn: (drift: Robot["drift"]) => Robot["drift"]): Change {
  const apply = (project: Project, routine: Routine): Changed => ({
    project: { ...project, robot: { ...project.robot, drift: turn(project.robot.drift) } },
    routine,
  });
  return { id, about: "drift", title, apply };
}

function moveChange(id: string, title: string, turn: (move: Move) => Move): Change {
  const apply = (project: Project, routine: Routine): Changed => {
    const moves = routine.moves.map(turn);
    const isSame = JSON.stringify(moves) === JSON.stringify(routine.moves);
    return isSame ? { reason: "The routine has no such move." } : { project, routine: { ...routine, moves } };
  };
  return { id, about: "routine", title, apply };
}

export function withSpeed(move: Move, driveFrac: number, turnFrac: number): Move {
  switch (move.kind) {
    case "drive":
    case "arc":
    case "toWall":
      return driveFrac === 1 ? move : { ...move, speedMmPerS: driveFrac * move.speedMmPerS };
    case "turn":
      return turnFrac === 1 ? move : { ...move, rateRadPerS: turnFrac * move.rateRadPerS };
    case "wait":
    case "arms":
      return move;
    default:
      return move satisfies never;
  }
}
