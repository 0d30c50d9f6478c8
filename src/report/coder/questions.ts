import type { Condition, Question } from "../../model/program.ts";
import type { ReadingName } from "./functions.ts";
import { MM_DECIMALS, numberText, SECONDS_DECIMALS } from "./numberText.ts";

/** A question as a call and what its answer is held against. */
export interface Asked {
  readonly reading: ReadingName;
  /** Counted from 1; null for readings that have none. */
  readonly sensor: number | null;
  /** yes: less than this; null where the answer is yes or no, or a count of which any is enough. */
  readonly lessThan: number | null;
  /** The answer that is wanted. */
  readonly wanted: "yes" | "no";
}

/** How a language says no, and what it calls nothing. */
export interface QuestionDialect {
  readonly not: string;
}

export function askedOf({ ask, not }: Question): Asked {
  return { ...readingOf(ask), wanted: not ? "no" : "yes" };
}

function readingOf(ask: Condition): Omit<Asked, "wanted"> {
  const plain = { sensor: null, lessThan: null };
  switch (ask.kind) {
    case "seen":
      return { reading: "balls_noted", ...plain };
    case "holding":
      return { reading: "ball_in_pusher", ...plain };
    case "overWedge":
      return { reading: "over_wedge", ...plain };
    case "bumped":
      return { reading: ask.side === "front" ? "front_bumped" : "back_bumped", ...plain };
    case "nearer":
      return { reading: "distance_mm", sensor: ask.sensor + 1, lessThan: ask.thanMm };
    case "shortOfTime":
      return { reading: "seconds_left", sensor: null, lessThan: ask.belowS };
    default:
      return ask satisfies never;
  }
}

/** The threshold as it stands in a listing. */
export function thresholdText({ reading, lessThan }: Asked): string {
  if (lessThan === null) return "";
  return numberText(lessThan, reading === "distance_mm" ? MM_DECIMALS : SECONDS_DECIMALS);
}

/** The question as an expression that is true when the wanted answer is given. */
export function questionCode(question: Question, { not }: QuestionDialect): string {
  const asked = askedOf(question);
  const { reading, sensor, wanted } = asked;
  const call = `${reading}(${sensor ?? ""})`;
  if (reading === "balls_noted") return `${call} ${wanted === "yes" ? "> 0" : "== 0"}`;
  if (asked.lessThan !== null) return `${call} ${wanted === "yes" ? "<" : ">="} ${thresholdText(asked)}`;
  return wanted === "yes" ? call : `${not}${call}`;
}
