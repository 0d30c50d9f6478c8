import { Moments } from "../num/moments.ts";
import type { RandomStream } from "../num/stream.ts";

export interface CrossEntropyOptions {
  readonly dimensions: number;
  /** Points per generation. */
  readonly population: number;
  readonly generations: number;
  /** Spread of the first generation around a point drawn at random, so that restarts begin in different places; default: all of the cube. */
  readonly startSd?: number;
  /** Points that are allowed; a draw that is not is drawn again. Default: all of the unit cube. */
  readonly accepts?: (point: readonly number[]) => boolean;
}

export interface Found {
  readonly point: readonly number[];
  readonly score: number;
  readonly evaluations: number;
}

/** Points to be scored go out, their scores come back in the same order. */
export type Scoring<T> = Generator<readonly (readonly number[])[], T, ArrayLike<number>>;

/** Share of a generation that the next one is drawn around. */
const ELITE_FRAC = 0.15;
/** How far mean and spread follow the elite each time. */
const FOLLOW = 0.7;
/** Spread never falls below this share of the cube: enough to step over a ledge in the score. */
const LEAST_SD = 0.01;
/** Draws for one point before it is taken from the whole cube again, and before its generation goes without it. */
const MOST_DRAWS = 40;
const CUT_SD = 4;

/**
 * Largest score on the unit cube by the cross-entropy method: draw points, keep the best, draw the next ones from a normal
 * distribution fitted to those; the first ones evenly. One run finds one hill: restart it with other streams. The points of a
 * generation go out, their scores come back in the same order; whoever runs the generator does the scoring.
 *
 * @returns the best point of all, or null if no draw was allowed
 * Source: Rubinstein, Methodology and Computing in Applied Probability 1 (1999) 127–190; de Boer et al., Annals of Operations
 * Research 134 (2005) 19–67 (smoothed updating). Checked in tests/unit/search/crossEntropy.
 */
export function* crossEntropy(stream: RandomStream, options: CrossEntropyOptions): Scoring<Found | null> {
  const { dimensions, population, generations } = options;
  let hill = startOf(stream, options);
  let best: Found | null = null;
  let evaluations = 0;
  for (let generation = 0; generation < generations; generation++) {
    const draws = Array.from({ length: population }, () => drawPoint(stream, options, hill));
    const points = draws.filter((point) => point !== null);
    if (points.length === 0) continue;
    const scores = yield points;
    evaluations += points.length;
    // The order of drawing settles ties, so that the run is the same everywhere.
    const scored = points
      .map((point, i) => ({ point, score: scores[i] ?? Number.NEGATIVE_INFINITY }))
      .sort((a, b) => b.score - a.score);
    const first = scored[0];
    if (first === undefined) continue;
    if (best === null || first.score > best.score) best = { ...first, evaluations: 0 };
    const elite = scored.slice(0, Math.max(2, Math.ceil(ELITE_FRAC * scored.length)));
    hill = Array.from({ length: dimensions }, (_, d) =>
      follow(
        hill?.[d],
        elite.map(({ point }) => point[d] ?? 0),
      ),
    );
  }
  return best === null ? null : { ...best, evaluations };
}

function startOf(stream: RandomStream, options: CrossEntropyOptions): readonly Hill[] | null {
  const { startSd } = options;
  if (startSd === undefined) return null;
  const centre = drawPoint(stream, options, null);
  return centre?.map((mean) => ({ mean, sd: startSd })) ?? null;
}

interface Hill {
  readonly mean: number;
  readonly sd: number;
}

function follow(before: Hill | undefined, values: readonly number[]): Hill {
  const moments = new Moments();
  for (const value of values) moments.add(value);
  const sd = Math.sqrt(moments.variance);
  if (before === undefined) return { mean: moments.mean, sd: Math.max(LEAST_SD, sd) };
  return {
    mean: FOLLOW * moments.mean + (1 - FOLLOW) * before.mean,
    sd: Math.max(LEAST_SD, FOLLOW * sd + (1 - FOLLOW) * before.sd),
  };
}

function drawPoint(
  stream: RandomStream,
  { dimensions, accepts }: CrossEntropyOptions,
  hill: readonly Hill[] | null,
): readonly number[] | null {
  for (let draw = 0; draw < 2 * MOST_DRAWS; draw++) {
    const point = Array.from({ length: dimensions }, (_, d) => {
      const around = draw < MOST_DRAWS ? hill?.[d] : undefined;
      if (around === undefined) return stream.uniform();
      return Math.min(1, Math.max(0, around.mean + around.sd * stream.normalCut(CUT_SD)));
    });
    if (accepts?.(point) ?? true) return point;
  }
  return null;
}
