import { topic } from "../language.ts";

/** Where and how far a routine can be trusted. */
export const weakTexts = topic("weak", {
  noMove: "in no move",
  afterLast: "after the last move",
  inMove: (number: number, words: string) => `in move ${number}: ${words}`,
  inLine: (number: number, words: string) => `in line ${number}: ${words}`,
  sure: (share: string, never: string, end: string) =>
    `Whatever the drift within those bounds, ${share} of 100 places are surely touched${never}.${end}`,
  never: (share: string) => ` and ${share} never`,
  promisedUntil: (move: number, why: string) => ` From move ${move} on nothing is promised: ${why}.`,
  sureOpen: (share: string, factor: string) =>
    `${share} of 100 places stay sure even with ${factor} times those errors.`,
  sureNone: (share: string) => `No drift at all may be left if ${share} of 100 places are to stay sure.`,
  sureWithin: (share: string, percent: string) =>
    `${share} of 100 places stay sure as long as the errors are at most ${percent} of those bounds.`,
  noStop: "No best moment to stop: no move ends in time, or the routine decides as it goes.",
  when: (move: number, moves: number, seconds: string) => `after move ${move} of ${moves}, at ${seconds} s`,
  stopAtEnd: (when: string) => `Best moment to stop and leave: ${when}, the end.`,
  stop: (when: string, seconds: string) =>
    `Best moment to stop and leave: ${when}; the ${seconds} s after it bring next to nothing.`,
  ends: {
    "may-hit": "there the robot may run into something",
    "may-not-reach": "there it may not reach the wall it is meant to reach",
    "slanting-stop": "there it is stopped at a slant, and how it ends up depends on the drift",
    "arms-swing": "there its arms swing, and the pusher becomes another one",
  },
});
