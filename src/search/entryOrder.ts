/**
 * Ids in the order in which they should enter a race: the first of every pattern, then the second of every pattern, and
 * so on, so that even a race that is cut short has seen all patterns.
 *
 * @param ids of a catalogue, pattern by pattern; a pattern's name ends at the first hyphen
 */
export function entryOrder(ids: readonly string[]): readonly string[] {
  const byPattern = new Map<string, string[]>();
  for (const id of ids) {
    const [pattern = ""] = id.split("-");
    byPattern.set(pattern, [...(byPattern.get(pattern) ?? []), id]);
  }
  const columns = [...byPattern.values()].map(fromTheMiddle);
  const most = Math.max(0, ...columns.map(({ length }) => length));
  return Array.from({ length: most }, (_, row) =>
    columns.flatMap((column) => column.slice(row, row + 1)),
  ).flat();
}

/** Spread evenly: every place is visited once, in steps of the golden section; neighbours are much alike. */
function fromTheMiddle(ids: readonly string[]): readonly string[] {
  const placed = ids.map((id, i) => ({ id, key: ((i + 1) * GOLDEN) % 1 }));
  return placed.sort((a, b) => a.key - b.key).map(({ id }) => id);
}

const GOLDEN = (Math.sqrt(5) - 1) / 2;
