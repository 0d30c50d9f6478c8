import { topic } from "../language.ts";

/** Titles, axes and descriptions of the charts. */
export const chartTexts = topic("chart", {
  fixes: "What each change would bring",
  noFixes: "No change was tried.",
  fixAxis: "more or fewer of 100 runs with every ball home",
  verdict: { helps: "helps", harms: "harms", open: "too close to call" },
  losses: "Why balls were lost",
  noLoss: (runs: number) => `No ball was lost in ${runs} runs.`,
  lossesOf: (runs: number, list: string) => `Balls lost in ${runs} runs: ${list}.`,
  lossesARun: (balls: number, each: string) => `${balls} (${each} a run)`,
  time: "How soon the balls are home",
  timeAxis: "seconds since the start",
  runsAxis: "runs of 100",
  allBalls: (balls: number) => (balls === 1 ? "the ball" : `all ${balls}`),
  someBalls: (balls: number) => `${balls} or more`,
  stopAt: (seconds: string) => `stop at ${seconds} s`,
  homeIn: (balls: number, share: string) => `at least ${balls} home in ${share} of 100 runs`,
  timeInWords: (seconds: string, list: string, runs: number, band: string) =>
    `By ${seconds} seconds: ${list}. From ${runs} runs; the shares are known to within ${band} of 100.`,
  bestStop: (seconds: string) => ` The best moment to stop is at ${seconds} seconds.`,
  noTrades: "Nothing is known yet.",
  trades: (list: string) => `From cheap to dear: ${list}.`,
});
