import { expect, it } from "vitest";
import { Pool } from "../../../src/jobs/pool.ts";
import type { Request } from "../../../src/jobs/protocol.ts";
import type { StartThread } from "../../../src/jobs/thread.ts";
import type { Move } from "../../../src/model/routine.ts";
import { liveThreads } from "../../support/liveThreads.ts";
import { shippedProject } from "../../support/projectFiles.ts";
import { routineOf } from "../../support/scene.ts";

const project = shippedProject();
const drive = (distanceMm: number): Move => ({ kind: "drive", distanceMm, speedMmPerS: 150 });
const turn: Move = { kind: "turn", angleRad: 0.8, rateRadPerS: 2 };
const lists = [[drive(500), turn, drive(200)], [drive(500), turn, turn], [drive(500)]];
const family = lists.map((moves, i) => ({ ...routineOf(moves), id: `list${i}` }));
const trials = { seed: 3, from: 2, to: 6 } as const;

/** A pool with one worker, and what is posted to it. */
function overheard(): { readonly pool: Pool; readonly posted: readonly Request[] } {
  const posted: Request[] = [];
  const { start } = liveThreads();
  const listening: StartThread = (events) => {
    const thread = start(events);
    return {
      ...thread,
      post: (request) => {
        posted.push(request);
        thread.post(request);
      },
    };
  };
  return { pool: new Pool(listening, 1), posted };
}

it("a family is answered as each of its routines alone, and each is sent to a worker once", async () => {
  const { pool, posted } = overheard();
  const together = await pool.run(project, family, { kind: "family", ...trials });
  await pool.run(project, [...family].reverse(), { kind: "family", ...trials });
  const alone = family.map((routine) => pool.run(project, routine, { kind: "stress", ...trials }));
  expect(together).toEqual(await Promise.all(alone));
  const sent = posted.map(({ subject, family: members = [] }) =>
    [subject, ...members.map((each) => each.subject)].filter((each) => each !== null),
  );
  expect(sent.map(({ length }) => length)).toEqual([4, 0, 0, 0, 0]);
  pool.close();
});

it("a family with a program in it rejects, and says which", async () => {
  const { pool } = overheard();
  const deciding = { ...routineOf([]), id: "sees", program: [] };
  const asked = pool.run(project, [...family, deciding], { kind: "family", ...trials });
  await expect(asked).rejects.toThrow("sees: a program");
  pool.close();
});
