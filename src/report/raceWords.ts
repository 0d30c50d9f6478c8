import { RACE_ERROR } from "../search/elimination.ts";
import { EVERY_BALL } from "../search/objective.ts";
import type { Race } from "../search/race.ts";
import { raceTexts } from "../texts/english/race.ts";
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
    ...(dropped > 0 ? [raceTexts.dropped(dropped, most)] : []),
    ...(aside > 0 ? [raceTexts.aside(aside)] : []),
  ];
}

/** What a settled race says of itself: ties, what sensing is worth, those given up. */
export function raceNotes(race: Race): readonly string[] {
  const sensing = sensingWords(race);
  const tied = race.ties.length;
  return [
    tied > 1 ? raceTexts.tied(tied) : raceTexts.clear,
    ...(sensing === null ? [] : [sensing]),
    ...givenUpWords(race),
  ];
}
