import { describe, expect, it } from "vitest";
import type { RunEvent } from "../../../src/trial/recording.ts";
import { ballMark } from "../../../src/view/ballMark.ts";

const event = (kind: RunEvent["kind"], ball: number, timeS: number): RunEvent => ({
  kind,
  ball,
  timeS,
  xMm: 0,
  yMm: 0,
  move: 0,
});
const outcome = {
  deliveredAtS: [12, null, null],
  losses: [null, "rolled-out", "never-touched"] as const,
};
const recording = { durationS: 60, events: [event("on-wedge", 0, 5), event("rolled-out", 1, 20)] };
const marks = (timeS: number) => [0, 1, 2].map((ball) => ballMark(outcome, recording, ball, timeS));

describe("what is known of a ball", () => {
  it("is nothing at the start", () => {
    expect(marks(0)).toEqual(["open", "open", "open"]);
  });

  it("is delivered only once it is on the wedge for good", () => {
    expect(marks(11.9)[0]).toBe("open");
    expect(marks(12)[0]).toBe("delivered");
  });

  it("is lost at once out of the doorway, else at the end", () => {
    expect(marks(19.9)[1]).toBe("open");
    expect(marks(20)[1]).toBe("lost");
    expect(marks(59.9)[2]).toBe("open");
    expect(marks(60)).toEqual(["delivered", "lost", "lost"]);
  });
});
