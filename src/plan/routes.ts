import type { PointMm } from "../model/zone.ts";
import { homeward, homewardFromLane } from "./homing.ts";
import {
  beforeWedge,
  behindMm,
  besideMm,
  breadthMm,
  flankMm,
  homeOf,
  lengthMm,
  overhangMm,
  pusherWidthMm,
  type Side,
  waypoint,
} from "./place.ts";
import type { PushRun } from "./pushRun.ts";
import type { Scene } from "./scene.ts";

/** The single pushes that patterns are made of; each ends on the wedge or at a wall. */

const RUN: Omit<PushRun, "ways"> = { backUp: false, squareUps: [], end: "wall", retreat: "off" };

/**
 * From the far corner to the wedge in a bow. `bow` says how far it swings out: 0 is the straight way, 1 nearly
 * reaches the corner between the side's far wall and closing wall. Bows from 0 to 1 on both sides cover the zone.
 */
export function bowRun(scene: Scene, side: Side, bow: number, options: Partial<PushRun> = {}): PushRun {
  const home = homeOf(scene);
  const outer = outerCorner(scene, side);
  return {
    ...RUN,
    ways: homeward(scene, (turnInMm) => {
      if (bow === 0) return [home];
      const turnIn = beforeWedge(scene, turnInMm);
      const middle = between(turnIn, home, 0.5);
      return [home, between(middle, outer, bow)];
    }),
    ...options,
  };
}

/** Where an outermost bow turns: a curve there keeps clear of the closing wall. */
function outerCorner(scene: Scene, side: Side): PointMm {
  const home = homeOf(scene);
  const aside = flankMm(scene, side) + scene.berthMm + overhangMm(scene, side, 0);
  return side === "x" ? { xMm: home.xMm, yMm: aside } : { xMm: aside, yMm: home.yMm };
}

/** A hook: along the far wall, round the corner, along the closing wall and onto the wedge; `insetMm` farther in than the outermost. */
export function hookRun(
  scene: Scene,
  side: Side,
  insetMm: number,
  radiusMm: number,
  options: Partial<PushRun> = {},
): PushRun {
  const home = homeOf(scene);
  const along = (side === "x" ? home.xMm : home.yMm) - insetMm;
  const from = side === "x" ? home.yMm : home.xMm;
  const aside = flankMm(scene, side) + scene.berthMm + overhangMm(scene, side, radiusMm) + insetMm;
  return {
    ...RUN,
    ways: homewardFromLane(scene, side, aside, [
      waypoint(side, along, from),
      waypoint(side, along, aside, radiusMm),
    ]),
    ...options,
  };
}

/** Along a closing wall from the far wall toward the corner; with `home`, it swings out in time for a square push onto the wedge. */
export function closingRun(scene: Scene, side: Side, home: boolean, options: Partial<PushRun> = {}): PushRun {
  return laneRun(scene, side, besideMm(scene, side), home, options);
}

/** A lane parallel to a closing wall, from the far wall to whatever stops it, or (`home`) on to the push line and the wedge. */
export function laneRun(
  scene: Scene,
  side: Side,
  asideMm: number,
  home: boolean,
  options: Partial<PushRun> = {},
): PushRun {
  const start = waypoint(side, lengthMm(scene, side) - behindMm(scene), asideMm);
  const straight = [start, waypoint(side, 0, asideMm)];
  const ways = home ? homewardFromLane(scene, side, asideMm, [start]) : [straight];
  return { ...RUN, backUp: true, ways, ...options };
}

/** Square onto the wedge from close by, beside the middle or in it: brings in what lies in front of its edge. */
export function cornerPush(scene: Scene, asideMm: number, options: Partial<PushRun> = {}): PushRun {
  const { reach } = scene;
  const before = reach.groundFrontMm + 2 * reach.tipRadiusMm;
  return {
    ...RUN,
    ways: [[beforeWedge(scene, before, asideMm), beforeWedge(scene, 0, asideMm)]],
    ...options,
  };
}

/** Asides of `count` corner pushes: the middle first, then a third of the pusher to either side. */
export function cornerAsides(scene: Scene, count: number): readonly number[] {
  const step = pusherWidthMm(scene) / 3;
  return Array.from({ length: count }, (_, i) =>
    i === 0 ? 0 : (i % 2 === 1 ? step : -step) * ((i + 1) >> 1),
  );
}

/** Distances from a closing wall of lanes that cover the zone up to the far wall, nearest first. */
export function laneAsides(scene: Scene, side: Side, spacing: number): readonly number[] {
  const other: Side = side === "x" ? "y" : "x";
  const near = besideMm(scene, side);
  const far = breadthMm(scene, side) - besideMm(scene, other);
  const count = Math.max(1, Math.ceil((far - near) / (spacing * pusherWidthMm(scene)) - 1e-9));
  return Array.from({ length: count + 1 }, (_, i) => near + ((far - near) * i) / count);
}

function between(a: PointMm, b: PointMm, share: number): PointMm {
  return { xMm: a.xMm + (b.xMm - a.xMm) * share, yMm: a.yMm + (b.yMm - a.yMm) * share };
}
