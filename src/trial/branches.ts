import type { Move } from "../model/routine.ts";

/** A stretch of moves that several lists have in common, and how they go on from its end. Lists are named by their places. */
export interface Branch {
  /** Moves from the start to the end of this stretch. */
  readonly upTo: number;
  /** Lists that are of this branch, in the order in which they came. */
  readonly lists: readonly number[];
  /** Those of them that end with the stretch. */
  readonly ends: readonly number[];
  /** How the others go on, each with another move. */
  readonly branches: readonly Branch[];
}

/** The tree of lists of moves by what they begin with. */
export function branchesOf(
  moves: readonly (readonly Move[])[],
  lists: readonly number[] = moves.map((_, i) => i),
  from = 0,
): Branch {
  const of = (list: number): readonly Move[] => moves[list] ?? [];
  const first = of(lists[0] ?? 0);
  const upTo = lists.reduce((end, list) => commonEnd(first, of(list), from, end), first.length);
  const ends = lists.filter((list) => of(list).length === upTo);
  const groups: { readonly move: Move; readonly lists: number[] }[] = [];
  for (const list of lists) {
    const move = of(list)[upTo];
    if (move === undefined) continue;
    const group = groups.find((each) => isSame(each.move, move));
    if (group) group.lists.push(list);
    else groups.push({ move, lists: [list] });
  }
  return { upTo, lists, ends, branches: groups.map((group) => branchesOf(moves, group.lists, upTo)) };
}

/** Up to where, `to` at most, two lists that are the same up to `from` are the same. */
function commonEnd(one: readonly Move[], other: readonly Move[], from: number, to: number): number {
  for (let m = from; m < to; m++) {
    const [a, b] = [one[m], other[m]];
    if (a === undefined || b === undefined || !isSame(a, b)) return m;
  }
  return to;
}

/** Bit for bit: −0 is another number than 0. */
function isSame(one: object, other: object): boolean {
  if (one === other) return true;
  const [mine, its] = [one, other] as Record<string, unknown>[];
  const keys = Object.keys(one);
  if (mine === undefined || its === undefined || keys.length !== Object.keys(other).length) return false;
  return keys.every((key) => {
    const [a, b] = [mine[key], its[key]];
    const areObjects = typeof a === "object" && typeof b === "object" && a !== null && b !== null;
    return areObjects ? isSame(a, b) : Object.is(a, b);
  });
}
