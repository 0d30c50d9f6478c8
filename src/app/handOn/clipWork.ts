import type { Project } from "../../model/project.ts";
import type { Routine } from "../../model/routine.ts";
import { type Rate, wilson } from "../../num/interval.ts";
import type { Palette } from "../../view/palette.ts";
import type { Workers } from "../state/workers.ts";
import type { Clip } from "./clip.ts";
import { clipCaptions } from "./clipCaptions.ts";

export interface ClipWish {
  readonly project: Project;
  readonly routine: Routine;
  readonly seed: number;
  /** The run on show, or how many runs from run 0 on. */
  readonly shown: { readonly run: number } | { readonly runs: number };
  /** As the ranking has it; null: not run yet. */
  readonly rate: Rate | null;
  readonly palette: Palette;
}

/** Seconds of the runs in one second of the clip: of one run, one wants to see what happens; of many, how it ends. */
const SPEED = { one: 4, many: 8 } as const;
/** Share of the work that running the runs is. */
const RUNS_FRAC = 0.2;
/** Runs for the rate where the ranking has fewer. */
const RATE_RUNS = 300;

/** Runs the runs in the workers, draws and packs them; null when stopped, or rejects as cancelled jobs do. */
export async function makeClip(
  workers: Workers,
  { project, routine, seed, shown, rate, palette }: ClipWish,
  signal: AbortSignal,
  onProgress: (doneFrac: number) => void,
): Promise<Clip | null> {
  const indexes = "run" in shown ? [shown.run] : Array.from({ length: shown.runs }, (_, index) => index);
  let done = 0;
  const runs = await Promise.all(
    indexes.map(async (index) => {
      const run = await workers.run(project, routine, { kind: "record", seed, index }, { signal });
      onProgress((RUNS_FRAC * ++done) / indexes.length);
      return run;
    }),
  );
  const speed = "run" in shown ? SPEED.one : SPEED.many;
  const isKnown = rate !== null && (rate.trials >= RATE_RUNS || "runs" in shown);
  const known = isKnown ? rate : await rateOf(workers, project, routine, seed, signal);
  const { writeClip } = await import("./clip.ts");
  return writeClip(
    {
      project,
      runs: runs.map(({ recording }) => recording),
      palette,
      captions: clipCaptions({ routine, seed, runs, speed, rate: known }),
    },
    { speed, signal, onProgress: (frac) => onProgress(RUNS_FRAC + (1 - RUNS_FRAC) * frac) },
  );
}

async function rateOf(
  workers: Workers,
  project: Project,
  routine: Routine,
  seed: number,
  signal: AbortSignal,
): Promise<Rate> {
  const task = { kind: "stress", seed, from: 0, to: RATE_RUNS } as const;
  const { delivered } = await workers.run(project, routine, task, { signal });
  const balls = project.balls.reduce((sum, { count }) => sum + count, 0);
  return wilson([...delivered].filter((home) => home === balls).length, RATE_RUNS);
}
