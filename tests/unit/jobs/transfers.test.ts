import { describe, expect, it } from "vitest";
import type { Answers, TaskKind } from "../../../src/jobs/protocol.ts";
import { transfersOf } from "../../../src/jobs/transfers.ts";

const replyWith = (answer: unknown) => ({ id: 1, ok: true, answer: answer as Answers[TaskKind] }) as const;

describe("what a reply hands over", () => {
  it("is every buffer once, also one object further in", () => {
    const counts = new Uint8Array(8);
    const frames = new Float64Array(4);
    const answer = {
      from: 0,
      counts,
      low: counts.subarray(0, 2),
      recording: { frames, events: [{ kind: "end" }] },
    };
    expect(transfersOf(replyWith(answer))).toEqual([counts.buffer, frames.buffer]);
  });

  it("is nothing for a fault", () => {
    expect(transfersOf({ id: 1, ok: false, fault: "no" })).toEqual([]);
  });
});
