import { PIECE } from "../motion/trace.kernel.ts";
import { arms } from "./arms.kernel.ts";
import {
  bx,
  by,
  inertia,
  mode,
  RIDING,
  radius,
  rides,
  rollDecel,
  slideDecel,
  sx,
  sy,
  vx,
  vy,
} from "./balls.kernel.ts";
import { move, profile, progressAt } from "./clock.kernel.ts";
import type { Recording, RunEvent } from "./recording.ts";
import { robot } from "./robot.kernel.ts";

/** Collects a run while it happens; costs nothing when no run is recorded. */
export class Recorder {
  private readonly balls: number;
  private readonly frameTimeS: number[] = [];
  private readonly frames: number[] = [];
  private readonly moveStartS: number[] = [];
  private readonly moves: number[] = [];
  private readonly pieces: number[] = [];
  private readonly events: RunEvent[] = [];
  private readonly constants: number[] = [];
  /** null: the robot has no arms that swing. */
  private readonly arms: number[] | null;
  private readonly swingRate: number;

  /** @param swingRateRadPerS of arms on hinges; 0 where there are none */
  constructor(balls: number, swingRateRadPerS = 0) {
    this.balls = balls;
    this.swingRate = swingRateRadPerS;
    this.arms = swingRateRadPerS === 0 ? null : [];
  }

  /** Call once the balls are laid. */
  begin(): void {
    for (let i = 0; i < this.balls; i++) {
      this.constants.push(at(radius, i), at(inertia, i), at(rollDecel, i), at(slideDecel, i));
    }
  }

  moveBegins(startS: number): void {
    this.moveStartS.push(startS);
    const first = this.pieces.length / PIECE;
    for (let k = 0; k < move.count * PIECE; k++) this.pieces.push(at(move.pieces, k));
    // Nothing has moved yet: it stands, and whoever plays this back must know where.
    const stands = this.pieces.length === 0;
    if (stands) this.pieces.push(0, 0, robot.x, robot.y, robot.c, robot.s, robot.heading, 0, 0, 0);
    this.moves.push(
      move.scale,
      profile.distance,
      profile.peak,
      profile.accel,
      profile.durationS,
      move.stopQ,
      first,
      stands ? 1 : move.count,
    );
    this.arms?.push(arms.angle, arms.angle, this.swingRate);
  }

  /** Where the robot was really stopped: by a wall, by a jam before it, or by the time limit. */
  moveEnds(durationS: number): void {
    this.moves[this.moves.length - 3] = progressAt(durationS);
    if (this.arms !== null) this.arms[this.arms.length - 2] = arms.angle;
  }

  frame(timeS: number): void {
    this.frameTimeS.push(timeS);
    for (let i = 0; i < this.balls; i++) {
      this.frames.push(at(bx, i), at(by, i), at(vx, i), at(vy, i), at(sx, i), at(sy, i));
      this.frames.push(at(rides, i) === 1 ? RIDING : at(mode, i));
    }
  }

  event(event: RunEvent): void {
    this.events.push(event);
  }

  finish(durationS: number): Recording {
    return {
      durationS,
      ballCount: this.balls,
      frameTimeS: Float64Array.from(this.frameTimeS),
      frames: Float64Array.from(this.frames),
      ballConstants: Float64Array.from(this.constants),
      moveStartS: Float64Array.from(this.moveStartS),
      moves: Float64Array.from(this.moves),
      pieces: Float64Array.from(this.pieces),
      events: this.events,
      ...(this.arms === null ? {} : { arms: Float64Array.from(this.arms) }),
    };
  }
}

function at(values: ArrayLike<number>, i: number): number {
  return values[i] ?? 0;
}
