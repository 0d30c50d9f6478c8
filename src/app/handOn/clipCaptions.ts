import type { Routine } from "../../model/routine.ts";
import type { Rate } from "../../num/interval.ts";
import { wilson } from "../../num/interval.ts";
import { moveWords } from "../../report/moveWords.ts";
import { rangeWords, rateWords } from "../../report/rateWords.ts";
import { clipTexts as t } from "../../texts/english/clip.ts";
import { fixed } from "../../texts/numbers.ts";
import type { TrialOutcome } from "../../trial/outcome.ts";
import { moveAt } from "../../trial/playback.ts";
import type { Recording } from "../../trial/recording.ts";

/** What a clip's captions tell about. */
export interface ClipFacts {
  readonly routine: Routine;
  readonly seed: number;
  /** One run, or several that follow one another. */
  readonly runs: readonly { readonly outcome: TrialOutcome; readonly recording: Recording }[];
  /** Of the routine, from the ranking; needed for a clip of one run only. */
  readonly rate: Rate;
  /** Seconds of the runs in one second of the clip. */
  readonly speed: number;
}

/** Below every picture: the routine, how often it works and how sure that is, which runs these are and what happens. */
export function clipCaptions(facts: ClipFacts): (timeS: number) => readonly string[] {
  const { routine, runs, rate } = facts;
  const [only] = runs;
  if (only && runs.length === 1) {
    const share = t.rate(rateWords(rate), rangeWords(rate), rate.trials);
    return (timeS) => [routine.label, share, oneRun(facts, only, timeS)];
  }
  const worked = runs.filter(({ outcome }) => outcome.delivered.every(Boolean)).length;
  const share = t.these(worked, runs.length, rangeWords(wilson(worked, runs.length)));
  return (timeS) => [routine.label, share, manyRuns(facts, timeS)];
}

function oneRun(
  { routine, seed, speed }: ClipFacts,
  { outcome, recording }: ClipFacts["runs"][number],
  timeS: number,
): string {
  const at = moveAt(recording, timeS);
  const move = (recording.executed ?? routine.moves)[at];
  const now =
    timeS >= recording.durationS || !move
      ? t.end(outcome.delivered.filter(Boolean).length, outcome.delivered.length)
      : t.move(at + 1, moveWords(move));
  return `${t.run(outcome.index, seed, fixed(timeS, 1), speed)} ${now}`;
}

function manyRuns({ seed, speed, runs }: ClipFacts, timeS: number): string {
  const indexes = runs.map(({ outcome }) => outcome.index);
  const home = runs.filter(({ outcome }) =>
    outcome.deliveredAtS.every((second) => second !== null && second <= timeS),
  ).length;
  const which = t.runs(Math.min(...indexes), Math.max(...indexes), seed, fixed(timeS, 1), speed);
  return `${which} ${t.soFar(home)}`;
}
