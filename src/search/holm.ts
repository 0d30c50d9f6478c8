/**
 * Which of several tests may be called different, so that all of them together err in at most `level` of cases: the smallest
 * p-value is held against level/n, the next against level/(n − 1), until one fails.
 *
 * Source: Holm, Scandinavian Journal of Statistics 6 (1979) 65–70. Checked in tests/unit/search/holm.
 */
export function holm(pValues: readonly number[], level: number): readonly boolean[] {
  const order = pValues.map((_, i) => i).sort((a, b) => (pValues[a] ?? 1) - (pValues[b] ?? 1));
  const failed = order.findIndex((i, rank) => (pValues[i] ?? 1) > level / (pValues.length - rank));
  const passed = new Set(failed < 0 ? order : order.slice(0, failed));
  return pValues.map((_, i) => passed.has(i));
}
