import type { Project } from "../model/project.ts";
import type { Routine } from "../model/routine.ts";
import { routineDurationS } from "../motion/duration.ts";
import type { Rate } from "../num/interval.ts";
import type { StressSummary } from "../score/stress.ts";
import type { Recording } from "../trial/recording.ts";
import { catalogueInWorkers, type Workers } from "./catalogue.ts";
import type { Failings } from "./failings.ts";
import { type HardCase, hardCaseOf } from "./hardCase.ts";
import type { JobOptions } from "./jobOptions.ts";
import { stressTest } from "./stressTest.ts";
import { findWeakness, type Weakness } from "./weakness.ts";

/** Another routine on the same placements. */
export interface Alternative {
  readonly label: string;
  readonly successRate: Rate;
  readonly durationS: number;
  /** By its sensors, as it goes: the duration is a mean. */
  readonly decides: boolean;
}

/** All that is to be known of a routine before it is shown to a jury. */
export interface Evidence {
  readonly summary: StressSummary;
  /** One routine of each other pattern, best first. */
  readonly alternatives: readonly Alternative[];
  readonly weakness: Weakness;
  readonly failings: Failings;
  /** What happens on the hardest placement; null where the layout is fixed. */
  readonly hardest: HardCase | null;
  /** A run of a routine that decides as it goes; null for a list of moves, which goes the same way in every run. */
  readonly example: ExampleWay | null;
}

/** The first run that brings every ball home, or as many as any. */
export interface ExampleWay {
  readonly index: number;
  readonly home: number;
  readonly recording: Recording;
}

export interface EvidenceOptions extends JobOptions {
  readonly seed: number;
  readonly trials: number;
  readonly onProgress?: ((doneFrac: number, what: string) => void) | undefined;
}

/** Shares of the work that the routine's own runs are, and those of the other patterns. */
const OWN_FRAC = 0.03;
const ALTERNATIVES_FRAC = 0.3;

/** Gathers it in the workers, all on the same placements; null when stopped. Rejects when a trial cannot be run. */
export async function gatherEvidence(
  workers: Workers,
  project: Project,
  routine: Routine,
  { onProgress, ...options }: EvidenceOptions,
): Promise<Evidence | null> {
  const { summary, status } = await stressTest(workers, project, routine, {
    ...options,
    onProgress: (done) => onProgress?.((OWN_FRAC * done) / options.trials, "the routine"),
  });
  if (status === "stopped") return null;
  const alternatives = await alternativesTo(workers, project, routine, options, (frac) =>
    onProgress?.(OWN_FRAC + (ALTERNATIVES_FRAC - OWN_FRAC) * frac, "other patterns on the same placements"),
  );
  if (alternatives === null) return null;
  const weakness = await findWeakness(workers, project, routine, {
    ...options,
    onProgress: (frac, what) => onProgress?.(ALTERNATIVES_FRAC + (1 - ALTERNATIVES_FRAC) * frac, what),
  });
  const { failings } = weakness;
  if (weakness.status === "stopped" || failings === null) return null;
  const run = { signal: options.signal, gate: options.gate };
  const [worst] = weakness.beatenDrifting;
  try {
    const hardest = worst === undefined ? null : await hardCaseOf(workers, project, routine, worst, run);
    const example =
      routine.program === undefined ? null : await exampleOf(workers, project, routine, summary, options);
    return { summary, alternatives, weakness, failings, hardest, example };
  } catch (reason) {
    if (options.signal?.aborted) return null;
    throw reason;
  }
}

async function exampleOf(
  workers: Workers,
  project: Project,
  routine: Routine,
  { indices, delivered }: StressSummary,
  { seed, signal, gate }: EvidenceOptions,
): Promise<ExampleWay> {
  const at = Math.max(0, delivered.indexOf(Math.max(...delivered)));
  const index = indices[at] ?? 0;
  const { recording } = await workers.run(
    project,
    routine,
    { kind: "record", seed, index },
    { signal, gate },
  );
  return { index, home: delivered[at] ?? 0, recording };
}

async function alternativesTo(
  workers: Workers,
  project: Project,
  routine: Routine,
  options: Omit<EvidenceOptions, "onProgress">,
  onProgress: (doneFrac: number) => void,
): Promise<readonly Alternative[] | null> {
  const seen = new Set([routine.pattern]);
  const catalogue = await catalogueInWorkers(workers, project, options).catch((reason: unknown) => {
    if (options.signal?.aborted) return null;
    throw reason;
  });
  if (catalogue === null) return null;
  const { routines } = catalogue;
  const others = routines.filter(({ pattern }) => {
    if (seen.has(pattern)) return false;
    seen.add(pattern);
    return true;
  });
  const found: Alternative[] = [];
  for (const [i, other] of others.entries()) {
    const { summary, status } = await stressTest(workers, project, other, options);
    if (status === "stopped") return null;
    const durationS = timeOf(project, other, summary);
    const decides = other.program !== undefined;
    found.push({ label: other.label, successRate: summary.successRate, durationS, decides });
    onProgress((i + 1) / others.length);
  }
  return found.sort((a, b) => b.successRate.value - a.successRate.value);
}

/** What a routine takes: of a list of moves their time, of one that decides as it goes the mean over its runs. */
export function timeOf(
  { robot }: Project,
  { moves, program }: Routine,
  { meanTimeS }: StressSummary,
): number {
  return program === undefined ? routineDurationS(robot.drive, moves) : meanTimeS;
}
