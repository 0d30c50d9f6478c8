import { cos, sin } from "../num/elementary.ts";
import type { BallKind } from "./ball.ts";
import type { HingedShape, Robot } from "./robot.ts";
import type { ArmsEnd } from "./routine.ts";

/** The robot's hinged arms; null where nothing swings. */
export function hingedArms(robot: Pick<Robot, "shape">): HingedShape | null {
  return robot.shape.kind === "hinged" ? robot.shape : null;
}

/** Angle at an end of the swing, outward from straight ahead. */
export function endAngleRad(arms: HingedShape, end: ArmsEnd): number {
  return end === "open" ? arms.openAngleRad : arms.closedAngleRad;
}

/** Seconds of a whole swing. */
export function swingS(arms: HingedShape): number {
  return (arms.openAngleRad - arms.closedAngleRad) / arms.swingRateRadPerS;
}

/** The same in whole hundredths, as a routine commands it: never too short. */
export function swingMoveS(arms: HingedShape): number {
  return Math.ceil(swingS(arms) * 100 - 1e-6) / 100;
}

/** The robot as it is while its arms stand at an angle; one without hinged arms as it is. */
export function withArmsAt<R extends Pick<Robot, "shape">>(robot: R, angleRad: number): R {
  const { shape } = robot;
  if (shape.kind !== "hinged" || shape.openAngleRad === angleRad) return robot;
  return { ...robot, shape: { ...shape, openAngleRad: angleRad } };
}

/** Distance between the tips of arms at an angle, mm: a ball with a larger diameter does not pass. */
export function tipGapMm(arms: HingedShape, angleRad: number): number {
  const { hingeAsideMm, armLengthMm, armThicknessMm } = arms;
  return 2 * (hingeAsideMm + armLengthMm * sin(angleRad) - armThicknessMm * cos(angleRad));
}

/** Closed, the arms let no ball of the project out; open, they let every one in. */
export function cagesBalls(robot: Pick<Robot, "shape">, balls: readonly BallKind[]): boolean {
  const arms = hingedArms(robot);
  if (arms === null || balls.length === 0) return false;
  const closedMm = tipGapMm(arms, arms.closedAngleRad);
  const openMm = tipGapMm(arms, arms.openAngleRad);
  return balls.every(({ diameterMm }) => closedMm < diameterMm && diameterMm < openMm);
}
