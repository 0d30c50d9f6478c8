import type { Project } from "../model/project.ts";
import type { Routine } from "../model/routine.ts";
import { type ElementaryEffect, morrisDesign, morrisEffects } from "../search/morris.ts";
import {
  type IndexEstimate,
  type VarianceShare,
  varianceDesign,
  varianceShares,
} from "../search/sobolIndices.ts";
import type { Workers } from "./catalogue.ts";
import type { JobOptions } from "./jobOptions.ts";

/** What the number of balls home depends on. */
export interface Dependence {
  /** Screening of all factors, strongest first; effects in balls home per run from end to end of a factor's range. */
  readonly screened: readonly {
    readonly id: string;
    readonly title: string;
    readonly effect: ElementaryEffect;
  }[];
  /** The strongest ones, with the share of the variance that each explains. Chance in the runs counts as acting together. */
  readonly shares: readonly { readonly id: string; readonly title: string; readonly share: VarianceShare }[];
  /** Runs at each point. */
  readonly trials: number;
}

export interface DependenceOptions extends JobOptions {
  readonly seed: number;
  readonly effort?: {
    readonly repeats: number;
    readonly rows: number;
    readonly kept: number;
    readonly trials: number;
  };
  readonly onProgress?: (doneFrac: number) => void;
}

/** With 16 rows the interval of a strong factor alone held in 81 of 100 cases only; see search/NOTES.md. */
export const USUAL_EFFORT = { repeats: 4, rows: 32, kept: 4, trials: 24 };
export const QUICK_EFFORT = { ...USUAL_EFFORT, rows: 16 };

/** Screens all factors first, since a split of the variance costs too much for all of them, then splits it among the strongest. */
export async function dependenceOn(
  workers: Workers,
  project: Project,
  routine: Routine,
  { seed, effort = USUAL_EFFORT, onProgress, ...run }: DependenceOptions,
): Promise<Dependence> {
  const factors = await workers.run(project, routine, { kind: "factors" }, run);
  const kept = Math.min(effort.kept, factors.length);
  const screening = morrisDesign(factors.length, effort.repeats, seed);
  const total = screening.points.length + effort.rows * (kept + 2);
  let done = 0;
  const ask = (ids: readonly string[], points: readonly (readonly number[])[]): Promise<readonly number[]> =>
    Promise.all(
      points.map(async (point) => {
        const request = { factors: ids, point, seed, trials: effort.trials };
        const value = await workers.run(project, routine, { kind: "response", request }, run);
        onProgress?.(++done / total);
        return value;
      }),
    );
  const screened = morrisEffects(
    screening,
    await ask(
      factors.map(({ id }) => id),
      screening.points,
    ),
  )
    .flatMap((effect, i) => {
      const factor = factors[i];
      return factor === undefined ? [] : [{ ...factor, effect }];
    })
    .sort((a, b) => b.effect.meanSize - a.effect.meanSize);
  const strongest = screened.slice(0, kept);
  const design = varianceDesign(kept, effort.rows, seed);
  const ids = strongest.map(({ id }) => id);
  const values = await ask(ids, design.points);
  const shares = varianceShares(design, values, seed).flatMap((share, i) => {
    const factor = strongest[i];
    if (factor === undefined) return [];
    return [
      {
        id: factor.id,
        title: factor.title,
        share: { first: within(share.first), total: within(share.total) },
      },
    ];
  });
  return { screened, shares, trials: effort.trials };
}

/** Estimates of a share may fall below none and above all; the share itself cannot. */
function within({ value, low, high }: IndexEstimate): IndexEstimate {
  const cut = (share: number): number => Math.min(1, Math.max(0, share));
  return { value: cut(value), low: cut(low), high: cut(high) };
}
