import type { Equipment, SensorRow } from "../jobs/sensorWorth.ts";
import { compareRoutines } from "../score/compare.ts";
import type { StressSummary } from "../score/stress.ts";
import { LOSS_REASONS } from "../trial/outcome.ts";
import { gainWords } from "./fixWords.ts";
import { lossTitle } from "./lossWords.ts";
import { outOf100 } from "./rateWords.ts";

/** What the robot knows, as a row's title. */
export function equipmentWords(equipment: Equipment): string {
  switch (equipment.kind) {
    case "none":
      return "no sensor";
    case "one":
      return equipment.sensor.name;
    case "all":
      return "all of them";
    case "perfect":
      return "everything known";
    default:
      return equipment satisfies never;
  }
}

/** "+13 of 100 runs (6 to 20)", or that it cannot be told from none. */
export function worthWords({ equipment, worth }: SensorRow): string {
  if (equipment.kind === "none") return "";
  return `${gainWords(worth.successDifference)}${worth.better === "alike" ? ", too close to call" : ""}`;
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
  const pair = `the best routine that senses (${sensing.id}) against the best blind one (${blind.id}): ${gainWords(successDifference)}`;
  if (better === "alike") return `Too close to call: ${pair}.`;
  const [winner, loser] = better === "first" ? [sensing, blind] : [blind, sensing];
  const head = better === "first" ? "Looking pays here" : "Looking does not pay here";
  return `${head}: ${pair}. ${reasonWords(winner.summary, loser.summary, better === "first" ? "blind" : "sensing")}`;
}

function reasonWords(winner: StressSummary, loser: StressSummary, who: string): string {
  const balls = loser.trials * (loser.deliveredCounts.length - 1);
  const saved = (reason: (typeof LOSS_REASONS)[number]) => loser.losses[reason] - winner.losses[reason];
  const [most] = [...LOSS_REASONS].sort((a, b) => saved(b) - saved(a));
  if (most === undefined || balls === 0) return "";
  const share = (summary: StressSummary) => outOf100(summary.losses[most] / balls);
  return `The ${who} one loses more balls to “${lossTitle(most)}”: ${share(loser)} of 100 against ${share(winner)}.`;
}
