import { describe, expect, it } from "vitest";
import { generateRoutines } from "../../src/plan/catalogue.ts";
import { runCommand, runForJson, stoppedCommand } from "../support/command.ts";
import { shippedProject } from "../support/projectFiles.ts";

interface StressJson {
  readonly routine: string;
  readonly seed: number;
  readonly trials: number;
  readonly workers: number;
  readonly successRate: { readonly value: number; readonly trials: number };
  readonly meanDelivered: number;
  readonly deliveredCounts: readonly number[];
  readonly losses: Readonly<Record<string, number>>;
  readonly hash: string;
}

interface TrialJson {
  readonly placement: readonly object[];
  readonly delivered: readonly boolean[];
  readonly endPositions: readonly object[];
  readonly losses: readonly (string | null)[];
  readonly timeS: number;
  readonly hash: string;
}

/** Some routine of the default project. */
const routine = generateRoutines(shippedProject())[0]?.id ?? "none";

const stress = (...args: readonly string[]): Promise<StressJson> =>
  runForJson<StressJson>("stress", "--routine", routine, ...args);

describe("wedgeward stress", () => {
  it("gives the same result for one worker, two and four", async () => {
    const [one, two, four] = await Promise.all(
      ["1", "2", "4"].map((workers) => stress("--trials", "450", "--seed", "3", "--workers", workers)),
    );
    expect(one?.hash).toMatch(/^[0-9a-f]{16}$/);
    expect({ ...two, workers: 1 }).toEqual(one);
    expect({ ...four, workers: 1 }).toEqual(one);
  });

  it("gives another result for another seed", async () => {
    const [one, two] = await Promise.all(["1", "2"].map((seed) => stress("--trials", "50", "--seed", seed)));
    expect(one?.hash).not.toBe(two?.hash);
  });

  it("counts every trial and every ball", async () => {
    const result = await stress("--trials", "150");
    expect(Object.keys(result)).toEqual([
      "routine",
      "seed",
      "trials",
      "workers",
      "successRate",
      "meanDelivered",
      "deliveredCounts",
      "losses",
      "spread",
      "hash",
    ]);
    expect(result).toMatchObject({ routine, seed: 1, trials: 150 });
    const { deliveredCounts: counts } = result;
    expect(counts).toHaveLength(4);
    expect(counts.reduce((sum, runs) => sum + runs, 0)).toBe(150);
    const home = counts.reduce((sum, runs, balls) => sum + runs * balls, 0);
    expect(result.meanDelivered).toBeCloseTo(home / 150, 12);
    expect(Object.values(result.losses).reduce((sum, balls) => sum + balls, 0)).toBe(3 * 150 - home);
    expect(result.successRate.value).toBe((counts[3] ?? 0) / 150);
  });

  it("says it in words", async () => {
    const { code, stdout } = await runCommand("stress", "--routine", routine, "--trials", "50");
    expect(code).toBe(0);
    expect(stdout).toMatch(
      /Every ball home in \d+(\.\d)? of 100 runs \(likely between \d+ and \d+\); 50 trials, seed 1/,
    );
    // How much of the doubt comes from chance, and how much from what nobody measured.
    expect(stdout).toMatch(/By the number of runs alone it may move by ±\d+\.\d of 100/);
    expect(stdout).toMatch(/What nobody measured .* may move it by|as far as they are unknown hardly move/);
    expect(stdout).toMatch(/never touched +\d+/);
  });

  it("stopped with Ctrl-C prints what is known: the same as that many trials give", async () => {
    const { code, stdout, stderr } = await stoppedCommand([
      "stress",
      "--routine",
      routine,
      "--trials",
      "1000000",
      "--json",
    ]);
    expect([code, stderr]).toEqual([130, ""]);
    const { stopped: isStopped, ...result } = JSON.parse(stdout) as StressJson & { stopped: boolean };
    expect(isStopped).toBe(true);
    expect(result.trials).toBeLessThan(1_000_000);
    expect(result.successRate.trials).toBe(result.trials);
    if (result.trials > 0) expect(await stress("--trials", `${result.trials}`)).toEqual(result);
  });
});

describe("wedgeward trial", () => {
  const trial = (index: number, seed = 1): Promise<TrialJson> =>
    runForJson<TrialJson>("trial", "--routine", routine, "--seed", `${seed}`, "--index", `${index}`);

  it("runs one trial again", async () => {
    const [first, again, other] = await Promise.all([trial(7), trial(7), trial(8)]);
    expect(again).toEqual(first);
    expect(other.hash).not.toBe(first.hash);
    expect(Object.keys(first)).toEqual(["placement", "delivered", "endPositions", "losses", "timeS", "hash"]);
    expect(
      [first.placement, first.delivered, first.endPositions, first.losses].map(({ length }) => length),
    ).toEqual([3, 3, 3, 3]);
    for (const [ball, isHome] of first.delivered.entries()) expect(first.losses[ball] === null).toBe(isHome);
  });

  it("is the trial that the stress test ran", async () => {
    const trials = await Promise.all([0, 1, 2, 3].map((index) => trial(index, 9)));
    const { deliveredCounts, losses } = await stress("--trials", "4", "--seed", "9");
    const home = trials.map(({ delivered }) => delivered.filter(Boolean).length);
    expect(deliveredCounts).toEqual(
      [0, 1, 2, 3].map((balls) => home.filter((count) => count === balls).length),
    );
    const lost = trials.flatMap((each) => each.losses.filter((reason) => reason !== null));
    for (const [reason, balls] of Object.entries(losses)) {
      expect(lost.filter((each) => each === reason)).toHaveLength(balls);
    }
  });

  it("says it in words", async () => {
    const { code, stdout } = await runCommand("trial", "--routine", routine, "--seed", "1", "--index", "0");
    expect(code).toBe(0);
    expect(stdout).toMatch(/run 0: \d of 3 balls home in \d+\.\d s/);
  });
});
