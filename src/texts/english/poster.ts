import { topic } from "../language.ts";

/** What stands on a poster. */
export const posterTexts = topic("poster", {
  moves: (seconds: string, moves: number) => `${seconds} s for ${moves} moves`,
  decides: (run: number) => `decides by its sensors; its way in run ${run}`,
  label: (project: string, rate: string) => `${project}: ${rate} with every ball home`,
  rate: (rate: string) => rate,
  bring: (range: string) => `bring every ball home (${range})`,
  scene: (balls: number, size: string, way: string) =>
    `${balls} ${balls === 1 ? "ball" : "balls"}, ${size}, ${way}`,
  from: (runs: number) =>
    `From ${runs} simulated runs, the balls elsewhere each time; a model leaves things out.`,
});
