import { topic } from "../language.ts";

/** What a settled race says of itself. */
export const raceTexts = topic("race", {
  dropped: (count: number, most: number) =>
    `${count} ${count === 1 ? "routine was" : "routines were"} dropped early; at most ${most} of 100 searches drop the best.`,
  aside: (count: number) =>
    `${count} ${count === 1 ? "routine was" : "routines were"} set aside after fewer runs, for want of time: more time would follow more of them.`,
  tied: (count: number) =>
    `${count} routines are too close to call; the one to take comes first, then the simplest.`,
  clear: "The best is better than every other one, on the same placements.",
  alsoTooClose: ", too close to call",
  pair: (sensing: string, blind: string, gain: string) =>
    `the best routine that senses (${sensing}) against the best blind one (${blind}): ${gain}`,
  against: (first: string, second: string) => `${first} against ${second}`,
  tooClose: (pair: string) => `Too close to call: ${pair}.`,
  pays: "Looking pays here",
  paysNot: "Looking does not pay here",
  losesMore: (isBlind: boolean, loss: string, loser: string, winner: string) =>
    `The ${isBlind ? "blind" : "sensing"} one loses more balls to “${loss}”: ${loser} of 100 against ${winner}.`,
  sensors: {
    none: "no sensor",
    all: "all of them",
    perfect: "everything known",
  },
});
