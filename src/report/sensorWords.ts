import type { Equipment, SensorRow } from "../jobs/sensorWorth.ts";
import { shownSensorName } from "../model/presetNames.ts";
import { compareRoutines } from "../score/compare.ts";
import type { StressSummary } from "../score/stress.ts";
import { raceTexts } from "../texts/english/race.ts";
import { LOSS_REASONS } from "../trial/outcome.ts";
import { gainWords } from "./fixWords.ts";
import { lossTitle } from "./lossWords.ts";
import { outOf100 } from "./rateWords.ts";

/** What the robot knows, as a row's title. */
export function equipmentWords(equipment: Equipment): string {
  switch (equipment.kind) {
    case "none":
      return raceTexts.sensors.none;
    case "one":
      return shownSensorName(equipment.sensor);
    case "all":
      return raceTexts.sensors.all;
    case "perfect":
      return raceTexts.sensors.perfect;
    default:
      return equipment satisfies never;
  }
}

/** "+13 of 100 runs (6 to 20)", or that it cannot be told from none. */
export function worthWords({ equipment, worth }: SensorRow): string {
  if (equipment.kind === "none") return "";
  return `${gainWords(worth.successDifference)}${worth.better === "alike" ? raceTexts.alsoTooClose : ""}`;
}

/** What a ranking tells of a routine. */
export interface Told {
  readonly id: string;
  readonly summary: StressSummary;
}

/**
 * Whether looking pays here, in one or two sentences made of numbers: the best routine that senses against the best blind
 * one on the same placements, and the loss in which they differ most. null where there is not one of each.
 */
export function sensingVerdict(sensing: Told | undefined, blind: Told | undefined): string | null {
  if (sensing === undefined || blind === undefined) return null;
  const { better, successDifference } = compareRoutines(sensing.summary, blind.summary);
  const pair = raceTexts.pair(sensing.id, blind.id, gainWords(successDifference));
  if (better === "alike") return raceTexts.tooClose(pair);
  const [winner, loser] = better === "first" ? [sensing, blind] : [blind, sensing];
  const head = better === "first" ? raceTexts.pays : raceTexts.paysNot;
  return `${head}: ${pair}. ${reasonWords(winner.summary, loser.summary, better === "first")}`;
}

function reasonWords(winner: StressSummary, loser: StressSummary, isBlind: boolean): string {
  const balls = loser.trials * (loser.deliveredCounts.length - 1);
  const saved = (reason: (typeof LOSS_REASONS)[number]) => loser.losses[reason] - winner.losses[reason];
  const [most] = [...LOSS_REASONS].sort((a, b) => saved(b) - saved(a));
  if (most === undefined || balls === 0) return "";
  const share = (summary: StressSummary) => outOf100(summary.losses[most] / balls);
  return raceTexts.losesMore(isBlind, lossTitle(most), share(loser), share(winner));
}
