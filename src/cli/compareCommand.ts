import { comparePair, type Side } from "../jobs/comparing.ts";
import type { Issue, Parsed } from "../model/issue.ts";
import { ballsOf } from "../model/project.ts";
import { countWords } from "../report/lengthWords.ts";
import type { PairVerdict } from "../search/pairVerdict.ts";
import { routineIn } from "./findRoutine.ts";
import { interruptSignal, STOPPED } from "./interrupt.ts";
import { FINE, print, printJson, reject } from "./output.ts";
import { commandProgress } from "./progress.ts";
import { loadProjectFile } from "./projectFile.ts";
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
}

/** `wedgeward compare`. @returns the exit code */
export async function compareCommand(input: CompareInput): Promise<number> {
  const { trials, seed, workers, json } = input;
  const other = input.otherProject ?? input.project;
  const first = sideOf(input.project, input.first);
  const second = sideOf(other, input.second);
  if (!first.ok || !second.ok) {
    const issues = [first, second].flatMap((side) => (side.ok ? [] : side.issues));
    return reject("the command line or its projects", issues, json);
  }
  const sides = [first.value, second.value] as const;
  const uneven = unevenBalls(sides);
  if (uneven) return reject("the command line", [uneven], json);
  const signal = interruptSignal();
  const progress = commandProgress();
  const onProgress = (done: number): void =>
    progress.show(done / (2 * trials), `${done} of ${2 * trials} trials`);
  const { status, verdict } = await withPool(workers, (pool) =>
    comparePair(pool, sides, { seed, trials, signal, onProgress }),
  ).finally(() => progress.end());
  const isStopped = status === "stopped";
  if (json) printJson(compareJson(input, verdict, isStopped));
  else print(compareText(input, verdict, isStopped));
  return isStopped ? STOPPED : FINE;
}

function sideOf(file: string | null, id: string): Parsed<Side> {
  const parsed = loadProjectFile(file);
  if (!parsed.ok) return parsed;
  const routine = routineIn(parsed.value, id);
  const { project } = parsed.value;
  return routine.ok ? { ok: true, value: { project, routine: routine.value } } : routine;
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

function compareJson(input: CompareInput, verdict: PairVerdict, isStopped: boolean): object {
  const { comparison, evidenceFirst, evidenceSecond, settled, moreTrials } = verdict;
  const { first, second, seed } = input;
  return {
    first,
    second,
    seed,
    ...(isStopped ? { stopped: true } : {}),
    ...comparison,
    moreTrials,
    anytime: { evidenceFirst, evidenceSecond, settled },
  };
}

function compareText(input: CompareInput, verdict: PairVerdict, isStopped: boolean): string {
  const { both, onlyFirst, onlySecond, neither, trials, successDifference, pValue, better } =
    verdict.comparison;
  const stopped = isStopped ? ["Stopped early; this is what was known by then."] : [];
  if (trials === 0) return [...stopped, "No trial was finished by both."].join("\n");
  const points = (share: number): string => `${share < 0 ? "−" : "+"}${Math.abs(100 * share).toFixed(1)}`;
  const { value, low, high } = successDifference;
  return [
    ...stopped,
    `First: ${input.first}; second: ${input.second}`,
    `${countWords(trials, "run")} each on the same placements with the same luck, seed ${input.seed}.`,
    `Every ball home: both ${both}, only the first ${onlyFirst}, only the second ${onlySecond}, neither ${neither}.`,
    `First less second, of 100 runs: ${points(value)} (likely between ${points(low)} and ${points(high)}).`,
    better === "alike"
      ? `Too close to call: equal ones would differ this much in ${percent(pValue)} of such comparisons.`
      : `The ${better} is better: equal ones would differ this much in ${percent(pValue)} of such comparisons.`,
    verdict.settled === null
      ? "For one who keeps looking while runs come in, it is not settled yet."
      : `It stays settled for one who keeps looking while runs come in: the ${verdict.settled} is better.`,
    ...moreText(verdict),
  ].join("\n");
}

function moreText({ comparison, moreTrials }: PairVerdict): readonly string[] {
  if (comparison.better !== "alike") return [];
  if (moreTrials === null)
    return ["No difference was seen; how many more runs would find one cannot be said."];
  return [
    `If the difference is as seen, about ${moreTrials} more runs each would settle it (9 times of 10).`,
  ];
}

function percent(pValue: number): string {
  return pValue < 0.001 ? "less than 0.1 %" : `${(100 * pValue).toFixed(1)} %`;
}
