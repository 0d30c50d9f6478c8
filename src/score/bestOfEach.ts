import { wilson } from "../num/interval.ts";
import { Moments } from "../num/moments.ts";
import type { StressSummary } from "./stress.ts";

/**
 * Of several stress tests of the same trials the best in each trial: what one could have had who knew in advance which does
 * best. Losses, jams, stalls and hash are those of the first; times and points are not known and 0.
 *
 * @param more of the same trials the balls each delivered some other way
 * @throws RangeError for tests of different trials, or none
 */
export function bestOfEach(
  tests: readonly StressSummary[],
  more: readonly (readonly number[])[] = [],
): StressSummary {
  const [first] = tests;
  if (first === undefined) throw new RangeError("no stress test; expected at least one");
  for (const { indices, deliveredCounts } of tests) {
    const same =
      indices.length === first.indices.length && indices.every((index, i) => index === first.indices[i]);
    if (!same || deliveredCounts.length !== first.deliveredCounts.length) {
      throw new RangeError(
        `tests of ${first.indices.length} and ${indices.length} trials; expected the same ones`,
      );
    }
  }
  const columns = [...tests.map(({ delivered }) => delivered), ...more];
  const delivered = first.delivered.map((_, i) => Math.max(...columns.map((column) => column[i] ?? 0)));
  const balls = first.deliveredCounts.length - 1;
  const deliveredCounts = new Array<number>(balls + 1).fill(0);
  const moments = new Moments();
  for (const count of delivered) {
    deliveredCounts[count] = (deliveredCounts[count] ?? 0) + 1;
    moments.add(count);
  }
  return {
    ...first,
    successRate: wilson(deliveredCounts[balls] ?? 0, delivered.length),
    meanDelivered: moments.mean,
    meanDeliveredSe: moments.standardError,
    deliveredCounts,
    delivered,
    meanTimeS: 0,
    meanPoints: 0,
  };
}
