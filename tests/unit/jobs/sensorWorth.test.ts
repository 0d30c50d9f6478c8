import { describe, expect, it } from "vitest";
import { Pool } from "../../../src/jobs/pool.ts";
import { worthOfSensors } from "../../../src/jobs/sensorWorth.ts";
import { ballsOf } from "../../../src/model/project.ts";
import { sensorOf } from "../../../src/model/sensor.ts";
import { sensingIds } from "../../../src/plan/sensingPlan.ts";
import { usualSensors } from "../../../src/plan/usualSensors.ts";
import { equipmentWords, sensingVerdict, worthWords } from "../../../src/report/sensorWords.ts";
import { bestOfEach } from "../../../src/score/bestOfEach.ts";
import { summarise } from "../../../src/score/stress.ts";
import type { KnownBallsRun } from "../../../src/search/knownBalls.ts";
import { LOSS_REASONS } from "../../../src/trial/outcome.ts";
import { fakeThreads } from "../../support/fakeThreads.ts";
import { fakeReply } from "../../support/fakeTrials.ts";
import { shippedProject } from "../../support/projectFiles.ts";

const project = shippedProject("looking-robot.json");
const balls = ballsOf(project).length;
const OPTIONS = { seed: 1, trials: 40 };

/** Workers in which a routine brings home as many balls as `home` says, and the push sequence of each placement `sequence`. */
function workers(home: (routine: string, index: number) => number, sequence = (_index: number) => 0) {
  const known = new Map<number, string>();
  return fakeThreads((thread, request) => {
    if (request.subject?.routine) known.set(request.key, request.subject.routine.id);
    const name = known.get(request.key) ?? "";
    const { id, task } = request;
    if (task.kind === "known-balls") {
      const still = Array.from({ length: balls }, (_, i) => i < sequence(task.index));
      const answer = { still, outcome: { delivered: still.map(() => false) } } as unknown as KnownBallsRun;
      queueMicrotask(() => thread.reply({ id, ok: true, answer }));
      return;
    }
    queueMicrotask(() => thread.reply(fakeReply(request, balls, (index) => home(name, index))));
  }).start;
}

describe("what a sensor is worth", () => {
  it("is told for no sensor, each alone, all together and everything known", async () => {
    const pool = new Pool(
      workers(() => 1),
      2,
    );
    const { own, rows } = await worthOfSensors(pool, project, OPTIONS);
    expect(own).toBe(true);
    const names = project.robot.sensors.map(({ name }) => name);
    expect(rows.map(({ equipment }) => equipmentWords(equipment))).toEqual([
      "no sensor",
      ...names,
      "all of them",
      "everything known",
    ]);
    expect(rows.map(({ summary }) => summary.trials)).toEqual(rows.map(() => OPTIONS.trials));
  });

  it("is more where a routine that looks does better, and that routine is named", async () => {
    const pool = new Pool(
      workers((id) => (id === "look-n2-none" ? 3 : 1)),
      2,
    );
    const { rows } = await worthOfSensors(pool, project, OPTIONS);
    const eye = rows.find(
      ({ equipment }) => equipment.kind === "one" && equipment.sensor.kind === "distance",
    );
    expect(eye?.routine).toBe("look-n2-none");
    expect(eye?.worth.successDifference.value).toBe(1);
    const gyro = rows.find(({ equipment }) => equipment.kind === "one" && equipment.sensor.kind === "gyro");
    expect(gyro?.worth.successDifference.value).toBe(0);
  });

  it("is never negative for everything known, however badly fetching goes", async () => {
    for (const fetching of [0, 1, 3]) {
      const home = (id: string, index: number) =>
        id === "all-known" ? fetching : (index * 7 + id.length) % 4;
      const { rows } = await worthOfSensors(new Pool(workers(home), 2), project, OPTIONS);
      const last = rows[rows.length - 1]!;
      expect(last.equipment.kind).toBe("perfect");
      for (const row of rows) {
        expect(last.summary.successRate.value).toBeGreaterThanOrEqual(row.summary.successRate.value);
        expect(last.summary.meanDelivered).toBeGreaterThanOrEqual(row.summary.meanDelivered);
      }
      expect(last.worth.successDifference.value).toBeGreaterThanOrEqual(0);
      expect(last.worth.onlySecond).toBe(0);
      expect(worthWords(last)).not.toContain("−1 ");
    }
  });

  it("for everything known is what push sequences bring home where nothing else does", async () => {
    const asked: number[] = [];
    const sequence = (index: number) => {
      asked.push(index);
      return index % 3 === 0 ? balls : 1;
    };
    const pool = new Pool(
      workers((_, index) => (index % 2 === 0 ? balls : 1), sequence),
      2,
    );
    const { rows } = await worthOfSensors(pool, project, OPTIONS);
    const last = rows[rows.length - 1]!;
    expect(last.summary.delivered).toEqual(
      Array.from({ length: OPTIONS.trials }, (_, i) => (i % 2 === 0 || i % 3 === 0 ? balls : 1)),
    );
    // Where all balls are home already no sequence is planned.
    expect(asked.every((index) => index % 2 === 1)).toBe(true);
  });

  it("is asked of usual sensors where the robot has none", async () => {
    const blind = shippedProject("usual-zone.json");
    const { own, rows } = await worthOfSensors(
      new Pool(
        workers(() => 2),
        2,
      ),
      blind,
      OPTIONS,
    );
    expect(own).toBe(false);
    expect(rows.length).toBe(usualSensors(blind).length + 3);
    // Across the pusher and within the arms.
    expect(sensorOf(usualSensors(blind), "barrier")?.lengthMm).toBeGreaterThan(100);
    expect(sensingIds(blind)).toEqual([]);
  });
});

/** A stress test with these balls home, all others lost for one reason. */
function test(delivered: readonly number[], reason: (typeof LOSS_REASONS)[number], from = 0) {
  const losses = new Float64Array(LOSS_REASONS.length);
  losses[LOSS_REASONS.indexOf(reason)] = delivered.reduce((sum, count) => sum + 3 - count, 0);
  const column = new Float64Array(delivered.length);
  return summarise([
    {
      from,
      to: from + delivered.length,
      delivered: Uint8Array.from(delivered),
      timeS: column,
      points: column,
      losses,
      hashLow: 1,
      hashHigh: 1,
      jams: 0,
      stalls: 0,
    },
  ]);
}

describe("the best of several tests in each trial", () => {
  it("is the larger number of balls, trial by trial", () => {
    const best = bestOfEach([test([3, 0, 1, 2], "jammed"), test([0, 3, 1, 3], "jammed")]);
    expect(best.delivered).toEqual([3, 3, 1, 3]);
    expect(best.deliveredCounts).toEqual([0, 1, 0, 3]);
    expect(best.successRate.value).toBe(0.75);
    expect(best.meanDelivered).toBe(2.5);
  });

  it("needs the same trials, and at least one test", () => {
    expect(() => bestOfEach([])).toThrow("expected at least one");
    expect(() => bestOfEach([test([1], "jammed"), test([1], "jammed", 5)])).toThrow("expected the same ones");
  });
});

describe("whether looking pays", () => {
  const many = (count: number) => Array.from({ length: 50 }, () => count);

  it("is said with the numbers and the loss that makes the difference", () => {
    const looking = { id: "look-n1-none", summary: test(many(3), "jammed") };
    const blind = { id: "fan", summary: test(many(1), "out-of-time") };
    const words = sensingVerdict(looking, blind) ?? "";
    expect(words).toMatch(/^Looking pays here: .*look-n1-none.*fan.*\+100 of 100 runs/);
    expect(words).toMatch(/blind one loses more balls to .*: 66 of 100 against 0\.$|67 of 100 against 0\.$/);
    expect(sensingVerdict(blind, looking)).toMatch(/^Looking does not pay here: /);
  });

  it("is left open where the test does not tell them apart, and not said without a robot that looks", () => {
    const one = { id: "a", summary: test(many(2), "jammed") };
    expect(sensingVerdict(one, one)).toMatch(/^Too close to call: /);
    expect(sensingVerdict(undefined, one)).toBeNull();
  });
});
