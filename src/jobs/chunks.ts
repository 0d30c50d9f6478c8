/**
 * Trials a message asks for: 20–50 ms of a warm worker, so that messages cost nothing beside them, progress moves and
 * cancelling is quick. The same for any number of workers.
 */
export const CHUNK_TRIALS = 100;

export interface Chunk {
  readonly from: number;
  readonly to: number;
}

/** Trials 0 to `trials`, cut into pieces; the last one may be smaller. */
export function chunksOf(trials: number, most = CHUNK_TRIALS): readonly Chunk[] {
  return Array.from({ length: Math.ceil(trials / most) }, (_, i) => ({
    from: i * most,
    to: Math.min(trials, (i + 1) * most),
  }));
}

/**
 * The batches that follow one another from trial 0 on, in order; what lies beyond a gap is left out. So a job that was
 * stopped gives exactly what the same job with fewer trials would have given.
 */
export function unbroken<T extends Chunk>(batches: readonly T[]): readonly T[] {
  const ordered = [...batches].sort((a, b) => a.from - b.from);
  const gap = ordered.findIndex((batch, i) => batch.from !== (i === 0 ? 0 : ordered[i - 1]?.to));
  return gap < 0 ? ordered : ordered.slice(0, gap);
}
