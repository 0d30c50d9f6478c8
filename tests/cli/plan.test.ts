import { describe, expect, it } from "vitest";
import { LOSS_REASONS } from "../../src/trial/outcome.ts";
import { runCommand, runForJson } from "../support/command.ts";

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
    readonly fresh: boolean;
  }[];
  readonly best: string;
  readonly ties: readonly string[];
  readonly timeFront: readonly string[];
  readonly movesFront: readonly string[];
}

const TRIALS = 10;

describe("wedgeward plan", () => {
  it("ranks at least sixty routines of at least seven patterns, best first", async () => {
    const plan = await runForJson<PlanJson>("plan", "--trials", `${TRIALS}`, "--seed", "5");
    expect(plan).toMatchObject({ project: "The usual zone", seed: 5, trials: TRIALS });
    expect(Object.keys(plan).slice(0, 4)).toEqual(["project", "seed", "trials", "routines"]);
    const ids = plan.routines.map(({ id }) => id);
    expect(ids).toContain(plan.best);
    for (const id of [...plan.ties, ...plan.timeFront, ...plan.movesFront]) expect(ids).toContain(id);
    expect(plan.ties).toContain(plan.best);
    const durations = plan.timeFront.map(
      (id) => plan.routines.find((each) => each.id === id)?.durationS ?? 0,
    );
    expect(durations).toEqual([...durations].sort((a, b) => a - b));
    expect(plan.routines.length).toBeGreaterThanOrEqual(60);
    expect(new Set(plan.routines.map(({ id }) => id)).size).toBe(plan.routines.length);
    expect(new Set(plan.routines.map(({ pattern }) => pattern)).size).toBeGreaterThanOrEqual(7);
    const values = plan.routines.map(({ successRate }) => successRate.value);
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
});
