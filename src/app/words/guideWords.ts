import type { Rate } from "../../num/interval.ts";
import { rangeWords, rateWords } from "../../report/rateWords.ts";
import { rankingTexts } from "../../texts/english/ranking.ts";
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
  if (!standing.hasProject) return rankingTexts.guide.opening;
  if (standing.step === "zone") return rankingTexts.guide.zone;
  if (standing.step === "robot") return rankingTexts.guide.robot;
  if (standing.step === "practice") return rankingTexts.guide.practice;
  if (standing.step === "jury") return rankingTexts.guide.jury;
  if (standing.step === "weak") return rankingTexts.guide.weak;
  if (standing.status === "failed") return rankingTexts.guide.failed;
  if (standing.status === "stopped" && !standing.hasFirstLook) return rankingTexts.guide.stopped;
  if (standing.routines === 0) return rankingTexts.guide.working;
  if (!standing.hasFirstLook || !bestRate) {
    return rankingTexts.guide.trying(standing.routines);
  }
  if (standing.atEnd) return rankingTexts.guide.atEnd;
  if (standing.watched) return rankingTexts.guide.watched;
  if (!standing.choseBest) return rankingTexts.guide.press;
  return rankingTexts.guide.best(`${rateWords(bestRate)} (${rangeWords(bestRate)})`);
}
