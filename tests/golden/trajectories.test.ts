import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { describe, expect, inject, it } from "vitest";
import { nodeThreads } from "../../src/jobs/nodeThreads.ts";
import { Pool } from "../../src/jobs/pool.ts";
import { stressTest } from "../../src/jobs/stressTest.ts";
import { GOLDEN_TRIALS, goldenRuns } from "../support/goldenRuns.ts";

/** The built worker, as the command uses it. */
const worker = pathToFileURL(join(inject("nodeBundle"), "worker.js"));

describe("trajectory hashes", () => {
  it("are the same for 1, 2 and 4 workers, and as they were", async () => {
    const found: Record<string, string> = {};
    const runs = goldenRuns();
    for (const workers of [1, 2, 4]) {
      const pool = new Pool(nodeThreads(worker), workers);
      for (const { key, project, routine, seed } of runs) {
        const { summary } = await stressTest(pool, project, routine, { seed, trials: GOLDEN_TRIALS });
        found[key] ??= summary.hash;
        expect(summary.hash, `${key}, ${workers} workers`).toBe(found[key]);
      }
      pool.close();
    }
    // Browsers must come to the same (tests/browser/determinism). Whoever changes the engine on purpose writes them anew: npx vitest run --project golden -u
    await expect(`${JSON.stringify(found, null, 2)}\n`).toMatchFileSnapshot("hashes.json");
  });
});
