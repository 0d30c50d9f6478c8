import type { Failings } from "../jobs/failings.ts";
import type { RatedPlacement } from "../jobs/hardPlacements.ts";
import { findWeakness, SURE_SDS, type Weakness } from "../jobs/weakness.ts";
import { linesOf } from "../model/program.ts";
import type { Project } from "../model/project.ts";
import type { Routine } from "../model/routine.ts";
import { countWords } from "../report/lengthWords.ts";
import { rangeWords, rateWords } from "../report/rateWords.ts";
import { budgetWords, lossCountWords, placementText, stopWords, sureWords } from "../report/weakWords.ts";
import { projectWord, routineIn } from "./findRoutine.ts";
import { interruptSignal, STOPPED } from "./interrupt.ts";
import { FINE, print, printJson, reject } from "./output.ts";
import { commandProgress } from "./progress.ts";
import { loadProjectFile } from "./projectFile.ts";
import type { StressInput } from "./stressCommand.ts";
import { tableText } from "./table.ts";
import { withPool } from "./withPool.ts";

/** Rows of losses printed; all are in the JSON. */
const LOSS_ROWS = 8;
/** The curve is printed for so many seconds. */
const TIME_ROWS = 6;

/** `wedgeward weak`. @returns the exit code */
export async function weakCommand(input: StressInput): Promise<number> {
  const parsed = loadProjectFile(input.project);
  if (!parsed.ok) return reject(input.project ?? "the default project", parsed.issues, input.json);
  const { project } = parsed.value;
  const found = routineIn(parsed.value, input.routine, input.project);
  if (!found.ok) return reject("the command line", found.issues, input.json);
  const routine = found.value;
  const { seed, trials, workers } = input;
  const signal = interruptSignal();
  const progress = commandProgress();
  const onProgress = (doneFrac: number, what: string): void => progress.show(doneFrac, `last done: ${what}`);
  const weakness = await withPool(workers, (pool) =>
    findWeakness(pool, project, routine, { seed, trials, signal, onProgress }),
  ).finally(() => progress.end());
  const isStopped = weakness.status === "stopped";
  if (input.json) printJson(weakJson(input, weakness));
  else print(weakText(project, routine, input, weakness));
  return isStopped ? STOPPED : FINE;
}

function weakJson({ routine, seed }: StressInput, weakness: Weakness): object {
  const { failings, coverage, blindSpots, sure, bounds, budget, beatenStill, beatenDrifting } = weakness;
  return {
    routine,
    seed,
    trials: failings?.trials ?? 0,
    ...(weakness.status === "stopped" ? { stopped: true } : {}),
    deliveredBalls: failings?.delivered ?? 0,
    losses: failings?.losses ?? [],
    map: failings?.map ?? null,
    timeToHome: failings?.time ?? null,
    stop: failings?.stop ?? null,
    coverageFrac: coverage?.coverageFrac ?? null,
    blindSpots,
    driftBounds: bounds,
    sure: sure && {
      sureFrac: sure.sureFrac,
      neverFrac: sure.neverFrac,
      endsAt: sure.endsAt,
      sizes: sure.sizes,
    },
    driftBudget: budget,
    worstWithoutDrift: beatenStill,
    worstWithDrift: beatenDrifting,
  };
}

function weakText(project: Project, routine: Routine, input: StressInput, weakness: Weakness): string {
  const stopped = weakness.status === "stopped" ? ["Stopped early; this is what was known by then.", ""] : [];
  return [
    ...stopped,
    `${project.name}, ${routine.id}: ${routine.label}`,
    "",
    ...failingsText(routine, input, weakness.failings),
    "",
    ...coverageText(weakness),
    "",
    ...placementsText("Layouts that beat it even without drift", weakness.beatenStill, input, " --still"),
    ...placementsText("Layouts with the lowest rates with drift", weakness.beatenDrifting, input),
  ].join("\n");
}

function failingsText(routine: Routine, input: StressInput, failings: Failings | null): readonly string[] {
  if (failings === null) return ["No trial was finished."];
  const { trials, balls, delivered, losses, time, stop } = failings;
  const { seed } = input;
  const lost = trials * balls - delivered;
  const rows = losses.slice(0, LOSS_ROWS).map((loss) => {
    const example = loss.examples[0];
    const play =
      example === undefined
        ? ""
        : `run ${example.index}${example.timeS === null ? "" : ` at ${example.timeS.toFixed(1)} s`}`;
    return [
      lossCountWords(loss, routine.program ? linesOf(routine.program) : routine.moves),
      String(loss.balls),
      rateWords(loss.runs),
      rangeWords(loss.runs),
      play,
    ];
  });
  const more =
    losses.length > LOSS_ROWS ? [`and ${losses.length - LOSS_ROWS} more; --json lists them all.`] : [];
  return [
    `${lost} of ${trials * balls} balls lost in ${trials} trials, seed ${seed}`,
    "",
    tableText(
      [["why and where", "balls", "in", "", "for example"], ...rows],
      [false, true, false, false, false],
    ),
    ...more,
    ...playText(input, losses[0]?.examples[0]?.index),
    "",
    tableText(
      [
        [
          "home by",
          ...time.curves.map((curve) => (curve.balls === balls ? "all" : `at least ${curve.balls}`)),
        ],
        ...timeRows(failings),
      ],
      [true, ...time.curves.map(() => true)],
    ),
    `Of 100 runs; all true shares lie within ±${(100 * time.bandFrac).toFixed(0)} at once (likely).`,
    stopWords(stop, routine.moves.length),
  ];
}

function playText({ project, routine, seed }: StressInput, index: number | undefined): readonly string[] {
  if (index === undefined) return [];
  const command = `wedgeward trial${projectWord(project)} --routine ${routine} --seed ${seed} --index ${index}`;
  return [`Run ${index} again: ${command}`];
}

function timeRows({ time }: Failings): readonly (readonly string[])[] {
  const last = time.timesS.length - 1;
  return Array.from({ length: TIME_ROWS }, (_, i) => {
    const at = Math.round(((i + 1) * last) / TIME_ROWS);
    return [
      `${(time.timesS[at] ?? 0).toFixed(0)} s`,
      ...time.curves.map((curve) => (100 * (curve.shareFrac[at] ?? 0)).toFixed(0)),
    ];
  });
}

function coverageText({ coverage, blindSpots, sure, budget }: Weakness): readonly string[] {
  const spots = blindSpots.map(
    ({ xMm, yMm, radiusMm }) =>
      `  around ${xMm.toFixed(0)}, ${yMm.toFixed(0)} mm: a circle ${(2 * radiusMm).toFixed(0)} mm wide`,
  );
  return [
    ...(coverage === null
      ? []
      : [
          `Without drift the pusher touches ${Math.floor(100 * coverage.coverageFrac)} of 100 places. Largest blind spots:`,
        ]),
    ...(coverage !== null && spots.length === 0 ? ["  none"] : spots),
    ...(sure === null
      ? []
      : ["", `With every error within ${countWords(SURE_SDS, "standard deviation")}. ${sureWords(sure)}`]),
    ...(budget === null ? [] : [budgetWords(budget)]),
  ];
}

function placementsText(
  title: string,
  placements: readonly RatedPlacement[],
  { routine, project }: StressInput,
  how = "",
): readonly string[] {
  if (placements.length === 0) return [`${title}: none found.`, ""];
  const rows = placements.map((each) => [
    placementText(each.placement),
    `${each.deliveredStill} of ${each.placement.length}`,
    rateWords(each.successRate),
    rangeWords(each.successRate),
  ]);
  const first = placements[0];
  const play =
    first === undefined
      ? []
      : [
          `Play one: wedgeward trial${projectWord(project)} --routine ${routine} --at ${placementText(first.placement)} --seed ${first.seed} --index 0${how}`,
        ];
  return [
    `${title}, scored on fresh seeds; the ranges hold for all of them at once:`,
    tableText(
      [["balls at x,y:x,y mm", "home without drift", "all home with drift", ""], ...rows],
      [false, true, false, false],
    ),
    ...play,
    "",
  ];
}
