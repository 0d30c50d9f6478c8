/** What happened when and where in a recorded run. */
export type RunEventKind =
  | "touched"
  | "bounced"
  | "on-wedge"
  | "off-wedge"
  | "rolled-out"
  | "jam"
  | "stall"
  | "end";

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
 * A run in closed-form pieces: every key frame holds the state from which the engine's own closed forms give
 * everything up to the next one, so that playing back at any second gives exactly what the trial computed.
 * Only typed arrays and plain objects: it can be sent between workers. Read it with trial/playback.
 */
export interface Recording {
  readonly durationS: number;
  readonly ballCount: number;
  /** Start second of each frame, increasing. */
  readonly frameTimeS: Float64Array;
  /** `frameStride` numbers a frame: see trial/playback. */
  readonly frames: Float64Array;
  readonly frameStride: number;
  readonly events: readonly RunEvent[];
  /** Start second of each move of the routine, as far as it was run. */
  readonly moveStartS: Float64Array;
}
