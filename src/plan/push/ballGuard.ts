import { convexHull } from "../../geometry/polygon.ts";
import { robotOutline } from "../../model/outline.ts";
import type { Robot } from "../../model/robot.ts";
import type { Move } from "../../model/routine.ts";
import { reachMm } from "../../model/turningRoom.ts";
import type { PointMm } from "../../model/zone.ts";
import type { Pose } from "../../motion/pose.ts";
import { advancePose } from "../../motion/touch.kernel.ts";
import { motionOf } from "../../motion/walker.ts";
import { cos, sin } from "../../num/elementary.ts";
import { leastGap } from "./ballGuard.kernel.ts";

/** A ball that lies somewhere, with its number in the placement. */
export interface LyingBall extends PointMm {
  readonly index: number;
  readonly radiusMm: number;
}

/** A pose counts as reached when the robot is this near to it, mm: so much a ball may be nearer than one that it keeps off. */
const STANDING_TOL_MM = 1;

/** Tells which lying balls a robot would touch, or come too near to, on its way. It counts as its hull. */
export class BallGuard {
  private readonly hull: Float64Array;
  private readonly reach: number;
  private readonly gapMm: number;
  private readonly at = { x: 0, y: 0, c: 1, s: 0 };

  /** @param gapMm room kept between robot and balls it is not to touch */
  constructor(robot: Robot, gapMm: number) {
    const { footprint, ground } = robotOutline(robot);
    const hull = convexHull([...footprint, ...ground]);
    this.hull = Float64Array.from(hull.flatMap((p) => [p.xMm, p.yMm]));
    this.reach = reachMm(hull);
    this.gapMm = gapMm;
  }

  /** Whether all moves from a pose keep away from all the balls. Moves are taken as commanded: they must be free of walls. */
  isClear(from: Pose, moves: readonly Move[], balls: readonly LyingBall[]): boolean {
    const { at } = this;
    at.x = from.xMm;
    at.y = from.yMm;
    at.c = cos(from.headingRad);
    at.s = sin(from.headingRad);
    return moves.every((move) => {
      // What a push "to the wall" drives on after it has met the wall does not move it.
      const { sigma, kappa, length: whole } = motionOf(move);
      const length = move.kind === "toWall" ? Math.abs(move.distanceMm) : whole;
      const clear = balls.every((ball) => this.misses(ball, sigma, kappa, length));
      advancePose(at, sigma, kappa, length);
      return clear;
    });
  }

  /** Whether the robot can stand at a pose without touching any of the balls. */
  canStand(pose: Pose, balls: readonly LyingBall[]): boolean {
    const { at } = this;
    at.x = pose.xMm;
    at.y = pose.yMm;
    at.c = cos(pose.headingRad);
    at.s = sin(pose.headingRad);
    return balls.every((ball) => this.misses(ball, 0, 0, 0, STANDING_TOL_MM));
  }

  private misses(ball: LyingBall, sigma: number, kappa: number, length: number, tolMm = 0): boolean {
    const { at, hull } = this;
    const room = ball.radiusMm + this.gapMm - tolMm;
    const dx = ball.xMm - at.x;
    const dy = ball.yMm - at.y;
    const far = this.reach + room + (sigma === 0 ? 0 : length);
    if (dx * dx + dy * dy > far * far) return true;
    const ahead = at.c * dx + at.s * dy;
    const left = at.c * dy - at.s * dx;
    return leastGap(hull, ahead, left, sigma, kappa, length, room) >= room;
  }
}
