import { wrapAngle } from "../num/elementary.ts";
import type { RoutineBuilder } from "./builder.ts";
import { TILT_RAD } from "./reach.ts";

/** First way driven to make room for a turn, mm, and the ratio of each next one to it. */
const FIRST_SHIFT_MM = 30;
const SHIFT_GROWTH = 1.5;

/** Turns to a heading; where there is no room, first drives forward or back, or peels off a wall beside it, as little as it takes. */
export function faceWithRoom(builder: RoutineBuilder, headingRad: number): boolean {
  const turned = () => builder.face(headingRad);
  if (turned() || withShift(builder, turned)) return true;
  // Beside a wall the rear swings against it: there a slight turn the right way has to come first.
  const tilt = wrapAngle(headingRad - builder.pose.headingRad) < 0 ? -TILT_RAD : TILT_RAD;
  const peeled = (by: number) => () => builder.turn(by) && withShift(builder, turned);
  return [tilt, -tilt].some((by) => builder.attempt(peeled(by)) || withShift(builder, peeled(by)));
}

/** Drives back or forward, farther and farther, until the next steps can be done. */
function withShift(builder: RoutineBuilder, steps: () => boolean): boolean {
  const { tipRadiusMm, rearMm } = builder.scene.reach;
  const most = 2 * tipRadiusMm + rearMm;
  for (let shift = FIRST_SHIFT_MM; shift <= most; shift *= SHIFT_GROWTH) {
    for (const sign of [-1, 1]) {
      if (builder.attempt(() => builder.drive(sign * shift) && steps())) return true;
    }
  }
  return false;
}
