import { RAD_PER_DEG } from "../model/units.ts";
import { cos, sin } from "../num/elementary.ts";
import { turnsOnSpot } from "./carry.ts";
import { beforeWedge, curveMm, type Side, turnInsMm, waypoint } from "./place.ts";
import type { PushRun } from "./pushRun.ts";
import type { Waypoint } from "./rounding.ts";
import type { Scene } from "./scene.ts";

/**
 * The last part of a push: onto the push line, which meets the wedge's long side squarely, and along it against the
 * wedge. A slanting push would be turned away by the edge, and would leave balls in front of it.
 */

/** Radii tried where a way turns onto the push line, in tip radii, the gentlest first; 0: on the spot. */
const TURN_IN_RADII = [0.6, 0.4, 0];
/** A V's wide curve is tried at every so many of the places where a push may turn in: between them it has room at one or at none. */
const WIDE_EVERY = 3;
/** Angle at which a lane beside a closing wall is left for the push line. */
const LEAVE_RAD = 45 * RAD_PER_DEG;

type Ways = PushRun["ways"];

/** From any point straight to where the push line begins: `lead` is the way up to there. */
export function homeward(scene: Scene, lead: (turnInMm: number) => readonly Waypoint[]): Ways {
  const turnIns = turnInsMm(scene);
  const way = (turnInMm: number, radiusMm: number): Ways[number] => [
    ...lead(turnInMm),
    { ...beforeWedge(scene, turnInMm), radiusMm },
    beforeWedge(scene, 0),
  ];
  // A V keeps its balls in the widest curve only: that first. What arms carry they keep on the spot as well: the nearest turn first.
  const [wideMm, ...radiiMm] = turnInRadiiMm(scene);
  if (!keepsOnlyInCurves(scene) || wideMm === undefined) {
    return turnIns.flatMap((mm) => turnInRadiiMm(scene).map((radiusMm) => way(mm, radiusMm)));
  }
  const wide = turnIns.filter((_, i) => i % WIDE_EVERY === 0).map((mm) => way(mm, wideMm));
  return [...wide, ...turnIns.flatMap((mm) => radiiMm.map((radiusMm) => way(mm, radiusMm)))];
}

/** Radii tried for the turn onto the push line, mm, the gentlest first. */
function turnInRadiiMm(scene: Scene): readonly number[] {
  const radii = TURN_IN_RADII.map((share) => share * scene.reach.tipRadiusMm);
  return keepsOnlyInCurves(scene) ? [curveMm(scene, 0), ...radii] : radii;
}

function keepsOnlyInCurves({ carry }: Scene): boolean {
  return carry.holds && !turnsOnSpot(carry);
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
    return turnInRadiiMm(scene).map((radiusMm) => [
      ...lead,
      { ...beforeWedge(scene, meetsMm), radiusMm },
      beforeWedge(scene, 0),
    ]);
  }
  return homeward(scene, (turnInMm) => [...lead, leaveAt(scene, side, asideMm, turnInMm)]);
}

function leaveAt(scene: Scene, side: Side, asideMm: number, turnInMm: number): Waypoint {
  const turnIn = beforeWedge(scene, turnInMm);
  const [along, aside] = side === "x" ? [turnIn.xMm, turnIn.yMm] : [turnIn.yMm, turnIn.xMm];
  const off = along + ((aside - asideMm) * cos(LEAVE_RAD)) / sin(LEAVE_RAD);
  return waypoint(side, off, asideMm, curveMm(scene, TURN_IN_RADII[0] ?? 0));
}
