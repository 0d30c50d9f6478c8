import { describe, expect, it } from "vitest";
import { catalogueIds } from "../../../src/plan/catalogueIds.ts";
import { recipeOf } from "../../../src/plan/recipe.ts";
import { entryOrder } from "../../../src/search/entryOrder.ts";
import { variedIds } from "../../../src/search/variedIds.ts";
import { shippedProject } from "../../support/projectFiles.ts";

const project = shippedProject();
const ids = catalogueIds(project);

describe("the candidates of a race", () => {
  it("are at least five hundred in the default project, each once", () => {
    const all = [...ids, ...variedIds(project, ids)];
    expect(all.length).toBeGreaterThanOrEqual(500);
    expect(new Set(all).size).toBe(all.length);
  });

  it("can be made: each is the id of a recipe", () => {
    for (const id of variedIds(project, ids)) expect(recipeOf(project, id)).not.toBeNull();
  });

  it("vary speed and dials over all their range", () => {
    const speeds = variedIds(project, ids).map((id) => recipeOf(project, id)?.speedFrac ?? 0);
    expect(Math.max(...speeds) - Math.min(...speeds)).toBeGreaterThan(0.35);
    expect(new Set(speeds).size).toBeGreaterThan(30);
  });

  it("show every pattern before any pattern's second, and leave none out", () => {
    const ordered = entryOrder(ids);
    expect([...ordered].sort()).toEqual([...ids].sort());
    const patterns = new Set(ids.map((id) => id.split("-")[0]));
    const first = ordered.slice(0, patterns.size).map((id) => id.split("-")[0]);
    expect(new Set(first)).toEqual(patterns);
    expect(entryOrder([])).toEqual([]);
  });
});
