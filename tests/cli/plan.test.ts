import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { LOSS_REASONS } from "../../src/trial/outcome.ts";
import { runCommand, runForJson } from "../support/command.ts";
import { changedText } from "../support/projectFiles.ts";
import { tempDirectory } from "../support/tempDirectory.ts";

interface PlanJson {
  readonly project: string;
  readonly seed: number;
  readonly trials: number;
  readonly routines: readonly {
    readonly id: string;
    readonly pattern: string;
    readonly label: string;
    readonly durationS: number;
    readonly fitsTime: boolean;
    readonly coverageFrac: number;
    readonly successRate: {
      readonly value: number;
      readonly low: number;
      readonly high: number;
      readonly trials: number;
    };
    readonly meanDelivered: number;
    readonly losses: Readonly<Record<string, number>>;
    readonly score: { readonly value: number; readonly low: number; readonly high: number };
    readonly moves: number;
    readonly fresh: boolean;
  }[];
  readonly best: string;
  readonly ties: readonly string[];
  readonly timeFront: readonly Offer[];
  readonly movesFront: readonly Offer[];
  readonly sensing: string | null;
  readonly ranTrials: number;
  readonly aim?: string;
}

interface Offer {
  readonly id: string;
  readonly durationS: number;
  readonly moves: number;
  readonly score: { readonly value: number };
  readonly fresh: boolean;
}

const TRIALS = 10;

const directory = tempDirectory();

/** The usual zone with a routine that the team wrote. */
function withOwnRoutine(): string {
  const file = join(directory, "ours.json");
  const moves = [{ kind: "drive", distanceMm: 300, speedMmPerS: 200 }];
  const text = changedText((project) => {
    project.routines = [{ id: "own-1", label: "Ours", moves }];
  });
  writeFileSync(file, text);
  return file;
}

describe("wedgeward plan", () => {
  it("ranks at least sixty routines of at least seven patterns, the team's own among them", async () => {
    const file = withOwnRoutine();
    const plan = await runForJson<PlanJson>("plan", file, "--trials", `${TRIALS}`, "--seed", "5");
    expect(plan.routines.find(({ id }) => id === "own-1")).toMatchObject({ label: "Ours", moves: 1 });
    expect(plan).toMatchObject({ project: "The usual zone", seed: 5, trials: TRIALS });
    expect(Object.keys(plan).slice(0, 4)).toEqual(["project", "seed", "trials", "routines"]);
    const ids = plan.routines.map(({ id }) => id);
    expect(ids).toContain(plan.best);
    for (const { id } of [...plan.timeFront, ...plan.movesFront]) expect(ids).toContain(id);
    expect(plan.ties).toContain(plan.best);
    const rising = (values: readonly number[]) => [...values].sort((a, b) => a - b);
    const durations = plan.timeFront.map(({ durationS }) => durationS);
    expect(durations).toEqual(rising(durations));
    const moves = plan.movesFront.map((offer) => offer.moves);
    expect(moves).toEqual(rising(moves));
    for (const { score } of plan.timeFront) expect(score.value).toBeGreaterThanOrEqual(0);
    expect(plan.sensing).toBeNull();
    expect(plan.routines.length).toBeGreaterThanOrEqual(60);
    expect(new Set(plan.routines.map(({ id }) => id)).size).toBe(plan.routines.length);
    expect(new Set(plan.routines.map(({ pattern }) => pattern)).size).toBeGreaterThanOrEqual(7);
    // The best, what ties with it, the simplest first, and then the others by their rates.
    expect(ids[0]).toBe(plan.best);
    expect(ids.slice(1, plan.ties.length)).toEqual(plan.ties.filter((id) => id !== plan.best));
    const values = plan.routines.slice(plan.ties.length).map(({ successRate }) => successRate.value);
    expect(values).toEqual([...values].sort((a, b) => b - a));
    for (const routine of plan.routines) {
      const { successRate: rate, losses, meanDelivered } = routine;
      expect(Object.keys(routine).slice(0, 9)).toEqual([
        "id",
        "pattern",
        "label",
        "durationS",
        "fitsTime",
        "coverageFrac",
        "successRate",
        "meanDelivered",
        "losses",
      ]);
      expect(rate.trials).toBe(TRIALS);
      expect(rate.low).toBeLessThanOrEqual(rate.value);
      expect(rate.high).toBeGreaterThanOrEqual(rate.value);
      expect(Object.keys(losses)).toEqual([...LOSS_REASONS]);
      // Three balls a trial: each is home or lost for one reason.
      const lost = Object.values(losses).reduce((sum, balls) => sum + balls, 0);
      expect(lost + Math.round(meanDelivered * TRIALS)).toBe(3 * TRIALS);
      expect(routine.fitsTime).toBe(routine.durationS <= 120);
      expect(routine.coverageFrac).toBeGreaterThanOrEqual(0);
      expect(routine.coverageFrac).toBeLessThanOrEqual(1);
    }
  });

  it("prints a table with the best first, in words", async () => {
    const { code, stdout, stderr } = await runCommand("plan", "usual-zone", "--trials", "3");
    expect([code, stderr]).toEqual([0, ""]);
    expect(stdout).toContain("The usual zone");
    expect(stdout).toMatch(/^ *1 .*\d+(\.\d)? of 100 runs +likely between \d+ and \d+/m);
    expect(stdout).toMatch(/paired test/);
    expect(stdout).toMatch(/^Best: /m);
  });

  it("in a few seconds finds a winner, with fresh figures, also for another aim", async () => {
    const plan = await runForJson<PlanJson>(
      "plan",
      "--seconds",
      "3",
      "--aim",
      "home-by-60",
      "--trials",
      "400",
    );
    expect(plan).toMatchObject({ seconds: 3, trials: 400, aim: "home-by-60" });
    const [best] = plan.routines;
    expect(best).toMatchObject({ id: plan.best, fresh: true });
    // A share of the balls: more of them are home than all three in one run.
    expect(best?.score.value).toBeGreaterThan(best?.successRate.value ?? 1);
    expect(best?.score.low).toBeLessThanOrEqual(best?.score.value ?? 0);
    expect(plan.ranTrials).toBeGreaterThan(0);
  });
});
