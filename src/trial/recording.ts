import type { Move } from "../model/routine.ts";
import type { Corner } from "../model/zone.ts";

/** What happened when and where in a recorded run. */
export type RunEventKind = "touched" | "on-wedge" | "off-wedge" | "rolled-out" | "jam" | "stall" | "end";

export interface RunEvent {
  readonly kind: RunEventKind;
  readonly timeS: number;
  /** Ball index, −1 for the robot. */
  readonly ball: number;
  readonly xMm: number;
  readonly yMm: number;
  /** Index of the move under way. */
  readonly move: number;
}

/**
 * A run in closed-form pieces. Between two frames every ball follows the engine's own free motion from the state in the
 * frame, with what contacts changed by the next frame spread evenly over the step, and the robot its planned path. So
 * playing back at a frame gives exactly what the trial computed, and nothing jumps in between. Only typed arrays and plain objects: it can be sent between workers. Read it with playback.ts.
 */
export interface Recording {
  readonly durationS: number;
  readonly ballCount: number;
  /** Start second of each frame, increasing. */
  readonly frameTimeS: Float64Array;
  /** FRAME_STRIDE numbers a ball and frame: x, y, vx, vy, roll x, roll y, mode (balls.kernel.ts, RIDING among them). */
  readonly frames: Float64Array;
  /** BALL_STRIDE numbers a ball: radius mm, k, rolling deceleration, sliding deceleration mm/s². */
  readonly ballConstants: Float64Array;
  /** Start second of each move of the routine, as far as it was run; one more entry for the time after the last. */
  readonly moveStartS: Float64Array;
  /** MOVE_STRIDE numbers a move: scale, distance, top rate, acceleration, duration, stop progress, first piece, number of pieces. */
  readonly moves: Float64Array;
  /** Pieces of all moves, PIECE numbers each (motion/trace.kernel.ts); a move without any stays where its predecessor ended. */
  readonly pieces: Float64Array;
  readonly events: readonly RunEvent[];
  /** ARMS_STRIDE numbers a move: angle of the hinged arms before and after it, rate at which they swing. Left out where nothing swings. */
  readonly arms?: Float64Array;
  /** Of a program: the moves it came to, and the line each belongs to. Left out where the routine is a list of moves. */
  readonly executed?: readonly Move[];
  readonly lines?: readonly number[];
  /** Where the wedge was; left out where the project says so. */
  readonly corner?: Corner;
}

export const FRAME_STRIDE = 7;
export const BALL_STRIDE = 4;
export const MOVE_STRIDE = 8;
export const ARMS_STRIDE = 3;
