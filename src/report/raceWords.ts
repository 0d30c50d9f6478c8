import { RACE_ERROR } from "../search/elimination.ts";
import { EVERY_BALL } from "../search/objective.ts";
import type { Race } from "../search/race.ts";
import { countWords } from "./lengthWords.ts";
import { sensingVerdict, type Told } from "./sensorWords.ts";

/** Whether sensing pays here, and why, from trials that both have run; null before there are fresh ones, or without sensors. */
export function sensingWords(race: Race): string | null {
  const { rivals } = race;
  // The verdict is about runs with every ball home.
  if (rivals === null || race.settings.objective !== EVERY_BALL) return null;
  const [sensing, blind] = [rivals.sensing, rivals.blind].map(({ id, isFresh, figures }): Told | undefined =>
    isFresh && figures ? { id, summary: figures.summary } : undefined,
  );
  if (sensing?.summary.trials !== blind?.summary.trials) return null;
  return sensingVerdict(sensing, blind);
}

/** What became of those that are not followed any more, and the error bound. */
export function givenUpWords(race: Race): readonly string[] {
  const count = (status: string): number => race.entrants.filter((each) => each.status === status).length;
  const [dropped, aside] = [count("dropped"), count("aside")];
  const most = Math.round(100 * RACE_ERROR);
  return [
    ...(dropped > 0
      ? [
          `${countWords(dropped, "routine was", "routines were")} dropped early; at most ${most} of 100 searches drop the best.`,
        ]
      : []),
    ...(aside > 0
      ? [
          `${countWords(aside, "routine was", "routines were")} set aside after fewer runs, for want of time: more time would follow more of them.`,
        ]
      : []),
  ];
}

/** What a settled race says of itself: ties, what sensing is worth, those given up. */
export function raceNotes(race: Race): readonly string[] {
  const sensing = sensingWords(race);
  const tied = race.ties.length;
  return [
    tied > 1
      ? `${countWords(tied, "routine")} are too close to call; the one to take comes first, then the simplest.`
      : "The best is better than every other one, on the same placements.",
    ...(sensing === null ? [] : [sensing]),
    ...givenUpWords(race),
  ];
}
