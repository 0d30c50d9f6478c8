import { RACE_ERROR } from "../search/elimination.ts";
import type { Entrant, EntrantFigures } from "../search/entrant.ts";
import { EVERY_BALL } from "../search/objective.ts";
import type { Race } from "../search/race.ts";
import type { RaceSettings } from "../search/raceSettings.ts";
import { isTie } from "../search/tie.ts";
import { raceTexts } from "../texts/english/race.ts";
import { figureWords } from "./objectiveWords.ts";
import { sensingVerdict, type Told } from "./sensorWords.ts";

/** Whether sensing pays here, and why, from trials that both have run; null before there are fresh ones, or without sensors. */
export function sensingWords(race: Race): string | null {
  const { rivals } = race;
  if (rivals === null) return null;
  if (race.settings.objective !== EVERY_BALL)
    return sensingByAim(race.settings, rivals.sensing, rivals.blind);
  const [sensing, blind] = [rivals.sensing, rivals.blind].map(({ id, isFresh, figures }): Told | undefined =>
    isFresh && figures ? { id, summary: figures.summary } : undefined,
  );
  if (sensing?.summary.trials !== blind?.summary.trials) return null;
  return sensingVerdict(sensing, blind);
}

/** The same by another aim: what each reaches of it, and whether that can be told apart. */
function sensingByAim({ objective, project }: RaceSettings, sensing: Entrant, blind: Entrant): string | null {
  const [its, other] = [sensing.figures, blind.figures];
  if (!sensing.isFresh || !blind.isFresh || its === null || other === null) return null;
  const [seen, unseen] = [sensing.freshScores, blind.freshScores];
  if (seen.length !== unseen.length) return null;
  const words = ({ figure }: EntrantFigures) => figureWords(objective, figure, project);
  const pair = raceTexts.pair(sensing.id, blind.id, raceTexts.against(words(its), words(other)));
  if (isTie(seen, unseen)) return raceTexts.tooClose(pair);
  const pays = objective.isBetter(its.figure.value, other.figure.value);
  return `${pays ? raceTexts.pays : raceTexts.paysNot}: ${pair}.`;
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
