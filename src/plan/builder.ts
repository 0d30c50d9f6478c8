import { convexHull } from "../geometry/polygon.ts";
import { robotOutline } from "../model/outline.ts";
import type { Move } from "../model/routine.ts";
import { PI } from "../model/units.ts";
import type { PointMm } from "../model/zone.ts";
import { moveDurationS } from "../motion/duration.ts";
import type { Pose } from "../motion/pose.ts";
import { Walker } from "../motion/walker.ts";
import { cos, sin, wrapAngle } from "../num/elementary.ts";
import { Guard } from "./guard.ts";
import { TILT_RAD } from "./reach.ts";
import type { Scene } from "./scene.ts";

/** Turns and drives smaller than this are left out: far below what a robot can do. */
const SMALLEST_TURN_RAD = 1e-4;
const SMALLEST_DRIVE_MM = 0.5;
/** First way driven to make room for a turn, mm, and the ratio of each next one to it. */
const ROOM_STEP_MM = 30;
const ROOM_GROWTH = 1.5;
/** How far outside the walls' lines a part of the robot may be by rounding, mm. */
const OUTSIDE_TOL_MM = 0.01;

/** A state to come back to. */
export interface Mark {
  readonly pose: Pose;
  readonly timeS: number;
  readonly moveCount: number;
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
  private readonly guard: Guard;
  private readonly hull: readonly PointMm[];

  constructor(scene: Scene, speedMmPerS: number) {
    this.scene = scene;
    this.speedMmPerS = speedMmPerS;
    const { topSpeedMmPerS, turnRateRadPerS } = scene.project.robot.drive;
    this.turnRateRadPerS = turnRateRadPerS * Math.min(1, speedMmPerS / topSpeedMmPerS);
    this.walker = new Walker(scene.project);
    this.guard = new Guard(scene.grown);
    const { footprint, ground } = robotOutline(scene.project.robot);
    this.hull = convexHull([...footprint, ...ground]);
  }

  get pose(): Pose {
    return this.walker.pose;
  }

  get timeS(): number {
    return this.walker.timeS;
  }

  mark(): Mark {
    return { pose: this.walker.pose, timeS: this.walker.timeS, moveCount: this.moves.length };
  }

  rewind(mark: Mark): void {
    this.walker.pose = mark.pose;
    this.walker.timeS = mark.timeS;
    this.moves.length = mark.moveCount;
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
      default:
        return move satisfies never;
    }
  }

  /** On the spot to a heading: the short way round, else the long one. */
  face(headingRad: number): boolean {
    const short = wrapAngle(headingRad - this.pose.headingRad);
    return this.turn(short) || this.turn(short > 0 ? short - 2 * PI : short + 2 * PI);
  }

  /** The same, after driving forward or back, or peeling off a wall beside it, as little as it takes to have the room. */
  faceWithRoom(headingRad: number): boolean {
    if (this.face(headingRad)) return true;
    const turned = () => this.face(headingRad);
    if (this.withShift(turned)) return true;
    // Beside a wall the rear swings against it: there a slight turn the right way has to come first.
    const tilt = wrapAngle(headingRad - this.pose.headingRad) < 0 ? -TILT_RAD : TILT_RAD;
    const peeled = (by: number) => () => this.turn(by) && this.withShift(turned);
    return [tilt, -tilt].some((by) => this.attempt(peeled(by)) || this.withShift(peeled(by)));
  }

  /** Drives back or forward, farther and farther, until the next steps can be done. */
  private withShift(steps: () => boolean): boolean {
    const { tipRadiusMm, rearMm } = this.scene.reach;
    const most = 2 * tipRadiusMm + rearMm;
    for (let shift = ROOM_STEP_MM; shift <= most; shift *= ROOM_GROWTH) {
      for (const sign of [-1, 1]) {
        if (this.attempt(() => this.drive(sign * shift) && steps())) return true;
      }
    }
    return false;
  }

  /** Straight until something stops it. Refused where nothing does within `mostMm` (the doorway). */
  toWall(sign: 1 | -1, speedMmPerS = this.speedMmPerS, mostMm = Number.POSITIVE_INFINITY): boolean {
    const { widthMm, heightMm, project } = this.scene;
    const freeMm = this.walker.freeWayMm(sign);
    if (freeMm > Math.min(mostMm, widthMm + heightMm)) return false;
    const before = this.outsideMm(this.pose);
    const overrunMm = sign * Math.max(project.settings.overrunMm, this.brakingMm(speedMmPerS));
    return this.attempt(() => {
      const move: Move = { kind: "toWall", distanceMm: sign * freeMm, overrunMm, speedMmPerS };
      this.moves.push(move);
      return (
        this.walker.advance(move).touched && this.outsideMm(this.pose) <= Math.max(before, OUTSIDE_TOL_MM)
      );
    });
  }

  /** Backs into the wall behind and squares up on it; refused where the robot's back does not come to lie flat on it. */
  squareUp(mostMm = Number.POSITIVE_INFINITY): boolean {
    return this.attempt(() => this.toWall(-1, this.speedMmPerS, mostMm) && this.liesFlat());
  }

  /** Straight on as far as the clearance allows. */
  driveOn(speedMmPerS = this.speedMmPerS): boolean {
    const { widthMm, heightMm } = this.scene;
    const most = widthMm + heightMm;
    const freeMm = this.guard.freeWayMm(this.pose, 1, most);
    return freeMm < most && this.drive(freeMm - SMALLEST_DRIVE_MM, speedMmPerS);
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

  /** Two corners of the outline at one wall. */
  private liesFlat(): boolean {
    const { widthMm, heightMm } = this.scene;
    const corners = this.corners(this.pose);
    const flatMm = 0.5;
    const at = (gap: (p: PointMm) => number) => corners.filter((p) => gap(p) < flatMm).length >= 2;
    return at((p) => p.xMm) || at((p) => p.yMm) || at((p) => widthMm - p.xMm) || at((p) => heightMm - p.yMm);
  }

  private clearMove(move: Move): boolean {
    const from = this.pose;
    const to = this.guard.poseAfter(from, move);
    if (to === null || this.outsideMm(to) > Math.max(this.outsideMm(from), OUTSIDE_TOL_MM)) return false;
    this.walker.pose = to;
    this.walker.timeS += moveDurationS(this.scene.project.robot.drive, move);
    this.moves.push(move);
    return true;
  }

  private corners({ xMm, yMm, headingRad }: Pose): readonly PointMm[] {
    const c = cos(headingRad);
    const s = sin(headingRad);
    return this.hull.map((p) => ({
      xMm: xMm + c * p.xMm - s * p.yMm,
      yMm: yMm + s * p.xMm + c * p.yMm,
    }));
  }

  /** How far the outline sticks out of the rectangle, mm: only in the doorway can it. */
  private outsideMm(pose: Pose): number {
    const { xMm, yMm, headingRad } = pose;
    const { widthMm, heightMm, reach } = this.scene;
    const inner = Math.min(xMm, yMm, widthMm - xMm, heightMm - yMm);
    if (inner > reach.tipRadiusMm) return 0;
    const c = cos(headingRad);
    const s = sin(headingRad);
    let most = 0;
    for (const p of this.hull) {
      const x = xMm + c * p.xMm - s * p.yMm;
      const y = yMm + s * p.xMm + c * p.yMm;
      most = Math.max(most, -x, -y, x - widthMm, y - heightMm);
    }
    return most;
  }
}
