/** The word of the list that was probably meant, or undefined when none is near: for "did you mean". */
export function nearestWord(word: string, words: readonly string[]): string | undefined {
  const typed = word.toLowerCase();
  let best: string | undefined;
  let bestCost = Infinity;
  for (const candidate of words) {
    const target = candidate.toLowerCase();
    // "width" for "widthMm", "headingRad" for "headingDeg": the stem is right and only the unit is not.
    const sameStem = stem(candidate) === stem(word) || target.startsWith(typed);
    const cost = sameStem && typed.length >= 2 ? 0.5 : editDistance(typed, target);
    if (cost < bestCost) {
      best = candidate;
      bestCost = cost;
    }
  }
  // In a short word two edits would make it another one.
  return bestCost <= Math.max(word.length < 5 ? 1 : 2, word.length / 4) ? best : undefined;
}

/** The name without the unit at its end. */
function stem(word: string): string {
  const cut = word.replace(/(Mm|Cm|M|S|Kg|G|Deg|Rad|Frac|Per|2)+$/, "");
  return cut.toLowerCase();
}

/** Least number of inserted, deleted, changed or swapped neighbouring letters (Damerau 1964; no letter twice). */
function editDistance(a: string, b: string): number {
  // A long key is no typing error; the table would only cost time.
  if (a.length > 40) return Infinity;
  let before: readonly number[] = [];
  let row = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      const replace = (row[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1);
      const isSwap = a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      const swap = isSwap ? (before[j - 2] ?? Infinity) + 1 : Infinity;
      next.push(Math.min(replace, swap, (row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1));
    }
    before = row;
    row = next;
  }
  return row[b.length] ?? 0;
}
