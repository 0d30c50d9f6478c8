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

/** The robot as it is while its arms stand at an angle; one without hinged arms as it is. */
export function withArmsAt<R extends Pick<Robot, "shape">>(robot: R, angleRad: number): R {
  const { shape } = robot;
  if (shape.kind !== "hinged" || shape.openAngleRad === angleRad) return robot;
  return { ...robot, shape: { ...shape, openAngleRad: angleRad } };
}

/** Distance between the tips of arms at an angle, mm: a ball with a larger diameter does not pass. */
export function tipGapMm(arms: HingedShape, c: number, s: number): number {
  return 2 * (arms.hingeAsideMm + arms.armLengthMm * s - arms.armThicknessMm * c);
}
