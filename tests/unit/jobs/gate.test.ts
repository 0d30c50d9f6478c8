import { describe, expect, it } from "vitest";
import { Gate } from "../../../src/jobs/gate.ts";
import { Pool } from "../../../src/jobs/pool.ts";
import { TimeLeft } from "../../../src/jobs/timeLeft.ts";
import { fakeThreads } from "../../support/fakeThreads.ts";
import { bareProject, bareRoutine, fakeReply } from "../../support/fakeTrials.ts";

const stress = (from: number) => ({ kind: "stress", seed: 1, from, to: from + 1 }) as const;

describe("a gate", () => {
  it("tells those who watch when it turns, and nobody when it does not", () => {
    const gate = new Gate();
    const seen: boolean[] = [];
    const forget = gate.watch(() => seen.push(gate.isClosed));
    gate.open();
    gate.close();
    gate.close();
    gate.open();
    forget();
    gate.close();
    expect(seen).toEqual([true, false]);
  });
});

describe("a pool behind a gate", () => {
  it("starts nothing while it is closed, lets others overtake, and goes on when it opens", async () => {
    const { start, threads } = fakeThreads();
    const pool = new Pool(start, 1);
    const gate = new Gate();
    const routine = bareRoutine("lanes");
    const answerNow = () => {
      const thread = threads[0];
      if (!thread) throw new Error("no worker was started");
      thread.reply(fakeReply(thread.request, 1, () => 1));
    };
    const held = [0, 1, 2].map((from) => pool.run(bareProject, routine, stress(from), { gate }));
    gate.close();
    answerNow(); // The one under way ends.
    expect((await held[0])?.from).toBe(0);
    const other = pool.run(bareProject, routine, stress(9));
    expect(threads[0]?.request.task).toMatchObject({ from: 9 });
    answerNow();
    expect((await other).from).toBe(9);
    expect(threads[0]?.received).toHaveLength(2);
    gate.open();
    expect(threads[0]?.request.task).toMatchObject({ from: 1 });
    answerNow();
    answerNow();
    expect((await Promise.all(held)).map(({ from }) => from)).toEqual([0, 1, 2]);
  });

  it("can be cancelled while it is paused", async () => {
    const { start, threads } = fakeThreads();
    const pool = new Pool(start, 1);
    const gate = new Gate();
    gate.close();
    const controller = new AbortController();
    const options = { gate, signal: controller.signal };
    const held = pool.run(bareProject, bareRoutine("lanes"), stress(0), options);
    controller.abort(new Error("enough"));
    await expect(held).rejects.toThrow("enough");
    gate.open();
    expect(threads).toHaveLength(0);
  });
});

describe("the time left", () => {
  it("is the time worked, shared out over what is left, without the pauses", () => {
    let clock = 1000;
    const gate = new Gate();
    const time = new TimeLeft(gate, () => clock);
    expect(time.leftS(0)).toBeNull();
    clock += 10_000;
    expect(time.leftS(0.25)).toBeCloseTo(30);
    gate.close();
    clock += 60_000;
    expect(time.workedS).toBeCloseTo(10);
    gate.open();
    clock += 10_000;
    expect(time.workedS).toBeCloseTo(20);
    expect(time.leftS(0.5)).toBeCloseTo(20);
    expect(time.leftS(1)).toBe(0);
  });
});
