import type { Project } from "../model/project.ts";
import type { Robot, RobotShape } from "../model/robot.ts";
import type { Move, Routine } from "../model/routine.ts";
import { asin, cos, sin } from "../num/elementary.ts";
import { changeTexts } from "../texts/english/change.ts";
import type { Change, Changed, ChangeId } from "./change.ts";
import { squareUpAlways, squareUpOnce } from "./squareUp.ts";

const RAD_5_DEG = 0.08726646259971647;

/** Everything the tool proposes to try, in the order in which it is listed where results are equal. */
export const CHANGES: readonly Change[] = [
  shapeChange("wider", (shape) => widened(shape, 20)),
  shapeChange("narrower", (shape) => widened(shape, -20)),
  shapeChange("deeper", (shape) => deepened(shape, 20)),
  shapeChange("shallower", (shape) => deepened(shape, -20)),
  shapeChange("arms-out", (shape) => opened(shape, RAD_5_DEG)),
  shapeChange("arms-in", (shape) => opened(shape, -RAD_5_DEG)),
  surfaceChange("smoother", { frictionCoeff: -0.1 }),
  surfaceChange("grippier", { frictionCoeff: 0.1 }),
  surfaceChange("softer", { restitution: -0.2 }),
  driftChange("turn-half", (drift) => ({
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
  driftChange("distance-half", (drift) => ({
    ...drift,
    systematic: {
      ...drift.systematic,
      distanceScaleMean: drift.systematic.distanceScaleMean / 2,
      distanceScaleSd: drift.systematic.distanceScaleSd / 2,
    },
    random: { ...drift.random, distanceSdFrac: drift.random.distanceSdFrac / 2 },
  })),
  driftChange("straighter", (drift) => ({
    ...drift,
    systematic: {
      ...drift.systematic,
      curvatureMeanRadPerMm: drift.systematic.curvatureMeanRadPerMm / 2,
      curvatureSdRadPerMm: drift.systematic.curvatureSdRadPerMm / 2,
    },
    random: { ...drift.random, curvatureSdRadPerMm: drift.random.curvatureSdRadPerMm / 2 },
  })),
  driftChange("start-half", (drift) => ({
    ...drift,
    start: { positionSdMm: drift.start.positionSdMm / 2, headingSdRad: drift.start.headingSdRad / 2 },
  })),
  moveChange("slower", (move) => withSpeed(move, 0.9, 1)),
  moveChange("much-slower", (move) => withSpeed(move, 0.75, 1)),
  moveChange("slower-turns", (move) => withSpeed(move, 1, 0.75)),
  moveChange("push-longer", (move) =>
    move.kind === "toWall" ? { ...move, overrunMm: move.overrunMm + (move.overrunMm < 0 ? -20 : 20) } : move,
  ),
  { id: "square-up", about: "routine", apply: squareUpOnce },
  { id: "square-up-always", about: "routine", apply: squareUpAlways },
];

function shapeChange(id: ChangeId, turn: (shape: RobotShape) => RobotShape | string): Change {
  const apply = (project: Project, routine: Routine): Changed => {
    const shape = turn(project.robot.shape);
    if (typeof shape === "string") return { reason: shape };
    return { project: { ...project, robot: { ...project.robot, shape } }, routine, replans: true };
  };
  return { id, about: "pusher", apply };
}

/** @returns why not, as a sentence, for a shape that has no such part or where it does not fit */
export function widened(shape: RobotShape, byMm: number): RobotShape | string {
  switch (shape.kind) {
    case "plate":
      return { ...shape, plateWidthMm: shape.plateWidthMm + byMm };
    case "scoop":
      return { ...shape, openingMm: shape.openingMm + byMm };
    case "arms": {
      const tip = sin(shape.armAngleRad) + byMm / 2 / shape.armLengthMm;
      if (Math.abs(tip) >= 0.9) return changeTexts.tooShort;
      return { ...shape, armAngleRad: asin(tip) };
    }
    case "hinged": {
      const tip = sin(shape.openAngleRad) + byMm / 2 / shape.armLengthMm;
      if (Math.abs(tip) >= 0.9) return changeTexts.tooShort;
      return { ...shape, openAngleRad: asin(tip) };
    }
    case "polygon":
      return changeTexts.noPart;
    default:
      return shape satisfies never;
  }
}

function deepened(shape: RobotShape, byMm: number): RobotShape | string {
  switch (shape.kind) {
    case "plate":
      return { ...shape, plateReachMm: Math.max(0, shape.plateReachMm + byMm) };
    case "scoop":
      return shape.depthMm + byMm < 1 ? changeTexts.noPart : { ...shape, depthMm: shape.depthMm + byMm };
    case "arms": {
      const lengthMm = shape.armLengthMm + byMm / cos(shape.armAngleRad);
      return lengthMm <= 0 ? changeTexts.tooShort : { ...shape, armLengthMm: lengthMm };
    }
    case "hinged": {
      const lengthMm = shape.armLengthMm + byMm / cos(shape.openAngleRad);
      return lengthMm <= 0 ? changeTexts.tooShort : { ...shape, armLengthMm: lengthMm };
    }
    case "polygon":
      return changeTexts.noPart;
    default:
      return shape satisfies never;
  }
}

function opened(shape: RobotShape, byRad: number): RobotShape | string {
  if (shape.kind === "hinged") return { ...shape, openAngleRad: shape.openAngleRad + byRad };
  if (shape.kind !== "arms") return changeTexts.noPart;
  return { ...shape, armAngleRad: shape.armAngleRad + byRad };
}

function surfaceChange(
  id: ChangeId,
  by: { readonly frictionCoeff?: number; readonly restitution?: number },
): Change {
  const apply = (project: Project, routine: Routine): Changed => {
    const { surface } = project.robot;
    const changed = {
      frictionCoeff: Math.max(0, surface.frictionCoeff + (by.frictionCoeff ?? 0)),
      restitution: Math.max(0, surface.restitution + (by.restitution ?? 0)),
    };
    if (changed.frictionCoeff === surface.frictionCoeff && changed.restitution === surface.restitution)
      return { reason: changeTexts.lowest };
    return { project: { ...project, robot: { ...project.robot, surface: changed } }, routine };
  };
  return { id, about: "pusher", apply };
}

function driftChange(id: ChangeId, turn: (drift: Robot["drift"]) => Robot["drift"]): Change {
  const apply = (project: Project, routine: Routine): Changed => ({
    project: { ...project, robot: { ...project.robot, drift: turn(project.robot.drift) } },
    routine,
  });
  return { id, about: "drift", apply };
}

function moveChange(id: ChangeId, turn: (move: Move) => Move): Change {
  const apply = (project: Project, routine: Routine): Changed => {
    const moves = routine.moves.map(turn);
    const isSame = JSON.stringify(moves) === JSON.stringify(routine.moves);
    return isSame ? { reason: changeTexts.noMove } : { project, routine: { ...routine, moves } };
  };
  return { id, about: "routine", apply };
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
