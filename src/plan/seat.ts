import type { PointMm } from "../model/zone.ts";
import { cos, sin } from "../num/elementary.ts";
import type { RoutineBuilder } from "./builder.ts";
import { FROM_FAR_X_RAD, FROM_FAR_Y_RAD, homeOf } from "./place.ts";
import type { Scene } from "./scene.ts";
import { arriveAt } from "./transfer.ts";

/**
 * Squaring up on both far walls near the far corner: afterwards heading and both coordinates are right again, whatever
 * drift there was. Where the doorway leaves no wall behind the corner, it is done at the nearest stretch that has one.
 */

/** Wall wanted on both sides of the robot's back, so that a drifted robot still meets it flat, mm. */
const SPARE_WALL_MM = 15;

interface Stand extends PointMm {
  readonly headingRad: number;
}

/** Squares up on both far walls where there is wall; false, and nothing done, where there is none. */
export function takeSeat(builder: RoutineBuilder): boolean {
  const stands = standsOf(builder.scene);
  return builder.attempt(() => {
    const done = stands.map((stand) => backOnto(builder, stand));
    return done.some((one) => one);
  });
}

/** Where to stand for each far wall, heading away from it; the one farther from the corner first. */
function standsOf(scene: Scene): readonly Stand[] {
  const home = homeOf(scene);
  const { doorway } = scene.project.zone;
  const x = { xMm: home.xMm, yMm: home.yMm, headingRad: FROM_FAR_X_RAD };
  const y = { xMm: home.xMm, yMm: home.yMm, headingRad: FROM_FAR_Y_RAD };
  switch (doorway.wall) {
    case "top":
      return [{ ...y, xMm: clearOf(scene, home.xMm) }, x];
    case "right":
      return [{ ...x, yMm: clearOf(scene, home.yMm) }, y];
    default:
      return [x, y];
  }
}

/** The wanted place along the doorway's wall, or, where the gap is behind it, the nearest one toward the target corner that has wall. */
function clearOf(scene: Scene, along: number): number {
  const { centreMm, widthMm } = scene.project.zone.doorway;
  const half = Math.max(scene.reach.leftMm, scene.reach.rightMm) + SPARE_WALL_MM;
  const inGap = Math.abs(along - centreMm) < widthMm / 2 + half;
  return inGap ? centreMm - widthMm / 2 - half : along;
}

/** Stands in front of the wall, backs onto it, and comes forward to the line of the stand again. */
function backOnto(builder: RoutineBuilder, stand: Stand): boolean {
  return builder.attempt(() => {
    if (!arriveAt(builder, stand)) return false;
    if (!builder.squareUp()) return false;
    const { xMm, yMm } = builder.pose;
    const { headingRad } = stand;
    return builder.drive((stand.xMm - xMm) * cos(headingRad) + (stand.yMm - yMm) * sin(headingRad));
  });
}
