import type { Project } from "../model/project.ts";
import type { Entrant } from "./entrant.ts";
import { type RaceAnswer, type Racing, runSpans } from "./raceWork.ts";

/** All finalists get one part before any gets the next: small ones first, in case there is time for no more. */
const FIRST_PARTS = [25, 50, 100];
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
  for (const [part, to] of partsOf(most).entries()) {
    if (part > 0 && isOver()) break;
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

/** Where the parts end: growing, the last at `most`. */
function partsOf(most: number): readonly number[] {
  const first = FIRST_PARTS.filter((end) => end < most);
  const from = first.at(-1) ?? 0;
  const rest = Array.from({ length: PARTS }, (_, i) => Math.floor((most * (i + 1)) / PARTS));
  return [...first, ...rest.filter((end) => end > from)];
}
