import { topic } from "../language.ts";

/** Rates, their ranges, and what is counted. */
export const rateTexts = topic("rate", {
  points: (value: string, most: number) => `${value} of ${most} points`,
  ballsBy: (share: string, seconds: number | null) => `${share} of 100 balls by ${seconds} s`,
  runs: (share: string) => `${share} of 100 runs`,
  likely: (low: string | number, high: string | number) => `likely between ${low} and ${high}`,
  meanBalls: (mean: string, balls: number) => `${mean} of ${balls} ${balls === 1 ? "ball" : "balls"}`,
  titles: {
    everyBall: "every ball home in",
    points: "points",
    homeBy: (seconds: number | null) => `home by ${seconds} s`,
  },
});
