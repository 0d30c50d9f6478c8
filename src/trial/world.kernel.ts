import { MAX_BALLS } from "../model/project.ts";
import type { Surroundings } from "../motion/surroundings.ts";
import { TrajectoryHash } from "../num/hash.ts";
import { arms, setArms } from "./arms.kernel.ts";
import { bx, by, inHand, mode, sx, sy, vx, vy } from "./balls.kernel.ts";
import { byRobot, holdNx, holdNy, pairBits, stands } from "./contact.kernel.ts";
import type { GuideState } from "./guide.ts";
import type { GyroState } from "./gyro.ts";
import type { TrialPlan } from "./plan.ts";
import {
  hash,
  home,
  homeAtS,
  jamMove,
  jamS,
  jamX,
  jamY,
  leftMove,
  leftS,
  result,
  touched,
  touchMove,
  touchS,
  wasHome,
  wasJammed,
} from "./result.kernel.ts";
import { robot } from "./robot.kernel.ts";
import { awake, ballsInPlay } from "./wake.kernel.ts";
import { lean, onWedge } from "./wedge.kernel.ts";

/**
 * What lives on from one move to the next, for each ball. Everything else is a constant of the plan or the trial, or written within
 * each move before it is read. Complete: tests/unit/trial/world takes every run up after each of its moves when another has gone
 * through the world, and knows of every array and object of this room which of these it is.
 */
const LIVING = [
  bx,
  by,
  vx,
  vy,
  sx,
  sy,
  mode,
  inHand,
  awake,
  byRobot,
  stands,
  pairBits,
  holdNx,
  holdNy,
  onWedge,
  lean,
  touched,
  home,
  homeAtS,
  wasHome,
  wasJammed,
  jamX,
  jamY,
  jamS,
  jamMove,
  touchS,
  touchMove,
  leftS,
  leftMove,
];

/** A run between two of its moves, kept so that another may go on from there: of a list of moves, in the same trial of the same plan. */
export class KeptWorld {
  /** Row after row of LIVING; doubles hold all of their numbers exactly. */
  private readonly balls = new Float64Array(LIVING.length * MAX_BALLS);
  private readonly robot = { ...robot };
  private readonly result = { ...result };
  private readonly hash = new TrajectoryHash();
  private armsRad = 0;
  private around: Surroundings | null = null;
  private gyro: GyroState | null = null;
  private guide: GuideState | null = null;

  keep({ planner, gyro, guide }: TrialPlan): void {
    const n = ballsInPlay();
    const { balls } = this;
    let at = 0;
    for (const row of LIVING) for (let i = 0; i < n; i++) balls[at++] = row[i]!;
    Object.assign(this.robot, robot);
    Object.assign(this.result, result);
    this.hash.copy(hash);
    this.armsRad = arms.angle;
    this.around = planner.around;
    this.gyro = gyro?.keep() ?? null;
    this.guide = guide?.keep() ?? null;
  }

  takeUp(plan: TrialPlan): void {
    const n = ballsInPlay();
    const { balls } = this;
    let at = 0;
    for (const row of LIVING) for (let i = 0; i < n; i++) row[i] = balls[at++]!;
    Object.assign(robot, this.robot);
    Object.assign(result, this.result);
    hash.copy(this.hash);
    // The footprint goes by the angle of the arms alone.
    if (plan.arms !== null && arms.angle !== this.armsRad) setArms(plan.arms.arms, this.armsRad);
    if (this.around !== null) plan.planner.around = this.around;
    if (this.gyro !== null) plan.gyro?.takeUp(this.gyro);
    if (this.guide !== null) plan.guide?.takeUp(this.guide);
  }
}
