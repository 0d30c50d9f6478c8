import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkProject } from "../../src/model/check.ts";
import type { Project } from "../../src/model/project.ts";
import type { Move, Routine } from "../../src/model/routine.ts";
import type { Corner, Wall } from "../../src/model/zone.ts";
import { nominalCourse } from "../../src/motion/course.ts";
import { generateRoutines, makeCatalogue } from "../../src/plan/catalogue.ts";
import { FAMILIES } from "../../src/plan/families.ts";
import { mirroredProject } from "../../src/plan/mirror.ts";
import { fieldNames, loadField } from "../support/workerInPage.ts";

/** Every third routine: enough to see each family, quick enough for every field. */
const sample = (routines: readonly Routine[]) => routines.filter((_, i) => i % 3 === 0);

function expectSound(project: Project, routines: readonly Routine[]): void {
  expect(new Set(routines.map(({ id }) => id)).size).toBe(routines.length);
  for (const routine of routines) {
    const { blockedMoves, durationS } = nominalCourse(project, routine.moves);
    expect(blockedMoves, routine.id).toEqual([]);
    expect(Number.isFinite(durationS), routine.id).toBe(true);
    for (const move of routine.moves) {
      for (const value of Object.values(move)) {
        if (typeof value === "number") expect(Number.isFinite(value), routine.id).toBe(true);
      }
    }
  }
}

describe("the catalogue on the shipped fields", () => {
  it.each(fieldNames)("has at least 60 feasible routines of at least seven patterns: %s", (name) => {
    const project = loadField(name);
    const routines = generateRoutines(project);
    expect(routines.length).toBeGreaterThanOrEqual(60);
    expect(new Set(routines.map(({ pattern }) => pattern)).size).toBeGreaterThanOrEqual(7);
    expectSound(project, sample(routines));
  });

  it("is the same every time", () => {
    const project = loadField("usual-zone.json");
    expect(generateRoutines(project)).toEqual(generateRoutines(project));
  });
});

/** The same moves seen in a mirror: left is right. */
function mirrored(move: Move): Move {
  return move.kind === "turn" || move.kind === "arc" ? { ...move, angleRad: -move.angleRad } : move;
}

describe("mirror images", () => {
  it.each(["usual-zone.json", "tray-corner.json", "five-mixed-balls.json"])(
    "are the same plan: %s",
    (name) => {
      const project = loadField(name);
      const here = generateRoutines(project);
      const there = generateRoutines(mirroredProject(project));
      expect(there.map(({ id }) => id)).toEqual(here.map(({ id }) => id));
      for (const [i, routine] of here.entries()) {
        const moves = there[i]?.moves ?? [];
        expect(moves.length, routine.id).toBe(routine.moves.length);
        for (const [m, move] of routine.moves.map(mirrored).entries()) {
          for (const [key, value] of Object.entries(move)) {
            const other = (moves[m] as Record<string, unknown> | undefined)?.[key];
            if (typeof value === "number") expect(other, `${routine.id} ${m} ${key}`).toBeCloseTo(value, 6);
            else expect(other, `${routine.id} ${m} ${key}`).toBe(value);
          }
        }
      }
    },
  );
});

const CORNERS: readonly Corner[] = ["lower-left", "lower-right", "upper-left", "upper-right"];
const WALLS: readonly Wall[] = ["left", "right", "bottom", "top"];

describe("any zone, corner, doorway and robot", () => {
  it("gives feasible routines, or says which pattern has no room and why", () => {
    const base = loadField("usual-zone.json");
    const world = fc.record({
      widthMm: fc.integer({ min: 800, max: 2200 }),
      heightMm: fc.integer({ min: 800, max: 1800 }),
      corner: fc.constantFrom(...CORNERS),
      wall: fc.constantFrom(...WALLS),
      alongFrac: fc.double({ min: 0.15, max: 0.85, noNaN: true }),
      bodyMm: fc.integer({ min: 110, max: 190 }),
      plateMm: fc.integer({ min: 120, max: 230 }),
    });
    let tried = 0;
    fc.assert(
      fc.property(world, ({ widthMm, heightMm, corner, wall, alongFrac, bodyMm, plateMm }) => {
        const length = wall === "left" || wall === "right" ? heightMm : widthMm;
        const project: Project = {
          ...base,
          zone: {
            ...base.zone,
            widthMm,
            heightMm,
            doorway: { wall, centreMm: Math.round(alongFrac * length), widthMm: 250 },
            wedge: { ...base.zone.wedge, corner, legXMm: 280, legYMm: 280 },
          },
          robot: {
            ...base.robot,
            shape: {
              kind: "plate",
              bodyLengthMm: bodyMm,
              bodyWidthMm: bodyMm,
              axleFromRearMm: bodyMm / 2,
              plateWidthMm: plateMm,
              plateReachMm: 25,
            },
            entry: { alongMm: 0, insetMm: bodyMm / 2 + 15, headingRad: 0 },
          },
        };
        fc.pre(checkProject(project).length === 0);
        tried++;
        const { routines, missing } = makeCatalogue(project);
        expectSound(project, sample(routines));
        const made = new Set(routines.map(({ pattern }) => pattern));
        const absent = new Set(missing.map(({ pattern }) => pattern));
        for (const { pattern } of FAMILIES)
          expect(made.has(pattern) || absent.has(pattern), pattern).toBe(true);
        for (const { reason } of missing) expect(reason).not.toBe("");
        expect(routines.length).toBeGreaterThan(0);
      }),
      { seed: 41, numRuns: 12 },
    );
    expect(tried).toBeGreaterThanOrEqual(12);
  });
});
