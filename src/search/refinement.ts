import type { Project } from "../model/project.ts";
import { type Asking, type Optimum, type Point, simplexSearch } from "./simplex.ts";
import { Tuning } from "./tuning.ts";

/** Edge of the first simplex, and the size at which one has collapsed, as shares of each dial's range. */
const FIRST_SIZE = 0.25;
const SMALLEST_SIZE = 0.02;

/** Ids to be tried together, and what each is worth (larger is better); null where there is no such routine. */
export type Trying<T> = Generator<readonly string[], T, readonly (number | null)[]>;

/** A routine that was tried, and its value. */
export interface Tried {
  readonly id: string;
  readonly worth: number;
}

/**
 * Varies the dials and the speed of one routine, by a downhill simplex on the negative worth. No routine is asked for
 * twice: points that come to the same whole steps share their value. All are tried on the same trials, so that most of
 * the luck cancels.
 *
 * @returns everything tried that has a value, best first
 */
export function* refine(project: Project, id: string, evaluations: number): Trying<readonly Tried[]> {
  const tuning = Tuning.of(project, id);
  if (tuning === null) return [];
  const known = new Map<string, number | null>();
  const options = { start: tuning.start, size: FIRST_SIZE, smallest: SMALLEST_SIZE, evaluations };
  yield* answered(simplexSearch(options), tuning, known);
  return [...known]
    .flatMap(([each, worth]) => (worth === null ? [] : [{ id: each, worth }]))
    .sort((a, b) => b.worth - a.worth || (a.id < b.id ? -1 : 1));
}

function* answered(search: Asking<Optimum>, tuning: Tuning, known: Map<string, number | null>): Trying<void> {
  let step = search.next();
  while (!step.done) {
    const ids = step.value.map((point: Point) => tuning.idAt(point));
    const fresh = [...new Set(ids)].filter((id) => !known.has(id));
    const worths = fresh.length === 0 ? [] : yield fresh;
    for (const [i, id] of fresh.entries()) known.set(id, worths[i] ?? null);
    step = search.next(ids.map((id) => 0 - (known.get(id) ?? Number.NEGATIVE_INFINITY)));
  }
}
