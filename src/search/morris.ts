import { Moments } from "../num/moments.ts";
import { RandomStream } from "../num/stream.ts";

/** Points of a screening design: `repeats` paths of d + 1 points, each a step in one more dimension than the one before. */
export interface MorrisDesign {
  readonly dimensions: number;
  readonly repeats: number;
  /** In the unit cube. */
  readonly points: readonly (readonly number[])[];
}

/** How much one input moves the result. */
export interface ElementaryEffect {
  /** Mean size of the effects of a step across the whole range: large for an input that matters in any way. */
  readonly meanSize: number;
  /** Mean effect, with its sign. */
  readonly mean: number;
  /** Spread of the effects: large where the input acts unevenly, or together with others. */
  readonly sd: number;
}

const LEVELS = 4;
const STEP = LEVELS / (2 * (LEVELS - 1));

/**
 * Random paths through a grid of four levels, each step 2/3 of a range.
 *
 * Source: Morris, Technometrics 33 (1991) 161–174; mean sizes instead of means: Campolongo, Cariboni and Saltelli, Environmental
 * Modelling & Software 22 (2007) 1509–1518. Checked in tests/published/sensitivity.
 */
export function morrisDesign(dimensions: number, repeats: number, seed: number): MorrisDesign {
  const stream = new RandomStream();
  const points: (readonly number[])[] = [];
  for (let repeat = 0; repeat < repeats; repeat++) {
    stream.open(seed, repeat, MORRIS_STREAM);
    // From the lower half a step leads up, from the upper half down.
    const point = Array.from({ length: dimensions }, () => stream.below(LEVELS) / (LEVELS - 1));
    points.push([...point]);
    for (const d of shuffled(dimensions, stream)) {
      const value = point[d] ?? 0;
      point[d] = value < 0.5 ? value + STEP : value - STEP;
      points.push([...point]);
    }
  }
  return { dimensions, repeats, points };
}

const MORRIS_STREAM = 3_000_000_100;

function shuffled(count: number, stream: RandomStream): readonly number[] {
  const order = Array.from({ length: count }, (_, i) => i);
  for (let i = count - 1; i > 0; i--) {
    const j = stream.below(i + 1);
    const kept = order[i] ?? 0;
    order[i] = order[j] ?? 0;
    order[j] = kept;
  }
  return order;
}

/** @param values result at each point of the design, in its order */
export function morrisEffects(design: MorrisDesign, values: readonly number[]): readonly ElementaryEffect[] {
  const { dimensions, repeats, points } = design;
  const effects = Array.from({ length: dimensions }, () => ({ signed: new Moments(), size: new Moments() }));
  for (let repeat = 0; repeat < repeats; repeat++) {
    const first = repeat * (dimensions + 1);
    for (let k = first; k < first + dimensions; k++) {
      const from = points[k] ?? [];
      const to = points[k + 1] ?? [];
      const d = to.findIndex((value, i) => value !== from[i]);
      const effect = ((values[k + 1] ?? 0) - (values[k] ?? 0)) / ((to[d] ?? 0) - (from[d] ?? 0));
      effects[d]?.signed.add(effect);
      effects[d]?.size.add(Math.abs(effect));
    }
  }
  return effects.map(({ signed, size }) => ({
    meanSize: size.mean,
    mean: signed.mean,
    sd: Math.sqrt(signed.variance),
  }));
}
