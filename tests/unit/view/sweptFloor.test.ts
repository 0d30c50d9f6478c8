import { describe, expect, it } from "vitest";
import { parseProject } from "../../../src/model/parse.ts";
import { RoutineMaker } from "../../../src/plan/maker.ts";
import { compileTrial } from "../../../src/trial/compile.ts";
import { robotAt } from "../../../src/trial/playback.ts";
import { recordTrial } from "../../../src/trial/run.ts";
import { sweptFloor } from "../../../src/view/sweptFloor.ts";
import { shippedText } from "../../support/projectFiles.ts";

const parsed = parseProject(shippedText("usual-zone.json"));
if (!parsed.ok) throw new Error("the usual zone is sound");
const routine = new RoutineMaker(parsed.value).make("herd-all-c0-q-b-v60");
if (!routine) throw new Error("the usual zone has room for this routine");
const { recording } = recordTrial(compileTrial(parsed.value, routine), 1, 0);

/** A straight edge of 100 mm across the robot, through its origin. */
const EDGE = [[0, -50, 0, 50]];

describe("the floor that a pusher passes over", () => {
  it("is the edge's width times the way, turns on the spot left out", () => {
    let areaMm2 = 0;
    for (const { corners } of sweptFloor(recording, EDGE)) areaMm2 += Math.abs(shoelace(corners));
    let wayMm = 0;
    for (let k = 0; (k + 1) * 0.01 <= recording.durationS; k++) {
      const [from, to] = [robotAt(recording, k * 0.01), robotAt(recording, (k + 1) * 0.01)];
      wayMm += Math.hypot(to.xMm - from.xMm, to.yMm - from.yMm);
    }
    expect(wayMm).toBeGreaterThan(1000);
    expect(areaMm2 / (100 * wayMm)).toBeCloseTo(1, 1);
  });

  it("grows in order of time", () => {
    const times = sweptFloor(recording, EDGE).map(({ timeS }) => timeS);
    expect(times).toEqual([...times].sort((a, b) => a - b));
    expect(times.at(-1)).toBeLessThanOrEqual(recording.durationS);
  });
});

function shoelace(corners: readonly number[]): number {
  let sum = 0;
  for (let i = 0; i < corners.length; i += 2) {
    const j = (i + 2) % corners.length;
    sum += (corners[i] ?? 0) * (corners[j + 1] ?? 0) - (corners[j] ?? 0) * (corners[i + 1] ?? 0);
  }
  return sum / 2;
}
