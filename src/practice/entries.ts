import type { PracticeEntry } from "../model/record.ts";
import type { Outcome } from "./driftFit.ts";

/** The runs of a record that were made with a routine and with as many balls as the project has now. */
export function madeRuns(
  entries: readonly PracticeEntry[],
  routineId: string,
  balls: number,
): readonly Outcome[] {
  return entries.flatMap(({ routine, placement, home, day }) =>
    home === null || routine !== routineId || placement.length !== balls ? [] : [{ placement, home, day }],
  );
}
