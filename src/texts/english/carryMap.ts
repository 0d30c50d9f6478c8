import { topic } from "../language.ts";

/** The map of where a ball in the pusher can be lost on the way. */
export const carryMapTexts = topic("carryMap", {
  layer: "Where a ball in the pusher can be lost",
  decides: (run: number) =>
    `Where a ball in the pusher can be lost: this routine drives another way in every run, so there is no one map of it. For run ${run} it is written in Practice, below the steps for the coder.`,
  brakes: "bar across the way: here the robot brakes, and the ball can run on",
  turns: "open diamond: a ball can slide out in this turn; slower keeps it",
  never: "full diamond: this pusher keeps no ball in this turn, at any speed",
  nowhere: "A ball in the pusher stays there in every turn and whenever the robot stops.",
  /** Of a place on the drawing. */
  nothingHere: "no ball is lost here by turning or braking.",
  brakesAt: (move: number) => `move ${move}, when it stops`,
  turnsAt: (move: number) => `move ${move}, in the turn`,
  limit: (where: string, reached: string, safe: string) =>
    `${where}: reaches ${reached}, a ball stays at ${safe} or less`,
  noLimit: (where: string, reached: string) =>
    `${where}: reaches ${reached}, this pusher keeps no ball in it at any speed`,
  degPerS: (value: number) => `${value} deg/s`,
});
