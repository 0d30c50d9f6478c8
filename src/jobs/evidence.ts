import type { Project } from "../model/project.ts";
import type { Routine } from "../model/routine.ts";
import { nominalCourse } from "../motion/course.ts";
import type { Rate } from "../num/interval.ts";
import type { StressSummary } from "../score/stress.ts";
import { catalogueInWorkers, type Workers } from "./catalogue.ts";
import type { Failings } from "./failings.ts";
import type { JobOptions } from "./jobOptions.ts";
import { stressTest } from "./stressTest.ts";
import { findWeakness, type Weakness } from "./weakness.ts";

/** Another routine on the same placements. */
export interface Alternative {
  readonly label: string;
  readonly successRate: Rate;
  readonly durationS: number;
}

/** All that is to be known of a routine before it is shown to a jury. */
export interface Evidence {
  readonly summary: StressSummary;
  /** One routine of each other pattern, best first. */
  readonly alternatives: readonly Alternative[];
  readonly weakness: Weakness;
  readonly failings: Failings;
}

export interface EvidenceOptions extends JobOptions {
  readonly seed: number;
  readonly trials: number;
  readonly onProgress?: ((doneFrac: number, what: string) => void) | undefined;
}

/** Share of the work that the other patterns are. */
const ALTERNATIVES_FRAC = 0.3;

/** Gathers it in the workers, all on the same placements; null when stopped. Rejects when a trial cannot be run. */
export async function gatherEvidence(
  workers: Workers,
  project: Project,
  routine: Routine,
  { onProgress, ...options }: EvidenceOptions,
): Promise<Evidence | null> {
  const { summary, status } = await stressTest(workers, project, routine, options);
  if (status === "stopped") return null;
  const alternatives = await alternativesTo(workers, project, routine, options, (frac) =>
    onProgress?.(ALTERNATIVES_FRAC * frac, "other patterns on the same placements"),
  );
  if (alternatives === null) return null;
  const weakness = await findWeakness(workers, project, routine, {
    ...options,
    onProgress: (frac, what) => onProgress?.(ALTERNATIVES_FRAC + (1 - ALTERNATIVES_FRAC) * frac, what),
  });
  const { failings } = weakness;
  return weakness.status === "stopped" || failings === null
    ? null
    : { summary, alternatives, weakness, failings };
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
  const others = routines.filter(({ pattern, program }) => {
    if (program !== undefined || seen.has(pattern)) return false;
    seen.add(pattern);
    return true;
  });
  const found: Alternative[] = [];
  for (const [i, other] of others.entries()) {
    const { summary, status } = await stressTest(workers, project, other, options);
    if (status === "stopped") return null;
    const { durationS } = nominalCourse(project, other.moves);
    found.push({ label: other.label, successRate: summary.successRate, durationS });
    onProgress((i + 1) / others.length);
  }
  return found.sort((a, b) => b.successRate.value - a.successRate.value);
}
