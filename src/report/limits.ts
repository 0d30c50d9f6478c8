import { limitTexts } from "../texts/english/limit.ts";
/** Something the model does not do, and which results depend on it. */
export interface Limit {
  readonly leftOut: string;
  /** What to trust less because of it. */
  readonly matters: string;
}

/** In the order in which they are told. */
const LEFT_OUT = [
  "spin",
  "grip",
  "jam",
  "rub",
  "posts",
  "climb",
  "floor",
  "battery",
  "drift",
  "sensors",
  "guesses",
] as const;

/** Everything known to be left out; the README prints the same list. */
export function limits(): readonly Limit[] {
  return LEFT_OUT.map((name) => limitTexts[name]);
}

/** How to read the results in spite of it. */
export function limitsAdvice(): string {
  return limitTexts.advice;
}
