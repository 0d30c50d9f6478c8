import { expect, test } from "vitest";
import type { Workers } from "../../../src/jobs/catalogue.ts";
import { findFixes } from "../../../src/jobs/fixes.ts";
import { partWorths } from "../../../src/jobs/partWorths.ts";
import type { Answers, Request } from "../../../src/jobs/protocol.ts";
import { RandomStream } from "../../../src/num/stream.ts";
import { bareProject, bareRoutine, fakeReply } from "../../support/fakeTrials.ts";

const CHANGES = 10;
const RUNS = 40;

/** Workers for whom every change and every part is worth nothing: each run of anything brings its ball home by a throw of its own. */
function luckyWorkers(stream: RandomStream): Workers {
  const run = async (_: unknown, about: unknown, task: Request["task"]): Promise<unknown> => {
    switch (task.kind) {
      case "changes":
        return Array.from({ length: CHANGES }, (_, i) => ({
          ...{ id: `change ${i}`, about: "routine", title: `change ${i}`, reason: null },
          made: { project: bareProject, routine: bareRoutine(`change ${i}`) },
        }));
      case "parts":
        return {
          parts: [0, 1, 2].map((from) => ({ from, to: from + 1, durationS: 1 })),
          variants: Array.from({ length: 8 }, (_, mask) => bareRoutine(`${mask}`)),
        } as Answers["parts"];
      case "factors":
        return [];
      case "family":
        return (about as readonly unknown[]).map(() => batchOf({ ...task, kind: "stress" }));
      case "stress":
        return batchOf(task);
      default:
        return 0;
    }
  };
  const batchOf = (task: Request["task"]): unknown => {
    const request = { id: 0, key: 0, subject: null, family: [], forget: [], task };
    const reply = fakeReply(request, 1, () => Number(stream.uniform() < 0.6));
    return reply.ok ? reply.answer : null;
  };
  return { run: run as Workers["run"] };
}

test("ranges hold for a whole list of changes, also for the one that looks best, in 95 of 100 lists", async () => {
  const lists = 60;
  const stream = new RandomStream().open(31, 0, 0);
  let first = 0;
  let all = 0;
  let calls = 0;
  for (let list = 0; list < lists; list++) {
    const { fixes } = await findFixes(luckyWorkers(stream), bareProject, bareRoutine("as it is"), {
      seed: list,
      trials: RUNS,
    });
    expect(fixes).toHaveLength(CHANGES);
    const holds = fixes.map(({ gain }) => gain.low <= 0 && gain.high >= 0);
    if (fixes.some(({ verdict }) => verdict !== "not told apart")) calls++;
    if (holds[0]) first++;
    if (holds.every(Boolean)) all++;
  }
  // 95 of 100, less three standard errors of so many lists; ranges that each hold by themselves reach 60 to 75.
  expect(first / lists).toBeGreaterThan(0.865);
  expect(all / lists).toBeGreaterThan(0.865);
  // Nor is a change called better or worse in more lists than that; by tests of each change alone it would be in a third of them.
  expect(calls / lists).toBeLessThan(0.135);
});

test("the range of a part's worth holds in 95 of 100 routines", async () => {
  const stream = new RandomStream().open(32, 0, 0);
  let holds = 0;
  const routines = 80;
  for (let i = 0; i < routines; i++) {
    const worths = await partWorths(luckyWorkers(stream), bareProject, bareRoutine("whole"), {
      seed: i,
      trials: 4 * RUNS,
    });
    for (const { ballsShare } of worths) if (ballsShare.low <= 0 && ballsShare.high >= 0) holds++;
  }
  expect(holds / (3 * routines)).toBeGreaterThan(0.91);
  expect(holds / (3 * routines)).toBeLessThan(0.99);
});
