import { join } from "node:path";
import { EVERY_BALL } from "../search/objective.ts";
import { FLAGS } from "./flags.ts";
import { STOPPED } from "./interrupt.ts";
import { FINE, print } from "./output.ts";
import { packageDirectory } from "./packageDirectory.ts";
import { planCommand } from "./planCommand.ts";
import { logProgress, terminalProgress } from "./progress.ts";
import { serve } from "./serve.ts";

/** Always the same where it is free: a browser keeps what the page stored under its address. */
const PORT = 4632;

/** Of each routine, at most: a rough ranking soon, for the page goes on from there. */
const START_TRIALS = 100;

/** `npm start`: the ranking of the default project, then the page until Ctrl-C. @returns the exit code */
export async function startCommand(workers: number): Promise<number> {
  const progress = process.stderr.isTTY ? terminalProgress(process.stderr) : logProgress(process.stderr);
  const input = {
    project: null,
    trials: START_TRIALS,
    seconds: null,
    objective: EVERY_BALL,
    seed: FLAGS.seed.fallback,
    workers,
    json: false,
  };
  const code = await planCommand(input, progress);
  if (code === STOPPED) return code;
  const site = await serve(join(packageDirectory(), "dist", "app"), PORT);
  print(`\nWedgeward is at ${site.address} (Ctrl-C ends it)`);
  await new Promise<void>((resolve) =>
    process.once("SIGINT", () => resolve()).once("SIGTERM", () => resolve()),
  );
  await site.close();
  return FINE;
}
