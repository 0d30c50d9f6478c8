import { topic } from "../language.ts";

/** What a change of zone or robot does to the best routine, under the drawing. */
export const bestNowTexts = topic("bestNow", {
  title: "What a change does",
  best: "Best routine",
  soFar: "Best so far",
  before: "Before the change",
  trying: "running it as it is now…",
  none: "no routine works here",
  range: (low: number | string, high: number | string) => `(${low} to ${high})`,
  from: (runs: number) => `· from ${runs} ${runs === 1 ? "run" : "runs"}`,
  about: "these numbers move",
  why: "After every change the best routines of before are run at once on your zone and robot as they are now, then hundreds of others. The bar is the range in which the true value lies 19 times out of 20; it narrows while runs come in. As long as routines are still being chosen, the best so far has been a little lucky: its number often falls until fresh runs settle it. Bars that do not overlap say that the change matters; where they overlap, compare both on the same runs, in the step Routines.",
  spoken: (now: string, before: string) => `After the change: ${now}. Before: ${before}.`,
  spokenAlone: (now: string) => `Best routine: ${now}.`,
});
