import { describe, expect, it } from "vitest";
import { PushLane } from "../../../../src/plan/push/lane.kernel.ts";
import { meet, newPush } from "../../../../src/plan/push/meet.kernel.ts";
import { Meets } from "../../../../src/plan/push/meets.kernel.ts";
import { DIRECTIONS } from "../../../../src/plan/push/room.ts";
import { fieldBall, pushSetup } from "../../../../src/plan/push/setup.ts";
import { shippedProject } from "../../../support/projectFiles.ts";

/** Every so many places and directions are looked at; no factor in common with rows, columns or right angles. */
const PLACE_STEP = 7;

describe("the pushes of a lane", () => {
  it.each(["plate-robot.json", "pillar-zone.json", "tray-corner.json"])(
    "are those that are found place by place: %s",
    (name) => {
      const project = shippedProject(name);
      const setup = pushSetup(project, fieldBall(project), 0);
      const cells = setup.columns * setup.rows;
      const lane = new PushLane(setup);
      const meets = new Meets(lane, new Float32Array(cells).fill(1), new Int32Array(cells));
      const push = newPush();
      let compared = 0;
      for (let d = 0; d < DIRECTIONS; d += d % 9 === 0 ? 1 : 4) {
        const taken = new Set<number>();
        for (const [k, contact] of setup.contacts.entries()) {
          lane.aim(d, k);
          const listed = new Set(meets.cells.subarray(meets.startOf(d, k), meets.endOf(d, k)));
          for (let cell = d % PLACE_STEP; cell < cells; cell += PLACE_STEP) {
            const x = setup.radius + (cell % setup.columns) * setup.stepX;
            const y = setup.radius + Math.floor(cell / setup.columns) * setup.stepY;
            const found = meet(setup, x, y, d, k, push) && !taken.has(cell);
            const way = listed.has(cell) ? lane.go(x, y) : -1;
            if (found !== way >= 0)
              expect.fail(`direction ${d}, contact ${k}, place ${cell}: ${found}, ${way}`);
            if (!found) continue;
            compared++;
            if (contact.advanceMm === 0) taken.add(cell);
            if (Math.abs(way - push.travel) > 1e-6 || Math.abs(lane.ballFree - push.ballFree) > 1e-6)
              expect.fail(`direction ${d}, contact ${k}, place ${cell}: ${way}, not ${push.travel}`);
          }
        }
      }
      expect(compared).toBeGreaterThan(5000);
    },
  );
});
