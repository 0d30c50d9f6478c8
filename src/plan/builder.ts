import { endAngleRad, hingedArms, swingMoveS } from "../model/arms.ts";
import type { ArmsEnd, Move } from "../model/routine.ts";
import { PI } from "../model/units.ts";
import { moveDurationS } from "../motion/duration.ts";
import type { Pose } from "../motion/pose.ts";
import { Walker } from "../motion/walker.ts";
import { wrapAngle } from "../num/elementary.ts";
import { Guard } from "./guard.ts";
import type { Scene } from "./scene.ts";
import { Stance } from "./stance.ts";

/** Turns and drives smaller than this are left out: far below what a robot can do. */
const SMALLEST_TURN_RAD = 1e-4;
const SMALLEST_DRIVE_MM = 0.5;
/** How far outside the walls' lines a part of the robot may be by rounding, mm. */
const OUTSIDE_TOL_MM = 0.01;

/** A state to come back to. */
export interface Mark {
  readonly pose: Pose;
  readonly timeS: number;
  readonly moveCount: number;
  readonly armsRad: number;
}

/**
 * Writes a routine move by move and knows where the robot without drift is after each. Every step returns whether it
 * could be done: a move that would bring the robot nearer than the clearance to anything is refused and leaves no trace
 * (`toWall` alone may touch). The robot never backs out of the doorway.
 */
export class RoutineBuilder {
  readonly moves: Move[] = [];
  readonly scene: Scene;
  /** Speed of straight stretches. */
  readonly speedMmPerS: number;
  /** Rate of turns on the spot: slowed down alike, since the arms may sweep over balls. */
  readonly turnRateRadPerS: number;
  private readonly walker: Walker;
  private readonly guardOpen: Guard;
  private readonly guardClosed: Guard | null;
  private readonly stance: Stance;

  /** @param from where the robot stands, in the scene's frame; left out: at its entry */
  constructor(scene: Scene, speedMmPerS: number, from?: Pose) {
    this.scene = scene;
    this.speedMmPerS = speedMmPerS;
    const { topSpeedMmPerS, turnRateRadPerS } = scene.project.robot.drive;
    this.turnRateRadPerS = turnRateRadPerS * Math.min(1, speedMmPerS / topSpeedMmPerS);
    this.walker = new Walker(scene.project, from);
    this.guardOpen = Guard.of(scene.grown);
    this.guardClosed = scene.grownClosed === null ? null : Guard.of(scene.grownClosed);
    this.stance = new Stance(scene);
  }

  get pose(): Pose {
    return this.walker.pose;
  }

  get timeS(): number {
    return this.walker.timeS;
  }

  mark(): Mark {
    return {
      pose: this.walker.pose,
      timeS: this.walker.timeS,
      moveCount: this.moves.length,
      armsRad: this.walker.armsAngleRad,
    };
  }

  rewind(mark: Mark): void {
    this.walker.pose = mark.pose;
    this.walker.timeS = mark.timeS;
    this.moves.length = mark.moveCount;
    this.walker.armsAngleRad = mark.armsRad;
  }

  /** Does all of it or nothing. */
  attempt(steps: () => boolean): boolean {
    const mark = this.mark();
    if (steps()) return true;
    this.rewind(mark);
    return false;
  }

  /** Straight, forward positive. */
  drive(distanceMm: number, speedMmPerS = this.speedMmPerS): boolean {
    if (Math.abs(distanceMm) < SMALLEST_DRIVE_MM) return true;
    return this.clearMove({ kind: "drive", distanceMm, speedMmPerS });
  }

  /** On the spot, left positive. */
  turn(angleRad: number, atMostRadPerS = Number.POSITIVE_INFINITY): boolean {
    if (Math.abs(angleRad) < SMALLEST_TURN_RAD) return true;
    const rateRadPerS = Math.min(this.turnRateRadPerS, atMostRadPerS);
    return this.clearMove({ kind: "turn", angleRad, rateRadPerS });
  }

  /** Forward along a circle, left positive. */
  arc(radiusMm: number, angleRad: number, speedMmPerS = this.speedMmPerS): boolean {
    if (Math.abs(angleRad) < SMALLEST_TURN_RAD) return true;
    return this.clearMove({ kind: "arc", distanceMm: radiusMm * Math.abs(angleRad), angleRad, speedMmPerS });
  }

  wait(durationS: number): boolean {
    return this.clearMove({ kind: "wait", durationS });
  }

  /** Swings hinged arms to an end; refused where a wall is in their way. Nothing is done where they are there already. */
  swingArms(to: ArmsEnd): boolean {
    const arms = hingedArms(this.scene.project.robot);
    if (arms === null) return false;
    if (this.walker.armsAngleRad === endAngleRad(arms, to)) return true;
    const move: Move = { kind: "arms", to, durationS: swingMoveS(arms) };
    if (!this.walker.swingsFreely(move)) return false;
    this.walker.advance(move);
    this.moves.push(move);
    return true;
  }

  get armsAreClosed(): boolean {
    const arms = hingedArms(this.scene.project.robot);
    return arms !== null && this.walker.armsAngleRad === arms.closedAngleRad;
  }

  /** What keeps the robot clear as its arms are now: open, or closed. */
  private get guard(): Guard {
    return this.armsAreClosed && this.guardClosed !== null ? this.guardClosed : this.guardOpen;
  }

  /** The way of an earlier move run backward, at the given speed. `lengthMm`: how far a "to the wall" really went. */
  undo(move: Move, lengthMm: number, speedMmPerS: number): boolean {
    switch (move.kind) {
      case "drive":
        return this.drive(-move.distanceMm, speedMmPerS);
      case "toWall":
        return this.drive(move.distanceMm + move.overrunMm < 0 ? lengthMm : -lengthMm, speedMmPerS);
      case "turn":
        return this.turn(-move.angleRad);
      case "arc":
        return this.clearMove({
          ...move,
          distanceMm: -move.distanceMm,
          angleRad: -move.angleRad,
          speedMmPerS,
        });
      case "wait":
        return true;
      // On the way back nothing is carried: the arms stay as they are.
      case "arms":
        return true;
      default:
        return move satisfies never;
    }
  }

  /** On the spot to a heading: the short way round, else the long one. */
  face(headingRad: number): boolean {
    const short = wrapAngle(headingRad - this.pose.headingRad);
    return this.turn(short) || this.turn(short > 0 ? short - 2 * PI : short + 2 * PI);
  }

  /** Straight until something stops it. Refused where nothing does within `mostMm` (the doorway). */
  toWall(sign: 1 | -1, speedMmPerS = this.speedMmPerS, mostMm = Number.POSITIVE_INFINITY): boolean {
    const { widthMm, heightMm, project } = this.scene;
    const freeMm = this.walker.freeWayMm(sign);
    if (freeMm > Math.min(mostMm, widthMm + heightMm)) return false;
    const before = this.stance.outsideMm(this.pose);
    const overrunMm = sign * Math.max(project.settings.overrunMm, this.brakingMm(speedMmPerS));
    return this.attempt(() => {
      const move: Move = { kind: "toWall", distanceMm: sign * freeMm, overrunMm, speedMmPerS };
      this.moves.push(move);
      return (
        this.walker.advance(move).touched &&
        this.stance.outsideMm(this.pose) <= Math.max(before, OUTSIDE_TOL_MM)
      );
    });
  }

  /** Backs into the wall behind and squares up on it; refused where the robot's back does not come to lie flat on it. */
  squareUp(mostMm = Number.POSITIVE_INFINITY): boolean {
    return this.attempt(() => this.toWall(-1, this.speedMmPerS, mostMm) && this.stance.liesFlat(this.pose));
  }

  /** Straight on as far as the clearance allows. */
  driveOn(speedMmPerS = this.speedMmPerS): boolean {
    const freeMm = this.clearWayMm();
    return freeMm !== null && this.drive(freeMm, speedMmPerS);
  }

  /** How far straight on the clearance allows, mm; null where nothing is in the way (the doorway). */
  clearWayMm(): number | null {
    const { widthMm, heightMm } = this.scene;
    const most = widthMm + heightMm;
    const freeMm = this.guard.freeWayMm(this.pose, 1, most);
    return freeMm < most ? freeMm - SMALLEST_DRIVE_MM : null;
  }

  /** Free way of the real robot straight on or back, mm. */
  freeWayMm(sign: 1 | -1): number {
    return this.walker.freeWayMm(sign);
  }

  /** Way the robot still covers while it brakes: with this much overrun it meets the wall at full speed. */
  private brakingMm(speedMmPerS: number): number {
    const { accelMmPerS2, topSpeedMmPerS } = this.scene.project.robot.drive;
    const speed = Math.min(speedMmPerS, topSpeedMmPerS);
    return (speed * speed) / (2 * accelMmPerS2);
  }

  private clearMove(move: Move): boolean {
    const from = this.pose;
    const to = this.guard.poseAfter(from, move);
    if (to === null || this.stance.outsideMm(to) > Math.max(this.stance.outsideMm(from), OUTSIDE_TOL_MM))
      return false;
    this.walker.pose = to;
    this.walker.timeS += moveDurationS(this.scene.project.robot.drive, move);
    this.moves.push(move);
    return true;
  }
}
