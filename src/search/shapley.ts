/** Values for all subsets of more players are too many to ask for. */
export const MOST_PLAYERS = 10;

/**
 * What each of n players is worth: its mean gain over all orders in which they can join. The worths add up to the value of all
 * less that of none.
 *
 * @param values value of each subset; the bits of the index say who is in it; 2^n of them, n ≤ MOST_PLAYERS
 * @throws RangeError for another number of values
 * Source: Shapley, A value for n-person games, Contributions to the Theory of Games II (1953) 307–317. Checked in
 * tests/published/sensitivity.
 */
export function shapleyValues(values: readonly number[]): readonly number[] {
  const players = 31 - Math.clz32(values.length);
  if (values.length !== 1 << players || players > MOST_PLAYERS) {
    throw new RangeError(
      `${values.length} values; expected one for each subset of up to ${MOST_PLAYERS} players`,
    );
  }
  return Array.from({ length: players }, (_, player) => {
    const bit = 1 << player;
    let worth = 0;
    for (let subset = 0; subset < values.length; subset++) {
      if ((subset & bit) !== 0) continue;
      const gain = (values[subset | bit] ?? 0) - (values[subset] ?? 0);
      worth += gain * orderShare(sizeOf(subset), players);
    }
    return worth;
  });
}

/** Share of the orders in which exactly a given subset of `before` players has joined already: before!·(n − before − 1)!/n!. */
function orderShare(before: number, players: number): number {
  let share = 1 / players;
  // 1 over the number of ways to choose `before` of the n − 1 others.
  for (let k = 1; k <= before; k++) share *= k / (players - k);
  return share;
}

function sizeOf(subset: number): number {
  let size = 0;
  for (let left = subset; left !== 0; left &= left - 1) size++;
  return size;
}
