import type { PushRun } from "./pushRun.ts";
import type { Scene } from "./scene.ts";

/** One choice of parameters within a pattern; speed and names are added by the catalogue. */
export interface Variant {
  /** Parameters in short, part of the routine's id: stable. */
  readonly code: string;
  /** The same in plain words. */
  readonly label: string;
  readonly params: Readonly<Record<string, number | string | boolean>>;
  /** Which way round the frame is taken: its x axis along the longer or the shorter side of the zone. */
  readonly longFirst: boolean;
  readonly runs: (scene: Scene) => readonly PushRun[];
}

/** A pattern: a way of searching that yields routines for any zone and robot. */
export interface Family {
  /** First part of the routine's id. */
  readonly id: string;
  /** Name in plain words, unique. */
  readonly pattern: string;
  readonly variants: readonly Variant[];
}
