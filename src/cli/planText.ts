import { ballsOf, type Project } from "../model/project.ts";
import { countWords } from "../report/lengthWords.ts";
import { figureRangeWords, figureTitle, figureWords } from "../report/objectiveWords.ts";
import { givenUpWords, sensingWords } from "../report/raceWords.ts";
import { byMoves, byTime, type Entrant } from "../search/entrant.ts";
import type { Race } from "../search/race.ts";
import type { Standing } from "../search/standing.ts";
import { projectWord } from "./findRoutine.ts";
import type { PlanInput } from "./planCommand.ts";
import type { PlanResult } from "./planJson.ts";
import { tableText } from "./table.ts";

/** Rows printed; the rest is in the JSON. A terminal still shows the best one. */
export const PLAN_ROWS = 20;
/** Rows of a trade-off, its best end. */
const FRONT_ROWS = 6;

export function planText(project: Project, input: PlanInput, result: PlanResult): string {
  const { seed, trials, seconds } = input;
  const { race, standings, isStopped } = result;
  const stopped = isStopped ? "Stopped early; this is what was known by then.\n" : "";
  if (standings.length === 0) return `${stopped}No routine was tested.`;
  const within = seconds === null ? `up to ${trials} trials each` : `${seconds} s`;
  const head = `${project.name}: ${countWords(standings.length, "routine")}, ${within}, ${race.doneTrials} trials in all, seed ${seed}`;
  const rows = standings.slice(0, PLAN_ROWS).map((each, i) => rowOf(each, i + 1, result));
  const table = tableText(
    [
      [
        "",
        "routine",
        figureTitle(race.settings.objective),
        "",
        "runs",
        "balls",
        "time",
        "",
        "moves",
        "covered",
      ],
      ...rows,
    ],
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
    ...frontText("Less time for fewer successes", race.front(byTime), race),
    ...frontText("Fewer moves for fewer successes", race.front(byMoves), race),
    ...sensingText(result),
    ...bestText(result, input),
  ].join("\n");
}

function rowOf(
  { entrant, summary, figure, isFresh }: Standing,
  place: number,
  { race, coverage }: PlanResult,
): readonly string[] {
  const { objective, project } = race.settings;
  const covered = coverage.get(entrant.id);
  return [
    `${place}`,
    entrant.id,
    figureWords(objective, figure, project),
    figureRangeWords(objective, figure, project),
    `${summary.trials}${isFresh ? "" : "*"}`,
    `${summary.meanDelivered.toFixed(2)} of ${ballsOf(project).length}`,
    `${Math.ceil(entrant.durationS)} s`,
    entrant.fitsTime ? "" : `over the ${project.rules.timeLimitS} s`,
    `${entrant.moves}`,
    covered === undefined ? "?" : `${Math.floor(100 * covered)} %`,
  ];
}

function droppedText({ race, standings }: PlanResult): readonly string[] {
  const failed = race.entrants.filter(({ status }) => status === "failed");
  const fronts = [byTime, byMoves].flatMap((cost) => race.front(cost).slice(-FRONT_ROWS));
  const starred = [...standings.slice(0, PLAN_ROWS), ...fronts].some(({ isFresh }) => !isFresh);
  return [
    ...(starred ? ["* from the runs that also did the choosing; the others are from fresh ones."] : []),
    ...givenUpWords(race),
    ...failed
      .slice(0, 1)
      .map(({ id, fault }) => `${countWords(failed.length, "routine")} could not be run; ${id}: ${fault}`),
  ];
}

/** How many routines a paired test on the same trials does not tell from the leader. */
function tieText({ race, standings }: PlanResult): readonly string[] {
  const others = race.ties.length - 1;
  if (standings.length < 2) return [];
  if (race.settings.objective.id === "every-ball" && standings[0]?.summary.successRate.value === 0)
    return ["No routine brought every ball home in any run."];
  if (others <= 0) return ["The best is better than every other, by paired tests on the same trials."];
  const simplest = race.ties
    .filter(({ isFresh }) => isFresh)
    .slice(0, 3)
    .map(({ id, moves }) => `${id} (${countWords(moves, "move")})`);
  return [
    `${countWords(race.ties.length, "routine")} are too close to call, by paired tests on the same trials; more --trials or --seconds tell more.`,
    `The simplest of them: ${simplest.join(", ")}.`,
  ];
}

/** The dear end of a front; nothing where there is no choice. */
function frontText(title: string, front: readonly Entrant[], race: Race): readonly string[] {
  if (front.length < 2) return [];
  const { objective, project } = race.settings;
  const rows = front
    .slice(-FRONT_ROWS)
    .flatMap(({ id, durationS, moves, figures, isFresh }) =>
      figures === null
        ? []
        : [
            [
              `  ${Math.ceil(durationS)} s`,
              `${moves} moves`,
              figureWords(objective, figures.figure, project),
              figureRangeWords(objective, figures.figure, project),
              `${id}${isFresh ? "" : "*"}`,
            ],
          ],
    );
  return ["", `${title}:`, tableText(rows, [true, true, false, false, false])];
}

function sensingText({ race }: PlanResult): readonly string[] {
  const words = sensingWords(race);
  return words === null ? [] : ["", words];
}

function bestText({ race, standings }: PlanResult, input: PlanInput): readonly string[] {
  const { winner } = race;
  const standing = standings.find(({ entrant }) => entrant === winner) ?? standings[0];
  if (!standing) return [];
  const { id, routine } = standing.entrant;
  const { objective, project } = race.settings;
  const { figure } = standing;
  const title = figureTitle(objective);
  const said = `${figureWords(objective, figure, project)}, ${figureRangeWords(objective, figure, project)}`;
  return [
    "",
    `Best: ${id}: ${routine.label}`,
    objective.id === "every-ball"
      ? `${title[0]?.toUpperCase()}${title.slice(1)} ${said}.`
      : `On average ${said}.`,
    // Other aims may end a run earlier: the same runs, counted otherwise.
    ...(objective.id === "every-ball" && standing.isFresh
      ? [
          `The same runs again: wedgeward stress${projectWord(input.project)} --routine ${id} --trials ${standing.summary.trials} --seed ${input.seed}`,
        ]
      : []),
  ];
}
