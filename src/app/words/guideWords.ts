import type { Rate } from "../../num/interval.ts";
import { countWords } from "../../report/lengthWords.ts";
import { rateWords } from "../../report/rateWords.ts";
import type { RankingStatus } from "../state/ranking.svelte.ts";
import type { StepId } from "../steps.ts";

/** Where the work stands, for the sentence that says what to do next. */
export interface Standing {
  readonly step: StepId;
  readonly hasProject: boolean;
  /** Of the ranking. */
  readonly status: RankingStatus;
  readonly hasFirstLook: boolean;
  readonly routines: number;
  readonly bestRate: Rate | null;
  readonly choseBest: boolean;
  /** Whether the run on show has been started. */
  readonly watched: boolean;
  readonly atEnd: boolean;
}

/** What is known, and what to do next. */
export function guideWords(standing: Standing): string {
  const { bestRate } = standing;
  if (!standing.hasProject) return "Opening the project…";
  if (standing.step === "zone") return "Make it like your floor, then go on to your robot.";
  if (standing.step === "robot") return "Make it like yours: the routines are ranked anew while you do.";
  if (standing.step === "practice")
    return "Measure, code, try it on your floor, and write down what really happened.";
  if (standing.step === "jury") return "Show what you found out: every number here can be run again.";
  if (standing.step === "weak") return "Change what loses most balls first, then look here again.";
  if (standing.status === "failed")
    return "For this zone no routines could be worked out: the reason stands in the list.";
  if (standing.status === "stopped" && !standing.hasFirstLook)
    return "Stopped before the first answers. Press Go on to have them.";
  if (standing.routines === 0) return "Working out routines for this zone. This takes a moment.";
  if (!standing.hasFirstLook || !bestRate) {
    return `Trying ${countWords(standing.routines, "routine")} in this zone. First answers in a moment.`;
  }
  if (standing.atEnd) return "Now try the next placement, or look at a run that failed: why did it?";
  if (standing.watched) return "Watch which ball slips away, and when. Drag the slider to look again.";
  if (!standing.choseBest) return "Press Play to watch this routine, or pick another one from the list.";
  return `The best so far brings every ball home in ${rateWords(bestRate)}. Press Play to watch it.`;
}
