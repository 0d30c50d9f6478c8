import type { Rate } from "../num/interval.ts";

/** What a routine is ranked by. */
export interface Rankable {
  readonly id: string;
  readonly successRate: Rate;
  readonly meanDelivered: number;
  readonly durationS: number;
}

/**
 * A routine's place, 1 for the best, and whether it ends within the time limit.
 * One that does not is marked, not dropped: what it delivered in time counts.
 */
export interface Ranked<T> {
  readonly entry: T;
  readonly place: number;
  readonly fitsTime: boolean;
}

/**
 * Below zero when a comes before b: higher success rate, then more balls delivered, then the shorter routine;
 * ties by id, so that the order is the same everywhere.
 */
export function byRank(a: Rankable, b: Rankable): number {
  return (
    b.successRate.value - a.successRate.value ||
    b.meanDelivered - a.meanDelivered ||
    a.durationS - b.durationS ||
    byId(a.id, b.id)
  );
}

/** Best first; leaves its argument as it is. */
export function rankRoutines<T extends Rankable>(
  entries: readonly T[],
  timeLimitS: number,
): readonly Ranked<T>[] {
  return [...entries]
    .sort(byRank)
    .map((entry, i) => ({ entry, place: i + 1, fitsTime: entry.durationS <= timeLimitS }));
}

/** By code units: the order of the language's own comparison of names depends on the machine's settings. */
function byId(a: string, b: string): number {
  if (a === b) return 0;
  return a < b ? -1 : 1;
}
