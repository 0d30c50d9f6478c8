import { topic } from "../language.ts";

/** What practice says about the model. */
export const verdictTexts = topic("verdict", {
  promised: (share: string, successes: number, attempts: number) =>
    `The model promised ${share} of 100, you got ${successes} of ${attempts}`,
  tooFew: (got: string) => `${got}: too few runs to tell anything; make at least five.`,
  fits: (got: string) => `${got}: that fits. It does not prove the model, but nothing speaks against it.`,
  worse: (got: string, chance: string) =>
    `${got}: worse than promised, by more than chance explains (${chance}).`,
  better: (got: string, chance: string) =>
    `${got}: better than promised, by more than chance explains (${chance}).`,
  rare: "less than 1 in 1000",
  chance: (percent: string) => `${percent} in 100`,
  updated: (share: string, range: string) => `Success rate after these runs: ${share} of 100, ${range}.`,
  day: (day: string, successes: number, runs: number) => `${day}: ${successes} of ${runs}`,
  daysDiffer: (counts: string, chance: string, spread: string, low: string, high: string) =>
    `Your days differ by more than chance explains (${chance}): ${counts}. From day to day the rate is about ±${spread} of 100 off (possible: ${low} to ${high}), so runs of one day say little about the next, and the chance above, which takes all days for alike, is too small: look for what was different, such as battery, floor or who laid the balls.`,
  daysAlike: (counts: string, chance: string, high: string) =>
    `Your days differ no more than chance explains (${chance}): ${counts}. So few runs leave up to ±${high} of 100 from day to day possible.`,
  brier: (score: string, expected: string) =>
    `Brier score ${score} (0 is perfect; ${expected} is what right promises would get).`,
  possible: (low: string, high: string, orLess: boolean, orMore: boolean) =>
    ` (possible: ${low}${orLess ? " or less" : ""} to ${high}${orMore ? " or more" : ""})`,
  times: (factor: string) => `${factor} times`,
  drift: (straights: string, turns: string) =>
    `These runs are explained best by straights that drift ${straights} and turns that drift ${turns} as much as in the project.`,
  blame: {
    straights: "Turns alone would not explain them: measure the straights again.",
    turns: "Straights alone would not explain them: measure the turns again.",
    both: "Neither straights nor turns alone would explain them: measure both again.",
    either:
      "Either alone would explain them, too: runs cannot tell straights from turns here, the tape measure can.",
    none: "No other drift explains these runs clearly better than the project’s: look for another reason, such as the balls, the floor, or how the robot is placed at the start.",
  },
});
