import { topic } from "../language.ts";

/** Runs: choosing, watching, what happened in one. */
export const watchTexts = topic("watch", {
  manyRuns: "Many runs at once",
  runsAtOnce: "Runs seen at once",
  onlyThis: "only this one",
  thisAnd: (count: number) => `this one and ${count} faint ones`,
  ghosts: (count: number, worked: number) =>
    `${count} faint runs; ${worked} of them bring every ball home. Press Play to let all go.`,
  whatShows: "What the drawing shows",
  follow: "Follow the robot from nearer",
  shade: "Shade the floor its pusher has passed over",
  marks: "On drawing and time bar:",
  markJam: "a jam or a stop,",
  markLoss: "a ball that is lost.",
  placement: "Placement of the balls",
  run: "Run",
  ofSeed: (seed: number) => `of seed ${seed}`,
  numbersAbout: "runs have numbers",
  numbersWhy:
    "Each number stands for one placement of the balls and one set of small errors; the same number gives the same run on every computer, so anyone can replay it.",
  previous: "Previous placement",
  next: "Next placement",
  showFailed: "Show me one that failed",
  showWorked: "One that worked",
  goOnByItself: "Go on to the next by itself",
  layAgain: "Lay them by the rule again",
  dragHint: "At the start of a run the balls can be dragged on the drawing.",
  lookedAt: "Runs looked at",
  stopLooking: "Stop looking",
  deliveredAt: (time: string) => `delivered at ${time}`,
  pushedNotHome: "pushed, not home yet",
  notTouched: "not touched yet",
  whatHappens: "What happens in this run",
  works: "This run works",
  fails: "This run fails",
  ball: (number: number) => `Ball ${number}`,
  secondBySecond: (count: number) => `Second by second (${count} ${count === 1 ? "event" : "events"})`,
  looking: {
    failed: (looked: number) => `Looking for a run that failed: ${looked} looked at.`,
    worked: (looked: number) => `Looking for a run that worked: ${looked} looked at.`,
  },
});
