import type { StepId } from "../steps.ts";

/** Stops of the opening tour, from the example to the team's own zone; what is said there is in the notices' texts. */
export const TOUR = ["routines", "watch", "weak", "robot", "zone"] as const satisfies readonly StepId[];
