import { topic } from "../language.ts";

/** The last lines of a poster. */
export const posterTexts = topic("poster", {
  moves: (seconds: string, moves: number) => `${seconds} s for ${moves} moves`,
  decides: (run: number) => `decides by its sensors; its way in run ${run}`,
});
