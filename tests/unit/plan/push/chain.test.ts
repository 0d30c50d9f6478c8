import { describe, expect, it } from "vitest";
import { pushChain } from "../../../../src/plan/push/chain.ts";
import { solvePushField } from "../../../../src/plan/push/pushField.ts";
import { shippedProject } from "../../../support/projectFiles.ts";

describe("a chain of pushes", () => {
  it.each(["plate-robot.json", "arm-robot.json"])(
    "takes what the field says, and ends on the wedge: %s",
    (name) => {
      const { field, solver } = solvePushField(shippedProject(name));
      let long = 0;
      for (let cell = 0; cell < field.seconds.length; cell += 31) {
        const seconds = field.seconds[cell] ?? 0;
        const chain = pushChain(solver, solver.xOf(cell), solver.yOf(cell));
        if (seconds === 0 || seconds === Number.POSITIVE_INFINITY) {
          expect(chain).toEqual([]);
          continue;
        }
        // What is gained by less than 0.1 ms at each of the pushes is not told apart.
        expect(Math.abs((chain[0]?.seconds ?? 0) - seconds)).toBeLessThan(1e-3);
        expect(chain.at(-1)?.end).not.toBe("regrip");
        for (const [i, push] of chain.entries()) {
          const next = chain[i + 1];
          if (next === undefined) continue;
          // Each push begins at the place nearest to where the one before left the ball, and less is left to do.
          expect(Math.abs(next.fromXMm - push.toXMm)).toBeLessThanOrEqual(field.stepXMm / 2 + 1e-6);
          expect(Math.abs(next.fromYMm - push.toYMm)).toBeLessThanOrEqual(field.stepYMm / 2 + 1e-6);
          expect(next.seconds).toBeLessThan(push.seconds);
        }
        if (chain.length > 1) long++;
      }
      expect(long).toBeGreaterThan(5);
    },
  );
});
