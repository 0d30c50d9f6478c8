import type { Dependence } from "../jobs/dependence.ts";
import { type FixList, findFixes } from "../jobs/fixes.ts";
import type { PartWorth } from "../jobs/partWorths.ts";
import type { Issue } from "../model/issue.ts";
import type { Project } from "../model/project.ts";
import type { Routine } from "../model/routine.ts";
import { fixFigures } from "../report/decisionFigures.ts";
import { costWords, gainWords, partTitle, shareWords } from "../report/fixWords.ts";
import { countWords } from "../report/lengthWords.ts";
import { rangeWords, rateWords } from "../report/rateWords.ts";
import type { IndexEstimate } from "../search/sobolIndices.ts";
import { keptTexts as t } from "../texts/english/kept.ts";
import { routineIn } from "./findRoutine.ts";
import { interruptSignal, STOPPED } from "./interrupt.ts";
import { type Keep, keepIssues, writeKept } from "./keepDecision.ts";
import { FINE, print, printJson, reject } from "./output.ts";
import { commandProgress } from "./progress.ts";
import { loadProjectFile } from "./projectFile.ts";
import type { StressInput } from "./stressCommand.ts";
import { tableText } from "./table.ts";
import { withPool } from "./withPool.ts";

export interface FixInput extends StressInput {
  readonly keep: Keep;
  /** Row of the list, from 1, that is kept. */
  readonly take: number;
}

/** `wedgeward fix`. @returns the exit code */
export async function fixCommand(input: FixInput): Promise<number> {
  const parsed = loadProjectFile(input.project);
  if (!parsed.ok) return reject(input.project ?? "the default project", parsed.issues, input.json);
  const { project } = parsed.value;
  const found = routineIn(parsed.value, input.routine, input.project);
  if (!found.ok) return reject("the command line", found.issues, input.json);
  const wrong = keepIssues(input.keep, parsed.value);
  if (wrong.length > 0) return reject("the command line", wrong, input.json);
  const { seed, trials, workers } = input;
  const signal = interruptSignal();
  const progress = commandProgress();
  const onProgress = (doneFrac: number, what: string): void => progress.show(doneFrac, `last done: ${what}`);
  const list = await withPool(workers, (pool) =>
    findFixes(pool, project, found.value, { seed, trials, signal, onProgress }),
  ).finally(() => progress.end());
  const isStopped = list.status === "stopped";
  const kept = isStopped || input.keep.file === null ? null : list.fixes[input.take - 1];
  if (kept === undefined) return reject("the command line", [noSuchRow(input.take, list)], input.json);
  if (kept) {
    const inputs = { project, routines: [found.value], change: kept.id, measurements: "", seed, trials };
    const figures = fixFigures(kept, list);
    writeKept(input.keep, parsed.value, { kind: "fix", title: kept.title, figures, inputs });
  }
  if (input.json) printJson(fixJson(input, list));
  else print(fixText(project, found.value, input, list));
  if (input.keep.file !== null && !input.json) print(kept ? t.written(input.keep.file) : t.notWritten);
  return isStopped ? STOPPED : FINE;
}

function noSuchRow(take: number, { fixes }: FixList): Issue {
  const message = "There are not so many changes in the list; nothing was written.";
  return { code: "no-row", path: "--take", message, got: String(take), expected: `at most ${fixes.length}` };
}

function fixJson({ routine, seed }: StressInput, { status, ...list }: FixList): object {
  return { routine, seed, ...(status === "stopped" ? { stopped: true } : {}), ...list };
}

function fixText(project: Project, routine: Routine, { seed }: StressInput, list: FixList): string {
  const { successRate, fixes, leftOut, trials, worths, dependence } = list;
  const stopped = list.status === "stopped" ? ["Stopped early; this is what was known by then.", ""] : [];
  const head = `${project.name}, ${routine.id}: ${routine.label}`;
  if (successRate === null) return [...stopped, head, "No trial was finished."].join("\n");
  const rows = fixes.map(({ title, gain, costsS, verdict }, i) => [
    String(i + 1),
    title,
    gainWords(gain),
    verdict === "not told apart" ? "too close to call" : verdict,
    costWords(costsS),
  ]);
  const left = leftOut.map(({ title, reason }) => `  ${title}: ${reason}`);
  return [
    ...stopped,
    head,
    `As it is: every ball home in ${rateWords(successRate)} (${rangeWords(successRate)}); up to ${trials} trials each, seed ${seed}`,
    "",
    tableText([["", "what if", "every ball home", "", ""], ...rows], [true, false, false, false, false]),
    "Same placements and same luck. The ranges hold for all rows at once, verdicts are exact paired tests corrected for their",
    "number; the figure in the first row flatters a little all the same, since it stands there for being high.",
    ...(left.length === 0 ? [] : ["", "Left out:", ...left]),
    ...worthText(worths),
    ...dependenceText(dependence),
  ].join("\n");
}

function worthText(worths: readonly PartWorth[] | null): readonly string[] {
  if (worths === null || worths.length === 0) return [];
  const rows = worths.map((part) => [
    partTitle(part),
    `${part.durationS.toFixed(0)} s`,
    gainWords(part.leaveOut),
    shareWords(part.ballsShare),
  ]);
  const total = worths.reduce((sum, { ballsShare }) => sum + ballsShare.value, 0);
  return [
    "",
    tableText(
      [["what each part is worth", "takes", "with it, not without", "balls a run"], ...rows],
      [false, true, false, false],
    ),
    `The balls add up to ${total.toFixed(2)} a run: the whole routine less the way in. Each range stands for itself.`,
  ];
}

function dependenceText(dependence: Dependence | null): readonly string[] {
  if (dependence === null || dependence.shares.length === 0) return [];
  const percent = (value: number, round = Math.round): string => `${round(100 * value)} %`;
  const range = ({ value, low, high }: IndexEstimate): string =>
    `${percent(value)} (${percent(low, Math.floor)} to ${percent(high, Math.ceil)})`;
  const rows = dependence.shares.map(({ title, share: { first, total } }) => [
    title,
    range(first),
    range(total),
  ]);
  const little = dependence.screened.slice(rows.length).map(({ title }) => title);
  return [
    "",
    tableText([["what the balls home depend on", "alone", "with others"], ...rows], [false, false, false]),
    `Share of the variation between averages of ${countWords(dependence.trials, "run")}; chance counts as acting with others.`,
    ...(little.length === 0 ? [] : [`A first look found less in: ${little.join("; ")}.`]),
  ];
}
