import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { describe, expect, inject, it } from "vitest";
import { nodeThreads } from "../../src/jobs/nodeThreads.ts";
import { Pool } from "../../src/jobs/pool.ts";
import { stressTest } from "../../src/jobs/stressTest.ts";
import type { Project } from "../../src/model/project.ts";
import type { Move, Routine } from "../../src/model/routine.ts";
import { shippedProject } from "../support/projectFiles.ts";

/** The built worker, as the command uses it. */
const worker = pathToFileURL(join(inject("nodeBundle"), "worker.js"));
const TRIALS = 250;
const SEEDS = [1, 9007199254740991];
const FIELDS = ["usual-zone", "tray-corner", "ramp-corner", "five-mixed-balls", "pillar-zone"];

/** Back and forth through the zone with every kind of move, good for nothing but meeting balls, walls and the wedge. */
function zigzag(project: Project): Routine {
  const { topSpeedMmPerS: speedMmPerS, turnRateRadPerS: rateRadPerS } = project.robot.drive;
  const overrunMm = project.settings.overrunMm;
  const leg = (side: number): Move[] => [
    { kind: "toWall", distanceMm: project.zone.heightMm - 250, overrunMm, speedMmPerS },
    { kind: "drive", distanceMm: -120, speedMmPerS },
    { kind: "turn", angleRad: 1.4 * side, rateRadPerS },
    { kind: "arc", distanceMm: 260, angleRad: -0.6 * side, speedMmPerS },
    { kind: "wait", durationS: 0.3 },
    { kind: "drive", distanceMm: 200, speedMmPerS: speedMmPerS / 2 },
    { kind: "turn", angleRad: 1.2 * side, rateRadPerS },
  ];
  return {
    id: "zigzag",
    pattern: "own",
    label: "zigzag",
    params: {},
    moves: [...leg(-1), ...leg(-1), ...leg(1), ...leg(-1), ...leg(1), ...leg(-1)],
  };
}

describe("trajectory hashes", () => {
  it("are the same for 1, 2 and 4 workers, and as they were", async () => {
    const found: Record<string, string> = {};
    for (const workers of [1, 2, 4]) {
      const pool = new Pool(nodeThreads(worker), workers);
      for (const field of FIELDS) {
        const project = shippedProject(`${field}.json`);
        for (const seed of SEEDS) {
          const { summary } = await stressTest(pool, project, zigzag(project), { seed, trials: TRIALS });
          const key = `${field}, seed ${seed}`;
          found[key] ??= summary.hash;
          expect(summary.hash, `${key}, ${workers} workers`).toBe(found[key]);
        }
      }
      pool.close();
    }
    // Whoever changes the engine on purpose writes them anew: npx vitest run --project golden -u
    await expect(`${JSON.stringify(found, null, 2)}\n`).toMatchFileSnapshot("hashes.json");
  });
});
