import { homewardFromLane } from "./homing.ts";
import { flankMm, overhangMm, type Side, waypoint } from "./place.ts";
import type { PushRun } from "./pushRun.ts";
import type { Waypoint } from "./rounding.ts";
import type { Scene } from "./scene.ts";

export interface RingOptions {
  /** Which closing wall it starts along: "x" leads away along y = 0 and comes back along x = 0. */
  readonly side: Side;
  /** How much farther in than right beside the walls. */
  readonly insetMm: number;
  readonly radiusMm: number;
  /** Back up and square up after each corner. */
  readonly squareUps: boolean;
}

/** A lap all round: away from the wedge along one closing wall, along both far walls, back along the other, onto the wedge. */
export function ringRun(scene: Scene, options: RingOptions): PushRun {
  const { side, insetMm, radiusMm, squareUps } = options;
  // Led away from the corner, the walls are on the other hand.
  const outer: Side = side === "x" ? "y" : "x";
  const gap = flankMm(scene, outer) + scene.berthMm + overhangMm(scene, outer, radiusMm) + insetMm;
  const along = side === "x" ? scene.widthMm : scene.heightMm;
  const across = side === "x" ? scene.heightMm : scene.widthMm;
  const leg = side === "x" ? scene.target.legXMm : scene.target.legYMm;
  const corner = { radiusMm, squareUp: squareUps };
  const start = Math.max(gap, leg + scene.reach.rearRadiusMm + scene.berthMm);
  const lap: readonly Waypoint[] = [
    waypoint(side, start, gap),
    { ...waypoint(side, along - gap, gap), ...corner },
    { ...waypoint(side, along - gap, across - gap), ...corner },
    { ...waypoint(side, gap, across - gap), ...corner },
  ];
  const ways = homewardFromLane(scene, outer, gap, lap);
  return { ways, backUp: false, squareUps: [], end: "wall", retreat: "off" };
}
