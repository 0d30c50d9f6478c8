import { topic } from "../language.ts";

/** Where a ball in the pusher can be lost. */
export const carryTexts = topic("carry", {
  limits: "Where a ball in the pusher can be lost, and what would keep it",
  limitsInRun: (run: number) =>
    `Where a ball in the pusher could be lost in run ${run}, and what would keep it`,
  staysEverywhere: "A ball in the pusher stays there in every turn and whenever the robot stops.",
  canBeLost: "A ball in the pusher can be lost:",
  whenStopping: "when it stops",
  inTurn: "in the turn",
  keptAt: (speed: string) => `kept at ${speed} or less`,
  neverKept: "this pusher keeps none in a turn",
  line: (noun: string, number: number, when: string, reached: string, kept: string) =>
    `  ${noun} ${number}, ${when}: reaches ${reached}, ${kept}`,
  nouns: {
    step: "step",
    move: "move",
  },
});
