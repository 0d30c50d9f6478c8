import { CHUNK_TRIALS } from "../../jobs/chunks.ts";
import type { TrialBatch } from "../../trial/outcome.ts";

/** failed: at least one ball not delivered. worked: all delivered. */
export type WantedRun = "failed" | "worked";

/** What a search knows of one routine's runs, from its batches; grows by asking for more. */
export interface RunSource {
  /** Already known, any order. */
  readonly batches: readonly TrialBatch[];
  readonly balls: number;
  readonly more: (from: number, to: number) => Promise<TrialBatch>;
}

/**
 * The first run after `after` that went as wanted, looking at no more than `limit` runs; where there is none, one from
 * the beginning up to `after`.
 *
 * @param onLook told how many runs have been looked at
 * @returns the run's index, or null
 */
export async function findRun(
  source: RunSource,
  wanted: WantedRun,
  after: number,
  limit: number,
  onLook: (looked: number) => void,
): Promise<number | null> {
  const known = [...source.batches];
  let looked = 0;
  const scan = async (from: number, to: number): Promise<number | null> => {
    for (let start = from; start < to; ) {
      const batch =
        known.find((each) => each.from <= start && start < each.to) ??
        (await source.more(start, Math.min(to, start + CHUNK_TRIALS)));
      const end = Math.min(to, batch.to);
      for (let index = start; index < end; index++) {
        const all = batch.delivered[index - batch.from] === source.balls;
        if (all === (wanted === "worked")) return index;
      }
      if (!known.includes(batch)) known.push(batch);
      looked += end - start;
      start = end;
      onLook(looked);
    }
    return null;
  };
  return (await scan(after + 1, after + 1 + limit)) ?? (await scan(0, after + 1));
}
