import { ballsOf, type Project } from "../model/project.ts";
import { countWords } from "../report/lengthWords.ts";
import { rangeWords, rateWords } from "../report/rateWords.ts";
import type { Entrant } from "../search/entrant.ts";
import type { Standing } from "../search/standing.ts";
import type { PlanInput } from "./planCommand.ts";
import type { PlanResult } from "./planJson.ts";
import { tableText } from "./table.ts";

/** Rows printed; the rest is in the JSON. A terminal still shows the best one. */
export const PLAN_ROWS = 20;
/** Rows of a trade-off, its best end. */
const FRONT_ROWS = 6;

export function planText(project: Project, { seed, trials, seconds }: PlanInput, result: PlanResult): string {
  const { race, standings, isStopped } = result;
  const stopped = isStopped ? "Stopped early; this is what was known by then.\n" : "";
  if (standings.length === 0) return `${stopped}No routine was tested.`;
  const within = seconds === null ? `up to ${trials} trials each` : `${seconds} s`;
  const head = `${project.name}: ${countWords(standings.length, "routine")}, ${within}, ${race.doneTrials} trials in all, seed ${seed}`;
  const rows = standings.slice(0, PLAN_ROWS).map((each, i) => rowOf(each, i + 1, project, result.coverage));
  const table = tableText(
    [["", "routine", "every ball home in", "", "runs", "balls", "time", "", "moves", "covered"], ...rows],
    [true, false, false, false, true, true, true, false, true, true],
  );
  const more =
    standings.length > PLAN_ROWS ? [`and ${standings.length - PLAN_ROWS} more; --json lists them all.`] : [];
  return [
    `${stopped}${head}`,
    "",
    table,
    ...more,
    "",
    ...droppedText(result),
    ...tieText(result),
    ...frontText(
      "Less time for fewer successes",
      race.front(({ durationS }) => durationS),
      standings,
    ),
    ...frontText(
      "Fewer moves for fewer successes",
      race.front(({ moves }) => moves),
      standings,
    ),
    ...bestText(result),
  ].join("\n");
}

function rowOf(
  { entrant, summary, isFresh }: Standing,
  place: number,
  project: Project,
  coverage: ReadonlyMap<string, number>,
): readonly string[] {
  const covered = coverage.get(entrant.id);
  return [
    `${place}`,
    entrant.id,
    rateWords(summary.successRate),
    rangeWords(summary.successRate),
    `${summary.trials}${isFresh ? "" : "*"}`,
    `${summary.meanDelivered.toFixed(2)} of ${ballsOf(project).length}`,
    `${Math.ceil(entrant.durationS)} s`,
    entrant.fitsTime ? "" : `over the ${project.rules.timeLimitS} s`,
    `${entrant.moves}`,
    covered === undefined ? "?" : `${Math.floor(100 * covered)} %`,
  ];
}

function droppedText({ race, standings }: PlanResult): readonly string[] {
  const dropped = race.entrants.filter(({ status }) => status === "dropped").length;
  const failed = race.entrants.filter(({ status }) => status === "failed");
  const starred = standings.slice(0, PLAN_ROWS).some(({ isFresh }) => !isFresh);
  return [
    ...(starred ? ["* from the runs that also did the choosing; the others are from fresh ones."] : []),
    ...(dropped > 0
      ? [
          `${countWords(dropped, "routine was", "routines were")} dropped early; at most 5 of 100 searches drop the best.`,
        ]
      : []),
    ...failed
      .slice(0, 1)
      .map(({ id, fault }) => `${countWords(failed.length, "routine")} could not be run; ${id}: ${fault}`),
  ];
}

/** How many routines a paired test on the same trials does not tell from the leader. */
function tieText({ race, standings }: PlanResult): readonly string[] {
  const others = race.ties.length - 1;
  if (standings.length < 2) return [];
  if (standings[0]?.summary.successRate.value === 0)
    return ["No routine brought every ball home in any run."];
  if (others <= 0) return ["The best is better than every other, by paired tests on the same trials."];
  const simplest = race.ties.slice(0, 3).map(({ id, moves }) => `${id} (${countWords(moves, "move")})`);
  return [
    `${countWords(race.ties.length, "routine")} are too close to call, by paired tests on the same trials; more --trials or --seconds tell more.`,
    `The simplest of them: ${simplest.join(", ")}.`,
  ];
}

/** The dear end of a front; nothing where there is no choice. */
function frontText(
  title: string,
  front: readonly Entrant[],
  standings: readonly Standing[],
): readonly string[] {
  if (front.length < 2) return [];
  const known = new Map(standings.map((standing) => [standing.entrant, standing]));
  const rows = front.slice(-FRONT_ROWS).flatMap((entrant) => {
    const standing = known.get(entrant);
    if (!standing) return [];
    const { successRate } = standing.summary;
    return [
      [
        `  ${Math.ceil(entrant.durationS)} s`,
        `${entrant.moves} moves`,
        rateWords(successRate),
        rangeWords(successRate),
        entrant.id,
      ],
    ];
  });
  return ["", `${title}:`, tableText(rows, [true, true, false, false, false])];
}

function bestText({ race, standings }: PlanResult): readonly string[] {
  const { winner } = race;
  const standing = standings.find(({ entrant }) => entrant === winner) ?? standings[0];
  if (!standing) return [];
  const { id, routine } = standing.entrant;
  const { successRate } = standing.summary;
  return [
    "",
    `Best: ${id}: ${routine.label}`,
    `Every ball home in ${rateWords(successRate)}, ${rangeWords(successRate)}.`,
  ];
}
