import { Vec2 } from "planck";
import type { PointMm } from "../../src/model/zone.ts";
import { setProfile } from "../../src/motion/duration.ts";
import { sinCos } from "../../src/num/elementary.ts";
import { freeze, move, profile, progressAt, setRobot, startMove } from "../../src/trial/clock.kernel.ts";
import type { RealMotion } from "../../src/trial/drift.ts";
import type { TrialPlan } from "../../src/trial/plan.ts";
import { robot } from "../../src/trial/robot.kernel.ts";
import { ballOf } from "./planckParts.ts";
import { PlanckScene } from "./planckScene.ts";
import { MM_PER_UNIT } from "./planckUnits.ts";

/** Time given to balls to come to rest after the last move, s. */
const SETTLE_S = 120;

export interface PlanckOutcome {
  readonly delivered: readonly boolean[];
  readonly endPositions: readonly PointMm[];
  readonly out: readonly boolean[];
  /** Moves in which the guard stopped the robot. */
  readonly jams: number;
}

export interface PlanckTrialOptions {
  readonly stepS?: number;
  /** A ball the robot pushes deeper than this into something jams, mm: beyond the worst overlap of a free push. */
  readonly guardMm?: number;
}

/**
 * The engine's trial with planck for the balls: the robot's pose at each step comes from the same planner, drift and
 * clock, the floor's pull from the same law. A ball that cannot get away jams: planck lets overlaps grow then, and the
 * guard stops the robot for the rest of the move, as the engine's own rule does.
 */
export class PlanckTrial {
  private readonly plan: TrialPlan;
  private readonly scene: PlanckScene;
  private readonly stepS: number;
  private readonly guardMm: number;
  private readonly real: RealMotion = { scale: 1, kappaExtra: 0 };
  private jams = 0;

  constructor(plan: TrialPlan, { stepS = 1 / 240, guardMm = 1.5 }: PlanckTrialOptions = {}) {
    this.plan = plan;
    this.scene = new PlanckScene(plan.project, plan.outline.footprint);
    this.stepS = stepS;
    this.guardMm = guardMm;
  }

  run(seed: number, index: number): PlanckOutcome {
    const { plan, scene } = this;
    const { rules } = plan.project;
    scene.lay(plan.kinds, plan.placement ?? plan.placements.draw(seed, index));
    plan.drift.openTrial(seed, index);
    this.placeRobot();
    this.jams = 0;
    let t = 0;
    for (let m = 0; m < plan.routine.moves.length && t < rules.timeLimitS; m++) {
      this.openMove(m);
      const durationS = Math.min(profile.durationS, rules.timeLimitS - t);
      startMove(plan.planner, m, t, this.real.scale);
      this.runMove(durationS);
      t += durationS;
    }
    this.settle();
    return {
      delivered: scene.balls.map((ball) => scene.isHome(ball)),
      endPositions: scene.balls.map((ball) => scene.placeOf(ball)),
      out: scene.balls.map((ball) => ball.out),
      jams: this.jams,
    };
  }

  private placeRobot(): void {
    const { entry, drift } = this.plan;
    const trig = new Float64Array(2);
    robot.x = entry.xMm + drift.startX;
    robot.y = entry.yMm + drift.startY;
    robot.heading = entry.headingRad + drift.startHeading;
    sinCos(robot.heading, trig);
    robot.s = trig[0]!;
    robot.c = trig[1]!;
    freeze();
    this.scene.robot.setTransform(new Vec2(robot.x / MM_PER_UNIT, robot.y / MM_PER_UNIT), robot.heading);
  }

  private openMove(m: number): void {
    const { plan, real } = this;
    const command = plan.routine.moves[m]!;
    const { sigma, kappa, length } = plan.motions[m]!;
    plan.drift.openMove(m, command, sigma, real);
    setProfile(plan.project.robot.drive, command, profile);
    const { x, y, c, s, heading } = robot;
    plan.planner.plan(x, y, c, s, heading, sigma, kappa + real.kappaExtra, length * real.scale);
  }

  private runMove(durationS: number): void {
    const { scene } = this;
    const velocity = new Vec2(0, 0);
    const steps = Math.max(1, Math.ceil(durationS / this.stepS - 1e-9));
    const h = durationS / steps;
    for (let n = 1; n <= steps; n++) {
      const q = progressAt((n - 1) * h);
      const { x, y, heading } = robot;
      setRobot(this.plan.planner, n * h);
      const per = 1 / (MM_PER_UNIT * h);
      velocity.set((robot.x - x) * per, (robot.y - y) * per);
      scene.robot.setLinearVelocity(velocity);
      scene.robot.setAngularVelocity((robot.heading - heading) / h);
      scene.step(h);
      const pushes = robot.rate > 0 || progressAt(n * h) > q;
      if (pushes && this.isJammed()) this.stop(q, n * h);
    }
    scene.robot.setLinearVelocity(new Vec2(0, 0));
    scene.robot.setAngularVelocity(0);
  }

  private isJammed(): boolean {
    const { scene, guardMm } = this;
    for (let at = scene.robot.getContactList(); at; at = at.next) {
      const ball = at.contact.isTouching() && at.other ? ballOf(at.other) : null;
      if (ball !== null && !ball.out && scene.overlapOf(ball) > guardMm) return true;
    }
    return false;
  }

  /** Takes the robot and the jammed balls back to before the step; no more progress in this move. */
  private stop(q: number, t: number): void {
    const { scene } = this;
    this.jams++;
    move.stopQ = q;
    setRobot(this.plan.planner, t);
    freeze();
    scene.robot.setTransform(new Vec2(robot.x / MM_PER_UNIT, robot.y / MM_PER_UNIT), robot.heading);
    for (const ball of scene.balls) if (scene.overlapOf(ball) > this.guardMm) scene.takeBack(ball);
  }

  private settle(): void {
    const { scene } = this;
    const isMoving = (): boolean =>
      scene.balls.some((ball) => !ball.out && ball.body.getLinearVelocity().lengthSquared() > 0);
    for (let t = 0; t < SETTLE_S && isMoving(); t += this.stepS) scene.step(this.stepS);
  }
}
