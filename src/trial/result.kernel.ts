import type { Move } from "../model/routine.ts";
import type { PathTracer } from "../motion/path.kernel.ts";
import { TrajectoryHash } from "../num/hash.ts";
import { SLOTS } from "../num/slots.ts";
import { bx, by, mode, OUT } from "./balls.kernel.ts";
import { move } from "./clock.kernel.ts";
import { byRobot, stirred } from "./contact.kernel.ts";
import type { Watcher } from "./engine.kernel.ts";
import { inJam } from "./jam.kernel.ts";
import type { Pilot } from "./pilot.ts";
import type { TrialPlan } from "./plan.ts";
import type { Recorder } from "./recorder.ts";
import type { RunEventKind } from "./recording.ts";
import { robot } from "./robot.kernel.ts";
import { isHome } from "./wedge.kernel.ts";

/**
 * What the run in this worker's world has come to so far, and who follows it step by step. Read by others right after the run.
 */
export const result = {
  /** Second at which the last move ended. */
  timeS: 0,
  cut: false,
  /** Index of the last move that was begun; −1 for none. */
  lastMove: -1,
  /** Moves done. */
  moves: 0,
  jams: 0,
  stalls: 0,
  /** Last second at which a ball moved. */
  lastStirS: 0,
};
export const touched = new Uint8Array(SLOTS);
/** 1: counts as delivered now. */
export const home = new Uint8Array(SLOTS);
/** Second at which it last came home. */
export const homeAtS = new Float64Array(SLOTS);
/** 1: was home once. */
export const wasHome = new Uint8Array(SLOTS);
/** 1: was in a jam; where. */
export const wasJammed = new Uint8Array(SLOTS);
export const jamX = new Float64Array(SLOTS);
export const jamY = new Float64Array(SLOTS);
/** Second and move of what happened to a ball last; read only where it did happen (touched, wasHome, wasJammed, OUT). */
export const touchS = new Float64Array(SLOTS);
export const touchMove = new Int16Array(SLOTS);
export const leftS = new Float64Array(SLOTS);
export const leftMove = new Int16Array(SLOTS);
export const jamS = new Float64Array(SLOTS);
export const jamMove = new Int16Array(SLOTS);
/** 1: the robot touched it when the time limit cut the routine short. */
export const carried = new Uint8Array(SLOTS);
/** What a pilot had driven, and the lines of its program; as long as `result.moves`. Empty for a list of moves. */
export const executed: Move[] = [];
export const lines: number[] = [];
export const hash = new TrajectoryHash();

/** Follows a run step by step: what was touched, what came home, the hash, and the recording if one is wanted. */
class RunWatcher implements Watcher {
  balls = 0;
  recorder: Recorder | null = null;
  pilot: Pilot | null = null;
  planner: PathTracer | null = null;
  jammedInMove = false;

  stepBegins(t: number): void {
    if (this.recorder !== null) this.recorder.frame(move.startS + t);
    this.pilot?.stepBegins(t);
  }

  stepEnded(t: number): void {
    const now = move.startS + t;
    if (this.pilot !== null) this.pilot.stepEnded(this.planner!, t);
    for (let i = 0; i < this.balls; i++) {
      if (stirred[i] === 0) continue;
      hash.mix(bx[i]!);
      hash.mix(by[i]!);
      result.lastStirS = now;
      stirred[i] = 0;
      if (byRobot[i] !== 0) {
        touchS[i] = now;
        touchMove[i] = move.index;
        if (touched[i] === 0) {
          touched[i] = 1;
          this.note("touched", now, i);
        }
      }
      if (mode[i] === OUT) {
        this.leaves(i, now);
        this.note("rolled-out", now, i);
      }
      const isIn = mode[i] !== OUT && isHome(i) ? 1 : 0;
      if (isIn === home[i]) continue;
      home[i] = isIn;
      if (isIn === 1) {
        wasHome[i] = 1;
        homeAtS[i] = now;
      } else this.leaves(i, now);
      this.note(isIn === 1 ? "on-wedge" : "off-wedge", now, i);
    }
  }

  jammed(t: number): void {
    if (!this.jammedInMove) result.jams++;
    this.jammedInMove = true;
    for (let i = 0; i < this.balls; i++) {
      if (inJam[i] === 0) continue;
      if (byRobot[i] !== 0 || touched[i] === 1) touched[i] = 1;
      wasJammed[i] = 1;
      jamX[i] = bx[i]!;
      jamY[i] = by[i]!;
      jamS[i] = touchS[i] = move.startS + t;
      jamMove[i] = touchMove[i] = move.index;
      this.note("jam", move.startS + t, i);
    }
  }

  /** A ball rolls off the wedge or out of the zone. */
  private leaves(i: number, now: number): void {
    leftS[i] = now;
    leftMove[i] = move.index;
  }

  note(kind: RunEventKind, timeS: number, ball: number): void {
    if (this.recorder === null) return;
    const xMm = ball < 0 ? robot.x : bx[ball]!;
    const yMm = ball < 0 ? robot.y : by[ball]!;
    this.recorder.event({ kind, timeS, ball, xMm, yMm, move: move.index });
  }
}

export const watcher = new RunWatcher();

/** Nothing of the run before is left; the balls lie where they begin. */
export function resetResult(plan: TrialPlan, recorder: Recorder | null): void {
  watcher.balls = plan.kinds.length;
  watcher.recorder = recorder;
  hash.reset();
  result.timeS = result.lastStirS = 0;
  result.cut = false;
  result.lastMove = -1;
  result.jams = result.stalls = result.moves = 0;
  executed.length = lines.length = 0;
  watcher.pilot = plan.pilot;
  watcher.planner = plan.planner;
  for (let i = 0; i < plan.kinds.length; i++) {
    touched[i] = wasJammed[i] = carried[i] = 0;
    home[i] = wasHome[i] = isHome(i) ? 1 : 0;
    homeAtS[i] = 0;
  }
  recorder?.begin();
}
