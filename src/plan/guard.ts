import type { Project } from "../model/project.ts";
import type { Move } from "../model/routine.ts";
import { findTouch } from "../motion/findTouch.kernel.ts";
import type { Pose } from "../motion/pose.ts";
import { type Surroundings, surroundingsOf } from "../motion/surroundings.ts";
import { advancePose, noTouch, type Touch } from "../motion/touch.kernel.ts";
import { motionOf } from "../motion/walker.ts";
import { cos, sin } from "../num/elementary.ts";
import { PoseMemo } from "./poseMemo.kernel.ts";

/**
 * Tells whether a move touches anything, and where it ends if not: all that planning needs of most moves, at a small
 * part of what walking them costs.
 */
export class Guard {
  private readonly around: Surroundings;
  private readonly touch: Touch = noTouch();
  private readonly motion = { x: 0, y: 0, c: 1, s: 0, sigma: 0, kappa: 0 };
  private readonly memo = new PoseMemo();

  /** One for each project, with all that it has found out. */
  static of(project: Project): Guard {
    const known = guards.get(project) ?? new Guard(project);
    guards.set(project, known);
    return known;
  }

  private constructor(project: Project) {
    this.around = surroundingsOf(project.zone, project.robot);
  }

  /** Free way straight on (`sign` 1) or back (−1) in mm; at most `mostMm`. */
  freeWayMm(from: Pose, sign: 1 | -1, mostMm: number): number {
    this.setMotion(from, sign, 0);
    findTouch(this.around, this.motion, mostMm, this.touch, null);
    return this.touch.q;
  }

  /** The pose after the move; null if the robot would touch a wall, a keep-out or the wedge, or be pressed along one. */
  poseAfter(from: Pose, move: Move): Pose | null {
    const { memo } = this;
    const { sigma, kappa, length } = motionOf(move);
    const { key } = memo;
    key[0] = from.xMm;
    key[1] = from.yMm;
    key[2] = from.headingRad;
    key[3] = sigma;
    key[4] = kappa;
    key[5] = length;
    const known = memo.find();
    if (known >= 0) {
      const xMm = memo.at(known, 0);
      return Number.isNaN(xMm) ? null : { xMm, yMm: memo.at(known, 1), headingRad: memo.at(known, 2) };
    }
    const to = this.workOut(from, sigma, kappa, length);
    if (to === null) memo.keep(Number.NaN, 0, 0);
    else memo.keep(to.xMm, to.yMm, to.headingRad);
    return to;
  }

  private workOut(from: Pose, sigma: number, kappa: number, length: number): Pose | null {
    const { motion, touch } = this;
    this.setMotion(from, sigma, kappa);
    findTouch(this.around, motion, length, touch, null);
    if (touch.kind !== "none" || touch.q < length) return null;
    advancePose(motion, sigma, kappa, length);
    return { xMm: motion.x, yMm: motion.y, headingRad: from.headingRad + kappa * length };
  }

  private setMotion(from: Pose, sigma: number, kappa: number): void {
    const { motion } = this;
    motion.x = from.xMm;
    motion.y = from.yMm;
    motion.c = cos(from.headingRad);
    motion.s = sin(from.headingRad);
    motion.sigma = sigma;
    motion.kappa = kappa;
  }
}

const guards = new WeakMap<Project, Guard>();
