import type { Project } from "../model/project.ts";
import type { Entrant } from "./entrant.ts";
import { type RaceAnswer, type Racing, runSpans } from "./raceWork.ts";

/** All finalists get one part before any gets the next. */
const PARTS = 20;

/**
 * Fresh trials for the finalists, up to `most` each; those that have some go on from there.
 *
 * @param seed of trials that no choice has looked at
 * @param isOver asked before each part but the first
 */
export function* finalTrials(
  project: Project,
  seed: number,
  finalists: readonly Entrant[],
  most: number,
  onTrials: (trials: number) => void,
  isOver: () => boolean,
): Racing<void> {
  for (let part = 1; part <= PARTS && (part === 1 || !isOver()); part++) {
    const to = Math.floor((most * part) / PARTS);
    const spans = finalists
      .map((of) => ({ of, routine: of.routine, from: of.finalBatches.at(-1)?.to ?? 0, to }))
      .filter(({ from }) => from < to);
    const answers = new Map<Entrant, RaceAnswer[]>();
    yield* runSpans(project, seed, spans, ({ of }, answer) => {
      answers.set(of, [...(answers.get(of) ?? []), answer]);
    });
    for (const [of, parts] of answers) {
      for (const answer of parts) {
        if (answer.kind !== "ran") continue;
        of.finalBatches.push(answer.batch);
        onTrials(answer.batch.to - answer.batch.from);
      }
      of.status = "final";
    }
  }
}
