import { isMove, type Step } from "../model/program.ts";
import type { PointMm } from "../model/zone.ts";
import type { DriftBudget } from "../score/driftBudget.ts";
import type { LossCount } from "../score/lossCounts.ts";
import type { SureCoverage } from "../score/sureCoverage.ts";
import type { TrackEnd } from "../score/sureTrack.ts";
import type { StopAdvice } from "../score/timeToHome.ts";
import { weakTexts } from "../texts/english/weak.ts";
import { fixed, plain } from "../texts/numbers.ts";
import { lossTitle } from "./lossWords.ts";
import { lineWords } from "./programWords.ts";
import { outOf100 } from "./rateWords.ts";

/** "in move 12: drive 300 mm", counted from 1 as the routine's sheet does; of a program, the line. */
export function lossPlaceWords(move: number | null, moves: readonly Step[]): string {
  if (move === null) return weakTexts.noMove;
  const command = moves[move];
  return command === undefined
    ? weakTexts.afterLast
    : moves.every(isMove)
      ? weakTexts.inMove(move + 1, lineWords(command))
      : weakTexts.inLine(move + 1, lineWords(command));
}

/** "slipped off the pusher, in move 12: drive 300 mm" */
export function lossCountWords({ reason, move }: LossCount, moves: readonly Step[]): string {
  return move === null ? lossTitle(reason) : `${lossTitle(reason)}, ${lossPlaceWords(move, moves)}`;
}

/** Why nothing is promised from a move on, as the end of "From move 12 on nothing is promised: …". */
export function trackEndWords(reason: TrackEnd): string {
  return weakTexts.ends[reason];
}

/** What is surely touched, in one or two sentences. */
export function sureWords(sure: SureCoverage): string {
  const share = outOf100(sure.sureFrac);
  const never = sure.endsAt === null ? weakTexts.never(outOf100(sure.neverFrac)) : "";
  const end =
    sure.endsAt === null
      ? ""
      : weakTexts.promisedUntil(sure.endsAt.move + 1, trackEndWords(sure.endsAt.reason));
  return weakTexts.sure(share, never, end);
}

/** How much drift the routine bears. */
export function budgetWords(budget: DriftBudget): string {
  const wanted = outOf100(budget.wantedFrac);
  if (budget.isOpen) return weakTexts.sureOpen(wanted, plain(budget.factor));
  if (budget.factor === 0) return weakTexts.sureNone(wanted);
  return weakTexts.sureWithin(wanted, percentWords(budget.factor));
}

function percentWords(share: number): string {
  return `${plain(Math.floor(1000 * share) / 10)} %`;
}

/** When to stop and leave. */
export function stopWords({ best, savedS }: StopAdvice, moves: number): string {
  if (best === null) return weakTexts.noStop;
  const when = weakTexts.when(best.move + 1, moves, fixed(best.timeS, 0));
  if (savedS < 0.5) return weakTexts.stopAtEnd(when);
  return weakTexts.stop(when, fixed(savedS, 0));
}

/** "120,340:560,700": what `--at` of the command takes. Exact for layouts of the search (search/worstPlacement). */
export function placementText(placement: readonly PointMm[]): string {
  return placement
    .map(({ xMm, yMm }) => `${Math.round(100 * xMm) / 100},${Math.round(100 * yMm) / 100}`)
    .join(":");
}
