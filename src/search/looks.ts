import { RandomStream } from "../num/stream.ts";
import { STREAMS } from "../trial/streams.ts";

/** Trials after which a race is first looked at, and the factor to the next look. */
export const FIRST_LOOK = 10;
const NEXT_LOOK = 1.5;
/** Trials with which guests begin, the third look: an interval that says something, in a tenth of a second. */
export const WANTED_LOOK = 23;

/** Trial counts at which a race is looked at: growing, the last is `most`. */
export function looksUpTo(most: number): readonly number[] {
  const looks: number[] = [];
  for (let look = FIRST_LOOK; look < most; look = Math.ceil(look * NEXT_LOOK)) looks.push(look);
  return [...looks, most];
}

/** A seed of the search's own, far from any that a person would give. */
export function searchSeed(seed: number, purpose: number): number {
  const share = new RandomStream().open(seed, purpose, STREAMS.search).uniform();
  return Math.floor(share * Number.MAX_SAFE_INTEGER);
}
