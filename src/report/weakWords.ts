import { isMove, type Step } from "../model/program.ts";
import type { PointMm } from "../model/zone.ts";
import type { DriftBudget } from "../score/driftBudget.ts";
import type { LossCount } from "../score/lossCounts.ts";
import type { SureCoverage } from "../score/sureCoverage.ts";
import type { TrackEnd } from "../score/sureTrack.ts";
import type { StopAdvice } from "../score/timeToHome.ts";
import { lossTitle } from "./lossWords.ts";
import { lineWords } from "./programWords.ts";
import { outOf100 } from "./rateWords.ts";

/** "in move 12: drive 300 mm", counted from 1 as the routine's sheet does; of a program, the line. */
export function lossPlaceWords(move: number | null, moves: readonly Step[]): string {
  if (move === null) return "in no move";
  const command = moves[move];
  return command === undefined
    ? "after the last move"
    : `in ${moves.every(isMove) ? "move" : "line"} ${move + 1}: ${lineWords(command)}`;
}

/** "slipped off the pusher, in move 12: drive 300 mm" */
export function lossCountWords({ reason, move }: LossCount, moves: readonly Step[]): string {
  return move === null ? lossTitle(reason) : `${lossTitle(reason)}, ${lossPlaceWords(move, moves)}`;
}

/** Why nothing is promised from a move on, as the end of "From move 12 on nothing is promised: …". */
export function trackEndWords(reason: TrackEnd): string {
  switch (reason) {
    case "may-hit":
      return "there the robot may run into something";
    case "may-not-reach":
      return "there it may not reach the wall it is meant to reach";
    case "slanting-stop":
      return "there it is stopped at a slant, and how it ends up depends on the drift";
    case "arms-swing":
      return "there its arms swing, and the pusher becomes another one";
    default:
      return reason satisfies never;
  }
}

/** What is surely touched, in one or two sentences. */
export function sureWords(sure: SureCoverage): string {
  const share = `Whatever the drift within those bounds, ${outOf100(sure.sureFrac)} of 100 places are surely touched`;
  const never = sure.endsAt === null ? ` and ${outOf100(sure.neverFrac)} never` : "";
  const end =
    sure.endsAt === null
      ? ""
      : ` From move ${sure.endsAt.move + 1} on nothing is promised: ${trackEndWords(sure.endsAt.reason)}.`;
  return `${share}${never}.${end}`;
}

/** How much drift the routine bears. */
export function budgetWords(budget: DriftBudget): string {
  const wanted = `${outOf100(budget.wantedFrac)} of 100 places stay sure`;
  if (budget.isOpen) return `${wanted} even with ${budget.factor} times those errors.`;
  if (budget.factor === 0)
    return `No drift at all may be left if ${wanted.replace(" stay", " are to stay")}.`;
  return `${wanted} as long as the errors are at most ${percentWords(budget.factor)} of those bounds.`;
}

function percentWords(share: number): string {
  return `${Math.floor(1000 * share) / 10} %`;
}

/** When to stop and leave. */
export function stopWords({ best, savedS }: StopAdvice, moves: number): string {
  if (best === null)
    return "No best moment to stop: no move ends in time, or the routine decides as it goes.";
  const when = `after move ${best.move + 1} of ${moves}, at ${best.timeS.toFixed(0)} s`;
  if (savedS < 0.5) return `Best moment to stop and leave: ${when}, the end.`;
  return `Best moment to stop and leave: ${when}; the ${savedS.toFixed(0)} s after it bring next to nothing.`;
}

/** "120,340:560,700": what `--at` of the command takes. Exact for layouts of the search (search/worstPlacement). */
export function placementText(placement: readonly PointMm[]): string {
  return placement
    .map(({ xMm, yMm }) => `${Math.round(100 * xMm) / 100},${Math.round(100 * yMm) / 100}`)
    .join(":");
}
