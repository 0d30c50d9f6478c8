import { nodeThreads } from "../jobs/nodeThreads.ts";
import { Pool } from "../jobs/pool.ts";

/** Runs work with a pool of threads, and ends them whatever happens. */
export async function withPool<T>(workers: number, work: (pool: Pool) => Promise<T>): Promise<T> {
  // The bundle puts the worker beside the command: see build.mjs.
  const pool = new Pool(nodeThreads(new URL("./worker.js", import.meta.url)), workers);
  try {
    return await work(pool);
  } finally {
    pool.close();
  }
}
