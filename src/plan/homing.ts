import { RAD_PER_DEG } from "../model/units.ts";
import { cos, sin } from "../num/elementary.ts";
import { beforeWedge, type Side, turnInsMm, waypoint } from "./place.ts";
import type { PushRun } from "./pushRun.ts";
import type { Waypoint } from "./rounding.ts";
import type { Scene } from "./scene.ts";

/**
 * The last part of a push: onto the push line, which meets the wedge's long side squarely, and along it against the
 * wedge. A slanting push would be turned away by the edge, and would leave balls in front of it.
 */

/** Radii tried where a way turns onto the push line, in tip radii, the gentlest first; 0: on the spot. */
const TURN_IN_RADII = [0.6, 0.4, 0];
/** Angle at which a lane beside a closing wall is left for the push line. */
const LEAVE_RAD = 45 * RAD_PER_DEG;

type Ways = PushRun["ways"];

/** From any point straight to where the push line begins: `lead` is the way up to there. */
export function homeward(scene: Scene, lead: (turnInMm: number) => readonly Waypoint[]): Ways {
  return turnInsMm(scene).flatMap((turnInMm) =>
    TURN_IN_RADII.map((share) => [
      ...lead(turnInMm),
      { ...beforeWedge(scene, turnInMm), radiusMm: share * scene.reach.tipRadiusMm },
      beforeWedge(scene, 0),
    ]),
  );
}

/**
 * From a lane that runs at a distance from a side's closing wall: straight on to the push line, or, where that would
 * meet it too near the wedge, off at an angle to a place farther out.
 */
export function homewardFromLane(scene: Scene, side: Side, asideMm: number, lead: readonly Waypoint[]): Ways {
  const { aim, nx, ny } = scene.target;
  const [aimAside, slope] = side === "x" ? [aim.yMm, ny] : [aim.xMm, nx];
  const meetsMm = (asideMm - aimAside) / slope;
  const least = scene.reach.groundFrontMm + scene.ballDiameterMm;
  if (meetsMm >= least) {
    return TURN_IN_RADII.map((share) => [
      ...lead,
      { ...beforeWedge(scene, meetsMm), radiusMm: share * scene.reach.tipRadiusMm },
      beforeWedge(scene, 0),
    ]);
  }
  return homeward(scene, (turnInMm) => [...lead, leaveAt(scene, side, asideMm, turnInMm)]);
}

function leaveAt(scene: Scene, side: Side, asideMm: number, turnInMm: number): Waypoint {
  const turnIn = beforeWedge(scene, turnInMm);
  const [along, aside] = side === "x" ? [turnIn.xMm, turnIn.yMm] : [turnIn.yMm, turnIn.xMm];
  const off = along + ((aside - asideMm) * cos(LEAVE_RAD)) / sin(LEAVE_RAD);
  return waypoint(side, off, asideMm, (TURN_IN_RADII[0] ?? 0) * scene.reach.tipRadiusMm);
}
