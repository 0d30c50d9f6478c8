import { readFileSync } from "node:fs";
import { beforeEach, describe, expect, it } from "vitest";
import { type Planner, Ranking } from "../../../src/app/state/ranking.svelte.ts";
import type { Workers } from "../../../src/app/state/workers.ts";
import { parseProject } from "../../../src/model/parse.ts";
import type { Routine } from "../../../src/model/routine.ts";
import type { TrialBatch } from "../../../src/trial/outcome.ts";

const parsed = parseProject(readFileSync("fields/usual-zone.json", "utf8"));
if (!parsed.ok) throw new Error("usual-zone.json does not parse");
const project = parsed.value;

/** Routine r12 brings all balls home in 12 of every 20 runs. */
const routines: readonly Routine[] = Array.from({ length: 14 }, (_, k) => ({
  id: `r${k}`,
  pattern: "own",
  label: `routine ${k}`,
  params: {},
  moves: [{ kind: "drive", distanceMm: 300, speedMmPerS: 100 }],
}));

function batchOf(routine: Routine, from: number, to: number): TrialBatch {
  const good = Number(routine.id.slice(1));
  const delivered = Uint8Array.from({ length: to - from }, (_, i) => ((from + i) % 20 < good ? 3 : 1));
  const lost = delivered.reduce((sum, count) => sum + 3 - count, 0);
  const none = new Float64Array(to - from);
  return {
    from,
    to,
    delivered,
    timeS: none,
    points: none,
    losses: Float64Array.of(0, 0, 0, 0, 0, lost),
    hashLow: 0,
    hashHigh: 0,
    jams: 0,
    stalls: 0,
  };
}

/** Workers that answer at once; `before` sees every task and may throw. */
function workers(
  before: (routine: Routine, kind: string, from: number, to: number) => void = () => {},
): Workers {
  const run = async (
    _: unknown,
    routine: Routine,
    task: { kind: string; from?: number; to?: number },
    { signal }: { signal?: AbortSignal } = {},
  ) => {
    await Promise.resolve();
    signal?.throwIfAborted();
    before(routine, task.kind, task.from ?? 0, task.to ?? 0);
    return batchOf(routine, task.from ?? 0, task.to ?? 0);
  };
  return { run } as unknown as Workers;
}

let planned = routines;
const planner: Planner = async (_, signal) => {
  const answer = { routines: planned, missing: [] };
  await Promise.resolve();
  signal.throwIfAborted();
  return answer;
};
beforeEach(() => {
  planned = routines;
});

describe("the ranking's rounds", () => {
  it("give every routine a first look, then more, and most to the ten best", async () => {
    const ranking = new Ranking(workers(), planner);
    const rounds: number[][] = [];
    ranking.onRound = () => rounds.push(ranking.candidates.map((each) => each.trials));
    await ranking.start(project);
    expect(rounds[0]).toEqual(new Array(14).fill(20));
    expect(rounds[1]).toEqual(new Array(14).fill(100));
    expect(rounds[2]).toEqual(new Array(14).fill(300));
    expect(rounds[3]).toEqual([...new Array(10).fill(1000), ...new Array(4).fill(300)]);
    expect(ranking.candidates.map((each) => each.routine.id).slice(0, 3)).toEqual(["r13", "r12", "r11"]);
    expect(ranking.status).toBe("done");
    expect(ranking.doneFrac).toBe(1);
  });

  it("ask for each trial once", async () => {
    const asked = new Map<string, number>();
    const ranking = new Ranking(
      workers((routine, kind, from, to) => {
        if (kind !== "stress") return;
        expect(from).toBe(asked.get(routine.id) ?? 0);
        asked.set(routine.id, to);
      }),
      planner,
    );
    await ranking.start(project);
    expect(asked.get("r13")).toBe(1000);
  });

  it("stop when cancelled, keep what is known, and go on from there", async () => {
    let tasks = 0;
    const ranking = new Ranking(
      workers(() => {
        tasks += 1;
        if (tasks === 30) ranking.cancel();
      }),
      planner,
    );
    await ranking.start(project);
    expect(ranking.status).toBe("stopped");
    expect(ranking.candidates.every((each) => each.trials >= 20)).toBe(true);
    const known = ranking.candidates.reduce((sum, each) => sum + each.trials, 0);
    await ranking.resume();
    expect(ranking.status).toBe("done");
    expect(ranking.candidates.reduce((sum, each) => sum + each.trials, 0)).toBeGreaterThan(known);
    expect(ranking.doneFrac).toBe(1);
  });

  it("leave a routine that cannot be tested in its place, with the reason", async () => {
    const ranking = new Ranking(
      workers((routine) => {
        if (routine.id === "r5") throw new Error("no way through the doorway");
      }),
      planner,
    );
    await ranking.start(project);
    expect(ranking.status).toBe("done");
    expect(ranking.candidates.at(-1)?.fault).toBe("no way through the doorway");
    expect(ranking.candidates.filter((each) => each.fault !== null)).toHaveLength(1);
  });

  it("can be cancelled while the routines are worked out, and tried again", async () => {
    const ranking = new Ranking(workers(), planner);
    const started = ranking.start(project);
    ranking.cancel();
    await started;
    expect(ranking.status).toBe("stopped");
    expect(ranking.candidates).toEqual([]);
    await ranking.resume();
    expect(ranking.status).toBe("done");
  });

  it("say so when no routines can be worked out", async () => {
    const ranking = new Ranking(workers(), () => Promise.reject(new Error("the zone is too narrow")));
    await ranking.start(project);
    expect(ranking.status).toBe("failed");
    expect(ranking.fault).toBe("the zone is too narrow");
  });

  it("forget the project before when another one is opened meanwhile", async () => {
    const ranking = new Ranking(workers(), planner);
    planned = routines;
    const first = ranking.start(project);
    planned = routines.slice(0, 3);
    const second = ranking.start(project);
    await Promise.all([first, second]);
    expect(ranking.candidates.map((each) => each.routine.id)).toEqual(["r2", "r1", "r0"]);
    expect(ranking.status).toBe("done");
  });
});
