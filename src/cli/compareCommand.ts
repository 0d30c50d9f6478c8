import { comparePair, type Side } from "../jobs/comparing.ts";
import type { Issue, Parsed } from "../model/issue.ts";
import type { ProjectFile } from "../model/parse.ts";
import { ballsOf } from "../model/project.ts";
import { type Rate, wilson } from "../num/interval.ts";
import { pairFigures } from "../report/decisionFigures.ts";
import { countWords } from "../report/lengthWords.ts";
import { differenceText, type ProjectDifference, projectDifferences } from "../report/projectDifferences.ts";
import { rangeWords, rateWords } from "../report/rateWords.ts";
import type { PairVerdict } from "../search/pairVerdict.ts";
import { keptTexts as t } from "../texts/english/kept.ts";
import { projectWord, routineIn } from "./findRoutine.ts";
import { interruptSignal, STOPPED } from "./interrupt.ts";
import { type Keep, keepIssues, writeKept } from "./keepDecision.ts";
import { FINE, print, printJson, reject } from "./output.ts";
import { commandProgress } from "./progress.ts";
import { loadProjectFile } from "./projectFile.ts";
import { tableText } from "./table.ts";
import { withPool } from "./withPool.ts";

export interface CompareInput {
  /** Ids of two routines; the same one twice compares two robots. */
  readonly first: string;
  readonly second: string;
  readonly project: string | null;
  /** The second routine's project; null: the same. */
  readonly otherProject: string | null;
  readonly trials: number;
  readonly seed: number;
  readonly workers: number;
  readonly json: boolean;
  readonly keep: Keep;
}

/** `wedgeward compare`. @returns the exit code */
export async function compareCommand(input: CompareInput): Promise<number> {
  const { trials, seed, workers, json } = input;
  const other = input.otherProject ?? input.project;
  const first = sideOf(input.project, input.first, "first ID");
  const second = sideOf(other, input.second, "second ID");
  if (!first.ok || !second.ok) {
    const issues = [first, second].flatMap((side) => (side.ok ? [] : side.issues));
    return reject("the command line or its projects", issues, json);
  }
  const { file, ...one } = first.value;
  // Both sides of one file are one project: nothing differs, and workers know it by identity.
  const two = other === input.project ? { ...second.value, project: one.project } : second.value;
  const sides = [one, { project: two.project, routine: two.routine }] as const;
  const uneven = unevenBalls(sides);
  const wrong = [...(uneven ? [uneven] : []), ...keepIssues(input.keep, file)];
  if (wrong.length > 0) return reject("the command line", wrong, json);
  const signal = interruptSignal();
  const progress = commandProgress();
  const onProgress = (done: number): void =>
    progress.show(done / (2 * trials), `${done} of ${2 * trials} trials`);
  const { status, verdict } = await withPool(workers, (pool) =>
    comparePair(pool, sides, { seed, trials, signal, onProgress }),
  ).finally(() => progress.end());
  const isStopped = status === "stopped";
  if (!isStopped) keepPair(input, file, sides, verdict);
  if (json) printJson({ ...compareJson(input, sides, verdict, isStopped), changed: changesOf(sides) });
  else
    print(
      [compareText(input, sides, verdict, isStopped), ...changedText(input, sides, isStopped)].join("\n"),
    );
  return isStopped ? STOPPED : FINE;
}

/** @param place which word of the command line an unknown routine is */
function sideOf(
  named: string | null,
  id: string,
  place: string,
): Parsed<Side & { readonly file: ProjectFile }> {
  const file = loadProjectFile(named);
  if (!file.ok) return file;
  const routine = routineIn(file.value, id, named);
  if (!routine.ok) return { ok: false, issues: routine.issues.map((issue) => ({ ...issue, path: place })) };
  return { ok: true, value: { project: file.value.project, routine: routine.value, file: file.value } };
}

type Sides = readonly [Side, Side];

/** From the second side's project to the first one's. */
function changesOf([first, second]: Sides): readonly ProjectDifference[] {
  return first.project === second.project ? [] : projectDifferences(second.project, first.project);
}

function changedText(input: CompareInput, sides: Sides, isStopped: boolean): readonly string[] {
  const changes = changesOf(sides);
  const other = input.otherProject;
  const list =
    changes.length === 0
      ? [t.unchanged]
      : [t.head(other ?? ""), ...changes.map((each) => `  ${differenceText(each)}`)];
  const { file } = input.keep;
  return [
    ...(other === null ? [] : list),
    ...(file === null ? [] : [isStopped ? t.notWritten : t.written(file)]),
  ];
}

function keepPair(
  { keep, seed, trials }: CompareInput,
  file: ProjectFile,
  sides: Sides,
  verdict: PairVerdict,
): void {
  const [{ project, routine }, second] = sides;
  const isSame = project === second.project;
  writeKept(keep, file, {
    kind: "comparison",
    title: isSame ? t.keptRoutine(routine.label) : t.keptRobot(second.project.name),
    figures: pairFigures(sides, verdict.comparison),
    inputs: {
      ...(isSame ? {} : { otherProject: second.project }),
      ...{
        project,
        routines: isSame && routine.id === second.routine.id ? [routine] : [routine, second.routine],
        measurements: "",
        seed,
        trials,
      },
    },
  });
}

function unevenBalls(sides: readonly [Side, Side]): Issue | null {
  const [first, second] = sides.map(({ project }) => ballsOf(project).length);
  if (first === second) return null;
  return {
    code: "uneven-balls",
    path: "--other-project",
    message: "Runs can only be compared with equally many balls; change one of the projects.",
    got: `${second} balls`,
    expected: `${first} balls`,
  };
}

/** Success rates of both, on the runs that both have made. */
function ratesOf({ comparison }: PairVerdict): readonly [Rate, Rate] {
  const { both, onlyFirst, onlySecond, trials } = comparison;
  return [wilson(both + onlyFirst, trials), wilson(both + onlySecond, trials)];
}

function compareJson(input: CompareInput, sides: Sides, verdict: PairVerdict, isStopped: boolean): object {
  const { comparison, evidenceFirst, evidenceSecond, settled, moreTrials } = verdict;
  const { first, second, seed } = input;
  const [firstRate, secondRate] = ratesOf(verdict);
  return {
    first,
    second,
    projects: sides.map(({ project }) => project.name),
    seed,
    ...(isStopped ? { stopped: true } : {}),
    firstRate,
    secondRate,
    ...comparison,
    onlyFirstRuns: verdict.onlyFirstRuns,
    onlySecondRuns: verdict.onlySecondRuns,
    moreTrials,
    anytime: { evidenceFirst, evidenceSecond, settled },
  };
}

function compareText(input: CompareInput, sides: Sides, verdict: PairVerdict, isStopped: boolean): string {
  const { both, onlyFirst, onlySecond, neither, trials, successDifference, pValue, better } =
    verdict.comparison;
  const stopped = isStopped ? ["Stopped early; this is what was known by then."] : [];
  if (trials === 0) return [...stopped, "No trial was finished by both."].join("\n");
  const { value, low, high } = successDifference;
  const rows = [input.first, input.second].map((id, i) => {
    const rate = ratesOf(verdict)[i === 0 ? 0 : 1];
    const where = input.otherProject === null ? "" : sides[i === 0 ? 0 : 1].project.name;
    return [i === 0 ? "first" : "second", id, where, rateWords(rate), rangeWords(rate)];
  });
  return [
    ...stopped,
    tableText([["", "routine", "", "every ball home in", ""], ...rows], [false, false, false, false, false]),
    "",
    `${countWords(trials, "run")} each on the same placements with the same luck, seed ${input.seed}.`,
    `Every ball home: both ${both}, only the first ${onlyFirst}, only the second ${onlySecond}, neither ${neither}.`,
    `First less second, of 100 runs: ${tenths(value)} (likely between ${tenths(low, Math.floor)} and ${tenths(high, Math.ceil)}).`,
    better === "alike"
      ? `Too close to call: equal ones would differ this much in ${percent(pValue)} of such comparisons.`
      : `The ${better} is better: equal ones would differ this much in ${percent(pValue)} of such comparisons.`,
    verdict.settled === null
      ? "For one who keeps looking while runs come in, or again with more of them, it is not settled yet."
      : `It stays settled for one who keeps looking while runs come in: the ${verdict.settled} is better.`,
    ...moreText(verdict),
    ...playText(input, verdict),
  ].join("\n");
}

/** Points of a hundred, with a sign: the ends of a range are rounded outward. */
function tenths(share: number, round: (value: number) => number = Math.round): string {
  const whole = round(1000 * share + (round === Math.floor ? 1e-9 : -1e-9)) + 0;
  return `${whole < 0 ? "−" : whole > 0 ? "+" : ""}${(Math.abs(whole) / 10).toFixed(1)}`;
}

/** Runs in which one brings every ball home and the other does not. */
function playText(input: CompareInput, { onlyFirstRuns, onlySecondRuns }: PairVerdict): readonly string[] {
  const told = [
    ["first", onlyFirstRuns],
    ["second", onlySecondRuns],
  ] as const;
  const lines = told.flatMap(([which, runs]) =>
    runs.length === 0
      ? []
      : [`Only the ${which} succeeds in run ${runs.join(", ")}${runs.length < 5 ? "" : " …"}`],
  );
  const index = onlyFirstRuns[0] ?? onlySecondRuns[0];
  if (index === undefined) return [];
  const play = (named: string | null, id: string): string =>
    `  wedgeward trial${projectWord(named)} --routine ${id} --seed ${input.seed} --index ${index}`;
  return [
    ...lines,
    `Run ${index} again, both ways:`,
    play(input.project, input.first),
    play(input.otherProject ?? input.project, input.second),
  ];
}

function moreText({ comparison, moreTrials }: PairVerdict): readonly string[] {
  if (comparison.better !== "alike") return [];
  if (moreTrials === null)
    return ["No difference was seen; how many more runs would find one cannot be said."];
  return [
    `If the difference is as seen, about ${moreTrials} more runs each would show it, nine times in ten: --trials ${comparison.trials + moreTrials}`,
  ];
}

function percent(pValue: number): string {
  return pValue < 0.001 ? "less than 0.1 %" : `${(100 * pValue).toFixed(1)} %`;
}
