import { topic } from "../language.ts";

/** The leaf of Jury with the decisions. */
export const notebookTexts = topic("notebook", {
  title: "Decision notebook",
  hint: "What was decided, on which figures, and why. Each entry keeps the project and the routines as they were: it can be run again whatever becomes of them.",
  none: "Nothing is written down yet.",
  entry: (date: string, title: string) => `${date}: ${title}`,
  again: "Run it again",
  takeOut: "Take it out",
  running: "Running it again with what it carries along",
  same: "Run again with the project as it was then: the same figures.",
  sameInOtherWords: "Run again with the project as it was then: the same figures, in today’s words:",
  others: "Run again with the project as it was then, this version of the program says:",
  notFound: "what it was made from is not in the project any more",
  write: "Write a decision down",
  nothing:
    "There is nothing to decide on yet: choose a routine, try changes under Weak spots, or measure your robot under Practice.",
  madeFrom: "Made from",
  date: "Date",
  why: "Why we decided so",
  writeDown: "Write it down",
  writeDownAfter: (runs: number) => `Write it down, after ${runs} ${runs === 1 ? "run" : "runs"} each`,
  comparing: "Comparing on the same placements",
  written: "Written down.",
  measurements: "the measurements under Practice",
  change: (title: string) => `a change: ${title}`,
  comparison: (label: string) => `a comparison with: ${label}`,
});
