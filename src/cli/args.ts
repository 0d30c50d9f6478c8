import type { Issue, Parsed } from "../model/issue.ts";
import { nearestWord } from "../model/suggest.ts";
import { AUDIENCES, type SheetChoice, USUAL_SHEET } from "../report/sheet/sheetFacts.ts";
import { EVERY_BALL, OBJECTIVE_NAMES, type Objective, objectiveNamed } from "../search/objective.ts";
import {
  COMMANDS,
  type CommandName,
  FLAGS,
  type FlagName,
  type NumberFlag,
  SHEET_PAGES,
  STEP_FORMS,
  type StepForm,
} from "./flags.ts";
import type { Keep } from "./keepDecision.ts";

/**
 * The command line as data. Over 400 lines: one case and one type for each command, and nothing that runs.
 */

/** What the command line asks for, defaults filled in. */
export type Invocation =
  /** null: about all commands. */
  | { readonly command: "help"; readonly about: CommandName | null }
  | { readonly command: "version" }
  | { readonly command: "start" }
  | ({
      readonly command: "plan";
      /** How long the search may take; null: until it is settled. */
      readonly seconds: number | null;
      readonly objective: Objective;
    } & Common &
      Sampling)
  | ({ readonly command: "sensors" } & Common & Sampling)
  | ({ readonly command: "stress" | "weak"; readonly routine: string } & Common & Sampling)
  | ({
      readonly command: "fix";
      readonly routine: string;
      readonly keep: Keep;
      readonly take: number;
    } & Common &
      Sampling)
  | ({
      readonly command: "trial";
      readonly routine: string;
      readonly seed: number;
      readonly index: number;
      /** Where the balls are laid, as typed; null: as the seed draws them. */
      readonly at: string | null;
      /** Without drift and spread. */
      readonly still: boolean;
    } & Common)
  | ({
      readonly command: "steps";
      readonly routine: string;
      readonly form: StepForm;
      readonly seed: number;
      readonly index: number;
    } & Common)
  | ({
      readonly command: "compare";
      readonly first: string;
      readonly second: string;
      /** null: the first one's. */
      readonly otherProject: string | null;
      readonly keep: Keep;
    } & Common &
      Sampling)
  | ({
      readonly command: "sheet";
      readonly routine: string;
      readonly out: string;
      readonly choice: SheetChoice;
      readonly results: string | null;
    } & Common &
      Sampling)
  | ({ readonly command: "pockets" } & Common)
  | ({ readonly command: "push"; readonly placement: string; readonly seed: number } & Common)
  | ({
      readonly command: "practice";
      readonly routine: string;
      readonly placements: number;
      readonly seed: number;
      readonly results: string | null;
      readonly out: string | null;
    } & Common)
  | {
      readonly command: "calibrate";
      readonly file: string;
      readonly project: string | null;
      readonly json: boolean;
      readonly keep: Keep;
    }
  | { readonly command: "check"; readonly files: readonly string[]; readonly json: boolean };

interface Common {
  /** Path or name of the project; null for the default one. */
  readonly project: string | null;
  readonly json: boolean;
}

interface Sampling {
  readonly trials: number;
  readonly seed: number;
  readonly workers: number;
}

interface Words {
  readonly flags: ReadonlyMap<FlagName, string>;
  readonly others: readonly string[];
}

/**
 * Reads the arguments after the program's name. Nothing is thrown; everything that is wrong comes back at once.
 *
 * @param cores worker threads used when none are asked for
 */
export function parseArguments(argv: readonly string[], cores: number): Parsed<Invocation> {
  if (argv.length === 0 || argv.some((word) => word === "--help" || word === "-h"))
    return fine({ command: "help", about: COMMANDS.find(({ name }) => name === argv[0])?.name ?? null });
  if (argv.includes("--version")) return fine({ command: "version" });
  const [name, ...rest] = argv;
  const command = COMMANDS.find((each) => each.name === name);
  if (!command) return { ok: false, issues: [unknownCommand(name ?? "")] };
  const issues: Issue[] = [];
  const words = split(rest, command.flags, issues);
  if (words.others.length > command.mostFiles) {
    const surplus = words.others.slice(command.mostFiles);
    issues.push(issue("surplus-argument", surplus.join(" "), "Take it out.", command.usage));
  }
  const invocation = readCommand(command.name, words, cores, issues);
  return issues.length === 0 ? fine(invocation) : { ok: false, issues };
}

function fine(value: Invocation): Parsed<Invocation> {
  return { ok: true, value };
}

function readCommand(name: CommandName, words: Words, cores: number, issues: Issue[]): Invocation {
  const number = (flag: NumberFlag, fallback: number | null): number =>
    readNumber(words, flag, fallback, issues);
  const common = { project: words.others[0] ?? null, json: words.flags.has("json") };
  switch (name) {
    case "plan": {
      const seconds = words.flags.has("seconds") ? number("seconds", null) : null;
      const trials = seconds === null ? FLAGS.trials.forPlan : FLAGS.trials.forTimedPlan;
      const objective = readAim(words, issues);
      return { command: "plan", ...common, seconds, objective, ...sampling(number, trials, cores) };
    }
    case "stress": {
      const routine = readRoutine(words, issues);
      return { command: "stress", ...common, routine, ...sampling(number, FLAGS.trials.forStress, cores) };
    }
    case "compare": {
      const [first = "", second = ""] = words.others;
      if (second === "") {
        const got = first === "" ? "no routine" : "one routine";
        issues.push(issue("missing-routine", got, "Name two; `wedgeward plan` lists their ids.", "ID ID"));
      }
      const project = words.flags.get("project") ?? null;
      const otherProject = words.flags.get("other-project") ?? null;
      const sampled = sampling(number, FLAGS.trials.forCompare, cores);
      const keep = readKeep(words, issues);
      return {
        command: "compare",
        first,
        second,
        project,
        otherProject,
        json: common.json,
        keep,
        ...sampled,
      };
    }
    case "weak": {
      const routine = readRoutine(words, issues);
      return { command: "weak", ...common, routine, ...sampling(number, FLAGS.trials.forWeak, cores) };
    }
    case "fix": {
      const routine = readRoutine(words, issues);
      const keep = readKeep(words, issues);
      const take = number("take", FLAGS.take.fallback);
      return {
        command: "fix",
        ...common,
        routine,
        keep,
        take,
        ...sampling(number, FLAGS.trials.forFix, cores),
      };
    }
    case "trial": {
      const routine = readRoutine(words, issues);
      return {
        command: "trial",
        ...common,
        routine,
        seed: number("seed", null),
        index: number("index", null),
        at: words.flags.get("at") ?? null,
        still: words.flags.has("still"),
      };
    }
    case "steps": {
      const routine = readRoutine(words, issues);
      const form = common.json ? "json" : readForm(words, issues);
      const shown = { seed: number("seed", FLAGS.seed.fallback), index: number("index", 0) };
      return { command: "steps", ...common, json: form === "json", routine, form, ...shown };
    }
    case "sensors":
      return { command: "sensors", ...common, ...sampling(number, FLAGS.trials.forSensors, cores) };
    case "pockets":
      return { command: "pockets", ...common };
    case "push": {
      const placement = words.flags.get("placement") ?? "";
      if (placement === "") {
        const remedy = "Say where the balls lie: a file, or random.";
        issues.push(flagIssue("missing-flag", "placement", "nothing", remedy));
      }
      return { command: "push", ...common, placement, seed: number("seed", FLAGS.seed.fallback) };
    }
    case "sheet": {
      const routine = readRoutine(words, issues);
      const out = words.flags.get("out") ?? "";
      if (out === "") issues.push(flagIssue("missing-flag", "out", "nothing", "Name the file to write."));
      return {
        command: "sheet",
        ...common,
        ...{
          routine,
          out,
          choice: readSheetChoice(words, issues),
          results: words.flags.get("results") ?? null,
        },
        ...sampling(number, FLAGS.trials.forSheet, cores),
      };
    }
    case "practice":
      return {
        command: "practice",
        ...common,
        routine: readRoutine(words, issues),
        placements: number("placements", FLAGS.placements.fallback),
        seed: number("seed", FLAGS.seed.fallback),
        results: words.flags.get("results") ?? null,
        out: words.flags.get("out") ?? null,
      };
    case "calibrate": {
      const [file = ""] = words.others;
      if (file === "")
        issues.push(issue("missing-file", "no file", "Name the table of your tests.", "FILE.csv"));
      const keep = readKeep(words, issues);
      const project = words.flags.get("project") ?? null;
      return { command: "calibrate", file, project, json: common.json, keep };
    }
    case "check":
      if (words.others.length === 0)
        issues.push(issue("missing-file", "no file", "Name the files to check.", "FILE…"));
      return { command: "check", files: words.others, json: common.json };
    case "start":
      return { command: "start" };
    default:
      return name satisfies never;
  }
}

function sampling(
  number: (flag: NumberFlag, fallback: number) => number,
  trials: number,
  cores: number,
): Sampling {
  const workers = Math.min(cores, FLAGS.workers.max);
  return {
    trials: number("trials", trials),
    seed: number("seed", FLAGS.seed.fallback),
    workers: number("workers", workers),
  };
}

/** Sorts the words into flags with their values, and the rest. */
function split(argv: readonly string[], known: readonly FlagName[], issues: Issue[]): Words {
  const flags = new Map<FlagName, string>();
  const others: string[] = [];
  for (let i = 0; i < argv.length; i++) {
    const word = argv[i] ?? "";
    if (!word.startsWith("-") || word === "-") {
      others.push(word);
      continue;
    }
    const [key = "", ...inline] = word.replace(/^--?/, "").split("=");
    const name = known.find((flag) => flag === key && word.startsWith("--"));
    if (!name) {
      issues.push(unknownFlag(word, key, known));
      // Its value, if it has one, is not a file.
      if (inline.length === 0 && takesValue(key) && isValue(argv[i + 1])) i++;
      continue;
    }
    if (flags.has(name)) issues.push(flagIssue("repeated-flag", name, "given twice", "Give it once."));
    const isSwitch = FLAGS[name].kind === "switch";
    if (isSwitch && inline.length > 0) {
      issues.push(flagIssue("unwanted-value", name, inline.join("="), "It takes no value."));
    }
    const value =
      isSwitch || inline.length > 0 || !isValue(argv[i + 1]) ? inline.join("=") : (argv[++i] ?? "");
    flags.set(name, value);
  }
  return { flags, others };
}

function takesValue(key: string): boolean {
  return Object.entries(FLAGS).some(([name, flag]) => name === key && flag.kind !== "switch");
}

/** Whether a word can be the value of the flag before it; −1 can, so that it is reported as a value out of range. */
function isValue(word: string | undefined): boolean {
  return word !== undefined && (!word.startsWith("-") || /^-\d/.test(word));
}

function readNumber(words: Words, name: NumberFlag, fallback: number | null, issues: Issue[]): number {
  const text = words.flags.get(name);
  const { min, max } = FLAGS[name];
  if (text === undefined) {
    if (fallback === null) issues.push(flagIssue("missing-flag", name, "nothing", `Add --${name}.`));
    return fallback ?? min;
  }
  const value = /^\d+$/.test(text) ? Number(text) : Number.NaN;
  if (value >= min && value <= max) return value;
  issues.push(flagIssue("bad-number", name, text === "" ? "no value" : text, "Give a number it allows."));
  return min;
}

function readRoutine(words: Words, issues: Issue[]): string {
  const id = words.flags.get("routine") ?? "";
  if (id === "") {
    const remedy = "Name a routine; `wedgeward plan` lists their ids.";
    issues.push(flagIssue("missing-flag", "routine", "nothing", remedy));
  }
  return id;
}

function readKeep(words: Words, issues: Issue[]): Keep {
  const [file, note] = [words.flags.get("keep"), words.flags.get("note")];
  if (file === "") issues.push(flagIssue("missing-value", "keep", "no value", "Name the file to write."));
  if (file === undefined && note !== undefined)
    issues.push(flagIssue("missing-flag", "note", note, "A note goes with --keep NEW.json: add it."));
  return { file: file ?? null, note: note ?? "" };
}

function readAim(words: Words, issues: Issue[]): Objective {
  const text = words.flags.get("aim");
  if (text === undefined) return EVERY_BALL;
  const objective = objectiveNamed(text);
  if (objective !== null) return objective;
  const nearest = nearestWord(text, OBJECTIVE_NAMES);
  const remedy = nearest ? `Did you mean ${nearest}?` : "Choose one of these aims.";
  issues.push(flagIssue("unknown-aim", "aim", text === "" ? "no value" : text, remedy));
  return EVERY_BALL;
}

function readForm(words: Words, issues: Issue[]): StepForm {
  return readWord(words, "as", STEP_FORMS, "table", issues);
}

function readSheetChoice(words: Words, issues: Issue[]): SheetChoice {
  const { pages, audience } = USUAL_SHEET;
  return {
    pages: readWord(words, "pages", SHEET_PAGES, pages === 1 ? "1" : "2", issues) === "1" ? 1 : 2,
    audience: readWord(words, "for", AUDIENCES, audience, issues),
    steps: words.flags.has("with-steps"),
  };
}

/** One of a few words; another one is an issue. */
function readWord<T extends string>(
  words: Words,
  name: FlagName,
  known: readonly T[],
  usual: T,
  issues: Issue[],
): T {
  const text = words.flags.get(name) ?? usual;
  const found = known.find((each) => each === text);
  if (found !== undefined) return found;
  const nearest = nearestWord(text, known);
  const remedy = nearest ? `Did you mean ${nearest}?` : "Choose one of these.";
  issues.push(
    flagIssue(
      name === "as" ? "unknown-form" : "unknown-choice",
      name,
      text === "" ? "no value" : text,
      remedy,
    ),
  );
  return usual;
}

function unknownCommand(name: string): Issue {
  const names = COMMANDS.map((command) => command.name);
  const nearest = nearestWord(name, names);
  const remedy = nearest ? `Did you mean ${nearest}?` : "`wedgeward --help` explains the commands.";
  return issue("unknown-command", name, remedy, names.join(", "));
}

function unknownFlag(word: string, key: string, known: readonly FlagName[]): Issue {
  const nearest = nearestWord(key, known);
  const message = nearest
    ? `There is no such option. Did you mean --${nearest}?`
    : "There is no such option here.";
  const expected = known.map((name) => `--${name}`).join(", ") || "no options";
  return { code: "unknown-flag", path: word.split("=")[0] ?? word, message, got: word, expected };
}

function flagIssue(code: string, name: FlagName, got: string, message: string): Issue {
  return { code, path: `--${name}`, message, got, expected: FLAGS[name].allowed };
}

function issue(code: string, got: string, message: string, expected: string): Issue {
  return { code, path: "", message, got, expected };
}
