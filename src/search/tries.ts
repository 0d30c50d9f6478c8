/** Points tried for each leader. */
export const TRIES = 28;
/** Trials behind each point, as a share of the most a routine gets in the race, within bounds. */
const TRIES_SHARE = 0.3;
export const LEAST_TRIES = 20;
const MOST_TRIES = 300;

/** Trials behind each point that is tried. */
export function triesTrials(mostTrials: number): number {
  return Math.min(Math.max(Math.round(TRIES_SHARE * mostTrials), LEAST_TRIES), MOST_TRIES);
}
