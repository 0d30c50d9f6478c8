import type { RunEvent } from "../trial/recording.ts";

/** Jams and stalls, and balls that leave where they were safe: what is worth jumping to in a run. */
export function isTrouble({ kind }: Pick<RunEvent, "kind">): boolean {
  return isStop({ kind }) || kind === "off-wedge" || kind === "rolled-out";
}

/** The robot got no further. */
export function isStop({ kind }: Pick<RunEvent, "kind">): boolean {
  return kind === "jam" || kind === "stall";
}
