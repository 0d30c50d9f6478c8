import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Move } from "../../src/model/routine.ts";
import type { Corner } from "../../src/model/zone.ts";
import { compileTrial } from "../../src/trial/compile.ts";
import { runFamilyBatch } from "../../src/trial/family.ts";
import { runBatch } from "../../src/trial/run.ts";
import { withMoves } from "../../src/trial/withMoves.ts";
import { interrupted, uninterrupted } from "../support/interrupted.ts";
import { routineOf } from "../support/scene.ts";
import { anyMove, anyMoves, anyProject } from "../support/worlds.ts";

const SEED = 13;
const CORNERS: readonly Corner[] = ["lower-left", "lower-right", "upper-left", "upper-right"];

/** Lists of moves, each going on in its own way from somewhere in one before it: at its start and end, too. */
const anyFamily: fc.Arbitrary<Move[][]> = fc
  .tuple(
    anyMoves,
    fc.array(
      fc.record({
        of: fc.nat(),
        at: fc.nat(),
        tail: fc.array(anyMove, { maxLength: 5 }),
      }),
      { minLength: 1, maxLength: 7 },
    ),
  )
  .map(([trunk, forks]) => {
    const lists = [trunk];
    for (const { of, at, tail } of forks) {
      const from = lists[of % lists.length] ?? trunk;
      lists.push([...from.slice(0, at % (from.length + 1)), ...tail.map((move) => ({ ...move }))]);
    }
    return lists;
  });

describe("routines that begin alike, run together", () => {
  it("come to bit for bit what each comes to alone", () => {
    fc.assert(
      fc.property(
        anyProject,
        anyFamily,
        fc.constantFrom(0, 3, 8, 20, 120),
        fc.boolean(),
        (drawn, lists, timeLimitS, isOpen) => {
          const rules = { ...drawn.rules, timeLimitS, wedgeCorners: isOpen ? CORNERS : [] };
          const project = { ...drawn, rules };
          const alone = lists.map((moves) => runBatch(compileTrial(project, routineOf(moves)), SEED, 4, 6));
          const plan = compileTrial(project, routineOf([]));
          const plans = lists.map((moves) => withMoves(plan, routineOf(moves)));
          expect(runFamilyBatch(plans, SEED, 4, 6)).toEqual(alone);
        },
      ),
      { seed: 20270, numRuns: 12 },
    );
  });

  it("a run goes on as if nothing had been, whatever another did to the world after each of its moves", () => {
    fc.assert(
      fc.property(anyProject, anyMoves, anyMoves, (project, moves, others) => {
        const plan = compileTrial(project, routineOf(moves));
        const other = withMoves(plan, routineOf([...others, ...others, ...others]));
        expect(interrupted(plan, other, SEED, 2)).toEqual(uninterrupted(plan, SEED, 2));
      }),
      { seed: 20271, numRuns: 10 },
    );
  });
});
