import { describe, expect, it } from "vitest";
import { ROOMS } from "../support/rooms.ts";
import { importFindings, programFiles, purityFindings, read, seedFindings } from "../support/sourceCheck.ts";

const files = programFiles("src");
const coreRooms = ROOMS.filter((room) => room.core).map((room) => room.name);
const isCore = (path: string): boolean => coreRooms.includes(path.split("/")[1] ?? "");

const inEach = (paths: readonly string[], check: (path: string, text: string) => string[]): string[] =>
  paths.flatMap((path) => check(path, read(path)).map((finding) => `${path}:${finding}`));

describe("the rooms of src", () => {
  it("are read at all", () => {
    expect(files.filter(isCore).length).toBeGreaterThan(20);
    expect(files).toContain("src/model/project.ts");
  });

  it("import downward only, and only the packages of the table", () => {
    expect(inEach(files, importFindings)).toEqual([]);
  });

  it("are pure in the core", () => {
    expect(inEach(files.filter(isCore), purityFindings)).toEqual([]);
  });
});

describe("the check of imports", () => {
  const find = (path: string, text: string): string[] => importFindings(path, text);

  it.each([
    ["an import of a room above", "src/num/a.ts", 'import { x } from "../trial/run.ts";'],
    ["an import of a type only", "src/num/a.ts", 'import type { X } from "../trial/run.ts";'],
    ["a re-export", "src/model/a.ts", 'export * from "../motion/path.ts";'],
    ["an import at run time", "src/score/a.ts", 'const x = await import("../jobs/pool.ts");'],
    ["a package", "src/trial/a.ts", 'import planck from "planck";'],
    ["a file of the machine", "src/model/a.ts", 'import { readFileSync } from "node:fs";'],
    ["a path without extension", "src/trial/a.ts", 'import { x } from "../num/hash";'],
    ["a file outside of src", "src/trial/a.ts", 'import { x } from "../../tests/support/a.ts";'],
    ["a neighbour that must stay apart", "src/app/a.ts", 'import { x } from "../cli/main.ts";'],
    [
      "a component's script",
      "src/view/A.svelte",
      '<script lang="ts">\nimport { x } from "../app/a.ts";\n</script>',
    ],
    ["a file in no room", "src/stray.ts", ""],
  ])("finds %s", (_, path, text) => {
    expect(find(path, text)).toHaveLength(1);
  });

  it("allows what the table allows", () => {
    expect(find("src/trial/a.ts", 'import { x } from "../num/hash.ts";\nimport y from "./b.ts";')).toEqual(
      [],
    );
    expect(find("src/geometry/a.ts", 'import { union } from "clipper2-ts";')).toEqual([]);
    expect(find("src/app/a.ts", 'import usual from "../../fields/usual-zone.json?raw";')).toEqual([]);
    expect(find("src/view/a.ts", 'import "pixi.js/unsafe-eval";')).toEqual([]);
  });

  it("says where", () => {
    expect(find("src/num/a.ts", '\nimport { x } from "../trial/run.ts";')[0]).toMatch(
      /^2: num imports trial/,
    );
  });
});

describe("the check of purity", () => {
  it.each([
    "Math.sin(x)",
    "Math.hypot(x, y)",
    "Math.random()",
    "x ** 2",
    "x **= 2",
    "const { sin } = Math",
    'Math["cos"](x)',
    "Date.now()",
    "new Date()",
    "performance.now()",
    'fetch("x")',
    "globalThis.x",
    "a.localeCompare(b)",
  ])("finds %s", (text) => {
    expect(purityFindings("a.ts", text)).toHaveLength(1);
  });

  it.each([
    "Math.sqrt(x) + Math.imul(a, b)",
    "// Math.sin(x) ** 2",
    'const text = "Date.now()"',
    "own.sin(x)",
    "const key = { performance: 1 }",
    "interface A { readonly process: number }",
  ])("lets %s pass", (text) => {
    expect(purityFindings("a.ts", text)).toEqual([]);
  });
});

describe("property tests", () => {
  it("state their seed, so that a failure can be repeated", () => {
    expect(inEach(programFiles("tests"), seedFindings)).toEqual([]);
  });

  it("are found without one", () => {
    expect(seedFindings("a.ts", "fc.assert(law)")).toHaveLength(1);
    expect(seedFindings("a.ts", "fc.assert(law, { numRuns: 9 })")).toHaveLength(1);
    expect(seedFindings("a.ts", "fc.assert(law, { seed: 9 })")).toEqual([]);
    expect(
      seedFindings("a.ts", "const run = { seed: 9 } as const;\nfc.assert(law, { ...run, numRuns: 5 })"),
    ).toEqual([]);
  });
});
