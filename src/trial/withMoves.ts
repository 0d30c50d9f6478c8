import type { Routine } from "../model/routine.ts";
import { motionOf } from "../motion/walker.ts";
import { headingsOf, type TrialPlan } from "./plan.ts";

/**
 * The same plan for another list of moves of the same project: all that draws and steers is shared, so that one runs after the other.
 * @throws RangeError for a program
 */
export function withMoves(plan: TrialPlan, routine: Routine): TrialPlan {
  if (plan.pilot !== null || routine.program !== undefined)
    throw new RangeError(`${routine.id}: a program; expected a list of moves`);
  return {
    ...plan,
    routine,
    motions: routine.moves.map(motionOf),
    headings: plan.gyro === null ? [] : headingsOf(plan.project, routine.moves),
    byCorner: plan.byCorner.map((each) => withMoves(each, routine)),
  };
}
