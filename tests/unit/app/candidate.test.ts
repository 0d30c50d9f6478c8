import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { type Candidate, newCandidate, withBatch } from "../../../src/app/state/candidate.ts";
import { parseProject } from "../../../src/model/parse.ts";
import type { TrialBatch } from "../../../src/trial/outcome.ts";

const parsed = parseProject(readFileSync("fields/usual-zone.json", "utf8"));
if (!parsed.ok) throw new Error("usual-zone.json does not parse");
const project = parsed.value;

const candidate = (id: string, distanceMm = 500): Candidate =>
  newCandidate(project, {
    id,
    pattern: "own",
    label: id,
    params: {},
    moves: [{ kind: "drive", distanceMm, speedMmPerS: 100 }],
  });

/** `worked` of `trials` runs deliver all three balls, the others none. */
function batch(from: number, trials: number, worked: number): TrialBatch {
  const none = new Float64Array(trials);
  return {
    from,
    to: from + trials,
    delivered: Uint8Array.from({ length: trials }, (_, i) => (i < worked ? 3 : 0)),
    timeS: none,
    points: none,
    losses: Float64Array.of(0, 0, 0, 0, 0, 3 * (trials - worked)),
    hashLow: 0,
    hashHigh: 0,
    jams: 0,
    stalls: 0,
  };
}

describe("candidates", () => {
  it("add their batches up", () => {
    const grown = withBatch(withBatch(candidate("a"), batch(0, 40, 30)), batch(40, 60, 45));
    expect(grown.trials).toBe(100);
    expect(grown.summary?.successRate.value).toBe(0.75);
  });

  it("are marked when they take longer than the time limit", () => {
    expect(candidate("a").fitsTime).toBe(true);
    expect(candidate("a", 13_000).fitsTime).toBe(false);
  });
});
