import { beforeAll, describe, expect, it } from "vitest";
import type { Project } from "../../../src/model/project.ts";
import type { Routine } from "../../../src/model/routine.ts";
import { makeCatalogue } from "../../../src/plan/catalogue.ts";
import { shippedProject } from "../../support/projectFiles.ts";

const usual = shippedProject();
let routines: readonly Routine[] = [];
beforeAll(() => {
  routines = makeCatalogue(usual).routines;
});

describe("the catalogue of the usual zone", () => {
  it("has no two routines with the same moves", () => {
    expect(new Set(routines.map(({ moves }) => JSON.stringify(moves))).size).toBe(routines.length);
  });

  it("has short ids without spaces and one plain line for each", () => {
    for (const { id, label, pattern } of routines) {
      expect(id).toMatch(/^[a-z0-9-]{6,40}$/);
      expect(label.startsWith(`${pattern}: `)).toBe(true);
      expect(label.length).toBeLessThan(200);
      expect(label).not.toContain("\n");
    }
  });

  it("keeps its ids: a routine someone has written down is found again", () => {
    // Printed by this program once; a change here makes saved ids useless.
    const ids = routines.map(({ id }) => id);
    for (const id of [
      "herd-all-c0-q-b-v100",
      "fan-n5-c2-q-v60",
      "ringout-long-q-v100",
      "close-short-s80-c3-v100",
      "mix-hooks-rings-long-c2-q-v100",
      "loop-long-v60",
    ])
      expect(ids).toContain(id);
  });

  it("tries every speed of the settings, and each only once", () => {
    const speeds = new Set(routines.map(({ params }) => params.speedFrac));
    expect([...speeds].sort()).toEqual([0.6, 1]);
    const twice: Project = { ...usual, settings: { ...usual.settings, speedFracs: [1, 1] } };
    expect(makeCatalogue(twice).routines.every(({ params }) => params.speedFrac === 1)).toBe(true);
  });

  it("never commands more than the drive can do", () => {
    const { topSpeedMmPerS, turnRateRadPerS } = usual.robot.drive;
    for (const { moves, id } of routines)
      for (const move of moves) {
        if ("speedMmPerS" in move) expect(move.speedMmPerS, id).toBeLessThanOrEqual(topSpeedMmPerS);
        if (move.kind === "turn") expect(move.rateRadPerS, id).toBeLessThanOrEqual(turnRateRadPerS);
      }
  });

  it("does not look at the time limit", () => {
    const hurried: Project = { ...usual, rules: { ...usual.rules, timeLimitS: 5 } };
    expect(makeCatalogue(hurried).routines.map(({ id }) => id)).toEqual(routines.map(({ id }) => id));
  });
});

describe("a zone in which a pattern has no room", () => {
  it("says so in words instead of giving half of it", () => {
    const { missing, routines: made } = makeCatalogue(shippedProject("long-narrow.json"));
    expect(missing.filter(({ reason }) => /room/.test(reason)).length).toBeGreaterThan(0);
    for (const { pattern, reason } of missing) {
      expect(made.some((routine) => routine.pattern === pattern)).toBe(false);
      expect(reason).toMatch(/room|^Only for a robot whose/);
    }
  });

  it("names the pushes that were left out", () => {
    const { routines: made } = makeCatalogue(shippedProject("pillar-zone.json"));
    const partial = made.filter(({ params }) => params.leftOut !== undefined);
    expect(partial.length).toBeGreaterThan(0);
    for (const { label } of partial) expect(label).toMatch(/without \d+ push(es)? that had no room$/);
  });
});
