import { describe, expect, it } from "vitest";
import { nominalCourse } from "../../../src/motion/course.ts";
import { candidateIds } from "../../../src/plan/candidates.ts";
import { catalogueIds } from "../../../src/plan/catalogueIds.ts";
import { turnedCode, turnedFromCode } from "../../../src/plan/dial.ts";
import { FAMILIES } from "../../../src/plan/families.ts";
import { RoutineMaker } from "../../../src/plan/maker.ts";
import { idOf, recipeOf, turnedRecipe, usualSteps } from "../../../src/plan/recipe.ts";
import { shippedProject } from "../../support/projectFiles.ts";

const usual = shippedProject();
const maker = new RoutineMaker(usual);
const make = (id: string) => {
  const routine = maker.make(id);
  if (!routine) throw new Error(`no routine ${id}`);
  return routine;
};

describe("dials in an id", () => {
  it("are read as they were written", () => {
    const turned = { spacingFrac: 83, radiusFrac: 55, standOffMm: 12 };
    expect(turnedCode(turned)).toBe("s83-r55-w12");
    expect(turnedFromCode("s83-r55-w12")).toEqual(turned);
    expect(turnedFromCode("w0")).toEqual({ standOffMm: 0 });
  });

  it.each(["", "s", "s8.5", "s083", "r55-s83", "s83-s84", "s999", "x5", "s83-"])(
    "that nothing writes are refused: %j",
    (code) => {
      expect(turnedFromCode(code)).toBeNull();
    },
  );

  it("give an id back for every recipe, and for no other", () => {
    for (const id of candidateIds(usual)) {
      const recipe = recipeOf(usual, id);
      expect(recipe && idOf(recipe)).toBe(id);
    }
    // The usual place of a dial is no turned one; the fan has no spacing; speeds go up to 100.
    for (const id of [
      "herd-all-c0-v80-at-s85",
      "fan-n5-c0-v80-at-s60",
      "fan-n5-c0-v101",
      "fan-n5-c0-v0",
      "fan-n5-c0",
      "fan-n5-c0-v80-at-w2-at-w3",
    ])
      expect(recipeOf(usual, id), id).toBeNull();
  });
});

describe("a turned dial", () => {
  const lanes = (id: string) =>
    nominalCourse(usual, make(id).moves).pieces.filter(
      ({ from, to, kind }) => kind === "line" && Math.hypot(from.xMm - to.xMm, from.yMm - to.yMm) > 400,
    ).length;

  it("lays lanes closer together: more of them", () => {
    expect(lanes("mow-long-s75-c2-v100-at-s50")).toBeGreaterThan(lanes("mow-long-s75-c2-v100"));
  });

  it("changes the curves' radius in proportion", () => {
    const widest = (id: string) =>
      Math.max(
        ...make(id).moves.map((move) =>
          move.kind === "arc" ? move.distanceMm / Math.abs(move.angleRad) : 0,
        ),
      );
    expect(widest("ringin-long-v100-at-r60") / widest("ringin-long-v100")).toBeCloseTo(60 / 90, 2);
  });

  it("keeps the robot farther from the walls", () => {
    const nearest = (id: string) =>
      Math.min(
        ...nominalCourse(usual, make(id).moves)
          .pieces.slice(4)
          .map(({ to }) => to.xMm),
      );
    expect(nearest("loop-long-v100-at-w30")).toBeGreaterThan(nearest("loop-long-v100") + 20);
  });

  it("is named in the routine's line and among its parameters", () => {
    const { label, params } = make("carry-long-s75-v87-at-s63-w12");
    expect(label).toContain("63 % of the pusher apart");
    expect(label).toContain("12 mm more room beside walls");
    expect(params).toMatchObject({ speedFrac: 0.87, spacingFrac: 0.63, standOffMm: 12 });
  });

  it("gives feasible routines or none, for every pattern at both ends", () => {
    let made = 0;
    for (const family of FAMILIES) {
      const variant = family.variants[0];
      if (!variant) throw new Error(`${family.id} has no variants`);
      const at = { family, variant, speedFrac: 1, turned: {} };
      for (const turn of [-20, 20]) {
        const turned = {
          spacingFrac: (usualSteps(variant, "spacingFrac") ?? 0) + turn,
          radiusFrac: (usualSteps(variant, "radiusFrac") ?? 0) + turn,
          standOffMm: Math.max(0, (usualSteps(variant, "standOffMm") ?? 0) + turn),
        };
        const routine = maker.make(idOf(turnedRecipe(at, 73, turned)));
        if (!routine) continue;
        made++;
        expect(nominalCourse(usual, routine.moves).blockedMoves, routine.id).toEqual([]);
      }
    }
    expect(made).toBeGreaterThan(FAMILIES.length);
  });
});

describe("the candidates of a search", () => {
  it("are at least 500, the catalogue first, each once", () => {
    const ids = candidateIds(usual);
    expect(ids.length).toBeGreaterThanOrEqual(500);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids.slice(0, catalogueIds(usual).length)).toEqual(catalogueIds(usual));
  });

  it("keep to the settings' range of speeds", () => {
    const one = { ...usual, settings: { ...usual.settings, speedFracs: [0.7] } };
    for (const id of candidateIds(one)) expect(id).toMatch(/-v70($|-at-)/);
  });
});
