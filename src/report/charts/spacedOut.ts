/**
 * Places as near as can be to where they should be, and far enough apart for what is written there.
 *
 * @param wanted middles, in any order
 * @param gap from middle to middle, at least
 * @param end no middle lies beyond, unless all of them together need more room than there is
 * @returns middles in the order of `wanted`; of equal ones the first given stays first
 */
export function spacedOut(wanted: readonly number[], gap: number, end: number): readonly number[] {
  const order = wanted.map((_, i) => i).sort((a, b) => (wanted[a] ?? 0) - (wanted[b] ?? 0));
  const places = [...wanted];
  let last = Number.NEGATIVE_INFINITY;
  for (const i of order) {
    last = Math.max(wanted[i] ?? 0, last + gap);
    places[i] = last;
  }
  // Pushed beyond the end, the last ones move back, and those before them as far as they are in the way.
  let next = end + gap;
  for (const i of order.reverse()) {
    next = Math.min(places[i] ?? 0, next - gap);
    places[i] = next;
  }
  return places;
}
