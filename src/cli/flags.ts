/**
 * The command line in one table: what args.ts accepts and help.ts prints.
 * A little over 300 lines: a row for each flag and each command, and nothing that runs.
 */

import { AUDIENCES } from "../report/sheet/sheetFacts.ts";

/** Memory for one number a trial stays far below a gigabyte. */
const MOST_TRIALS = 1_000_000;
/** Trial indices are 32 bits of the random streams' counter. */
const LAST_INDEX = 4_294_967_295;
const MOST_WORKERS = 64;
/** Nobody makes more practice runs. */
const MOST_PLACEMENTS = 200;

const wholeNumber = (min: number, max: number): string => `a whole number from ${min} to ${max}`;

/** How long a sheet is. */
export const SHEET_PAGES = ["1", "2"] as const;

/** How the steps for the coder can be written. */
export const STEP_FORMS = ["table", "csv", "json", "python", "c", "pseudo"] as const;
export type StepForm = (typeof STEP_FORMS)[number];

export const FLAGS = {
  routine: { kind: "text", value: "ID", allowed: "the id of a routine", help: "which routine" },
  trials: {
    kind: "number",
    value: "N",
    min: 1,
    max: MOST_TRIALS,
    forPlan: 300,
    /** More than there is time for: the time decides. */
    forTimedPlan: 2000,
    forStress: 2000,
    forCompare: 2000,
    forWeak: 2000,
    forFix: 600,
    forSensors: 300,
    forSheet: 1000,
    allowed: wholeNumber(1, MOST_TRIALS),
    help: "simulated runs of each routine (plan and sensors 300, fix 600, sheet 1000, stress, compare and weak 2000)",
  },
  seconds: {
    kind: "number",
    value: "N",
    min: 1,
    max: 3600,
    allowed: wholeNumber(1, 3600),
    help: "how long the search may take; more time, surer figures",
  },
  aim: {
    kind: "text",
    value: "AIM",
    allowed: "every-ball, points, or home-by-N with a second N",
    help: "what is best: every-ball (usual), points, or home-by-60: most balls home by second 60",
  },
  seed: {
    kind: "number",
    value: "S",
    min: 0,
    max: Number.MAX_SAFE_INTEGER,
    fallback: 1,
    allowed: wholeNumber(0, Number.MAX_SAFE_INTEGER),
    help: "the same seed gives the same runs (1)",
  },
  at: {
    kind: "text",
    value: "PLACES",
    allowed: "x,y:x,y:… in mm, one pair a ball",
    help: "lays the balls there, as x,y:x,y:… in mm",
  },
  placement: {
    kind: "text",
    value: "FILE|random",
    allowed: "a file of places, or the word random",
    help: "where the balls lie: a JSON list of { xMm, yMm }, or drawn with the seed",
  },
  index: {
    kind: "number",
    value: "I",
    min: 0,
    max: LAST_INDEX,
    allowed: wholeNumber(0, LAST_INDEX),
    help: "which of the seed's runs, counted from 0",
  },
  workers: {
    kind: "number",
    value: "W",
    min: 1,
    max: MOST_WORKERS,
    allowed: wholeNumber(1, MOST_WORKERS),
    help: "threads; does not change the result (one per core)",
  },
  placements: {
    kind: "number",
    value: "N",
    min: 1,
    max: MOST_PLACEMENTS,
    fallback: 20,
    allowed: wholeNumber(1, MOST_PLACEMENTS),
    help: "how many placements to practise on (20)",
  },
  results: {
    kind: "text",
    value: "FILE.csv",
    allowed: "a table of practice runs",
    help: "the table of the runs you made (sheet: instead of those in the project file)",
  },
  out: {
    kind: "text",
    value: "FILE",
    allowed: "a new file",
    help: "the new file that it is written to; one that is there is left as it is",
  },
  as: {
    kind: "text",
    value: "FORM",
    allowed: STEP_FORMS.join(", "),
    help: "how to write the steps (table)",
  },
  pages: {
    kind: "text",
    value: "1|2",
    allowed: SHEET_PAGES.join(" or "),
    help: "how long the sheet is (2)",
  },
  for: {
    kind: "text",
    value: "WHOM",
    allowed: AUDIENCES.join(", "),
    help: "whom the sheet is for: engineers, or younger visitors (engineers)",
  },
  "with-steps": {
    kind: "switch",
    value: "",
    allowed: "no value",
    help: "the numbered steps on a page of their own",
  },
  still: {
    kind: "switch",
    value: "",
    allowed: "no value",
    help: "a robot that does exactly what it is told",
  },
  project: {
    kind: "text",
    value: "PROJECT",
    allowed: "a project file, or the name of one that ships with the tool",
    help: "the project it is about: a file, or the name of one that ships with the tool",
  },
  "other-project": {
    kind: "text",
    value: "PROJECT",
    allowed: "a project file, or the name of one that ships with the tool",
    help: "the project of the second routine, with another robot say (the same)",
  },
  keep: {
    kind: "text",
    value: "NEW.json",
    allowed: "a new file",
    help: "writes the result down as an entry of the decision notebook, in a new project file",
  },
  note: {
    kind: "text",
    value: "WORDS",
    allowed: "words, in quotes",
    help: "why you decided so, for the entry",
  },
  take: {
    kind: "number",
    value: "N",
    min: 1,
    max: 1000,
    fallback: 1,
    allowed: wholeNumber(1, 1000),
    help: "which row of the list of changes --keep writes down (1)",
  },
  json: { kind: "switch", value: "", allowed: "no value", help: "print one JSON object and nothing else" },
} as const;

export type FlagName = keyof typeof FLAGS;
export type NumberFlag = {
  [K in FlagName]: (typeof FLAGS)[K]["kind"] extends "number" ? K : never;
}[FlagName];

interface Command {
  readonly name:
    | "plan"
    | "stress"
    | "compare"
    | "trial"
    | "weak"
    | "fix"
    | "pockets"
    | "push"
    | "practice"
    | "sheet"
    | "sensors"
    | "check"
    | "steps"
    | "calibrate"
    | "start";
  readonly usage: string;
  readonly help: string;
  readonly flags: readonly FlagName[];
  readonly mostFiles: number;
}

export type CommandName = Command["name"];

export const COMMANDS: readonly Command[] = [
  {
    name: "plan",
    usage: "plan [PROJECT] [--trials N | --seconds N] [--aim AIM] [--seed S] [--workers W] [--json]",
    help: "finds the routine that most often brings every ball home: races all, refines the best",
    flags: ["aim", "trials", "seconds", "seed", "workers", "json"],
    mostFiles: 1,
  },
  {
    name: "stress",
    usage: "stress [PROJECT] --routine ID [--trials N] [--seed S] [--workers W] [--json]",
    help: "stress-tests one routine: success rate, balls home, losses by reason",
    flags: ["routine", "trials", "seed", "workers", "json"],
    mostFiles: 1,
  },
  {
    name: "compare",
    usage:
      "compare ID ID [--project PROJECT] [--other-project PROJECT] [--keep NEW.json [--note WORDS]] [--trials N] [--seed S] [--workers W] [--json]",
    help: "two routines, or one on two robots, on the same placements: which is better, and how sure that is",
    flags: ["project", "other-project", "keep", "note", "trials", "seed", "workers", "json"],
    mostFiles: 2,
  },
  {
    name: "trial",
    usage: "trial [PROJECT] --routine ID --seed S --index I [--at PLACES] [--still] [--json]",
    help: "runs a single trial again, exactly as the stress test did",
    flags: ["routine", "seed", "index", "at", "still", "json"],
    mostFiles: 1,
  },
  {
    name: "weak",
    usage: "weak [PROJECT] --routine ID [--trials N] [--seed S] [--workers W] [--json]",
    help: "where one routine fails: losses by move, blind spots, worst placements, when to stop",
    flags: ["routine", "trials", "seed", "workers", "json"],
    mostFiles: 1,
  },
  {
    name: "fix",
    usage:
      "fix [PROJECT] --routine ID [--keep NEW.json [--take N] [--note WORDS]] [--trials N] [--seed S] [--workers W] [--json]",
    help: "what to change on robot or routine and what it would bring, and what each part is worth",
    flags: ["routine", "keep", "take", "note", "trials", "seed", "workers", "json"],
    mostFiles: 1,
  },
  {
    name: "steps",
    usage: `steps [PROJECT] --routine ID [--as ${STEP_FORMS.join("|")}] [--seed S] [--index I]`,
    help: "the routine as numbered steps for the person who codes the robot; of one that decides as it goes, run I as well",
    flags: ["routine", "as", "seed", "index", "json"],
    mostFiles: 1,
  },
  {
    name: "pockets",
    usage: "pockets [PROJECT] [--json]",
    help: "maps the places from which pushing can bring a ball home, and the dead pockets",
    flags: ["json"],
    mostFiles: 1,
  },
  {
    name: "push",
    usage: "push [PROJECT] --placement FILE|random [--seed S] [--json]",
    help: "the quickest pushes for balls whose places are known: order, trips, moves, times",
    flags: ["placement", "seed", "json"],
    mostFiles: 1,
  },
  {
    name: "sensors",
    usage: "sensors [PROJECT] [--trials N] [--seed S] [--workers W] [--json]",
    help: "what each sensor is worth: no sensor, each one alone, all, and everything known",
    flags: ["trials", "seed", "workers", "json"],
    mostFiles: 1,
  },
  {
    name: "calibrate",
    usage: "calibrate FILE.csv [--project PROJECT] [--keep NEW.json [--note WORDS]] [--json]",
    help: "works out robot and ball from tests with a tape measure, and what that changes in the project",
    flags: ["project", "keep", "note", "json"],
    mostFiles: 1,
  },
  {
    name: "practice",
    usage:
      "practice [PROJECT] --routine ID [--placements N] [--out FILE.csv] [--results FILE.csv] [--seed S] [--json]",
    help: "placements to practise on; with the runs you made, what they say about the model",
    flags: ["routine", "placements", "out", "results", "seed", "json"],
    mostFiles: 1,
  },
  {
    name: "sheet",
    usage:
      "sheet [PROJECT] --routine ID --out FILE.html [--pages 1|2] [--for engineers|visitors] [--with-steps] [--results FILE.csv] [--trials N] [--seed S] [--workers W] [--json]",
    help: "one file for the jury: the way, why this routine, the evidence, practice, decisions, where it fails, limits",
    flags: ["routine", "out", "pages", "for", "with-steps", "results", "trials", "seed", "workers", "json"],
    mostFiles: 1,
  },
  {
    name: "check",
    usage: "check FILE… [--json]",
    help: "lists everything that is wrong with project files",
    flags: ["json"],
    mostFiles: Number.POSITIVE_INFINITY,
  },
  {
    name: "start",
    usage: "start",
    help: "ranks the default project, then serves the page (what npm start does)",
    flags: [],
    mostFiles: 0,
  },
];
