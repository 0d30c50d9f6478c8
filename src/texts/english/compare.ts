import { topic } from "../language.ts";

/** Comparing two routines or two robots, on the page. */
export const compareTexts = topic("compare", {
  title: "Compare it",
  about: "this says which is better",
  why: "Both run on the same placements with the same luck, so only the runs count in which one brings every ball home and the other does not. The verdict at the end is an exact test, twice as strict each time you go on: equal ones are told apart in at most 5 of 100 comparisons, however often that is. What is said on the way has a stricter test, which stays true however often you look.",
  with: "With",
  choose: "choose what",
  anotherRoutine: "another routine, here",
  anotherProject: "the same routine, in another project",
  before: "This project before its last change",
  go: "Compare",
  goOn: (runs: string) => `Compare ${runs} runs`,
  working: "Comparing",
  stop: "Stop comparing",
  fault: (words: string) => `This did not work: ${words}`,
  uneven: (here: number, there: number) =>
    `Here are ${here} balls and there ${there}: runs can only be compared with equally many.`,
  noRoom: "There is no room for this routine there.",
  gone: "This project can no longer be read.",
  counts: (runs: string, both: number, first: number, second: number, neither: number) =>
    `In ${runs} runs of each every ball came home: in both ${both} times, only in this one ${first}, only in the other ${second}, in neither ${neither}.`,
  difference: (words: string) => `This one less the other: ${words}.`,
  tooClose: (share: string) =>
    `Too close to call: equal ones would differ this much in ${share} of 100 such comparisons.`,
  better: (share: string) =>
    `This one is better: equal ones would differ this much in ${share} of 100 such comparisons.`,
  worse: (share: string) =>
    `The other is better: equal ones would differ this much in ${share} of 100 such comparisons.`,
  lessThan: (share: string) => `less than ${share}`,
  settledThis: "Settled, however often you look: this one is better.",
  settledOther: "Settled, however often you look: the other is better.",
  unsettled: "Not settled yet.",
  more: (runs: string) =>
    `If the difference is as seen, about ${runs} more runs of each would settle it, nine times in ten.`,
  noMore: "No difference was seen; how many more runs would find one cannot be said.",
  done: "Compared.",
});
