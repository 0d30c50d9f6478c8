import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { runCommand, runForJson } from "../support/command.ts";
import { tempDirectory } from "../support/tempDirectory.ts";

interface PocketsJson {
  readonly project: string;
  readonly columns: number;
  readonly rows: number;
  readonly homeMm2: number;
  readonly wedgeMm2: number;
  readonly noPushMm2: number;
  readonly deadLowMm2: number;
  readonly deadHighMm2: number;
  readonly meanSeconds: number;
  readonly slowestSeconds: number;
}

describe("wedgeward pockets", () => {
  it("sums up the map of the default project", async () => {
    const pockets = await runForJson<PocketsJson>("pockets");
    expect(pockets).toMatchObject({ project: "The usual zone", columns: 117, rows: 87 });
    const { homeMm2, wedgeMm2, noPushMm2, deadLowMm2, deadHighMm2 } = pockets;
    // Together they are all places of the centre: 1160 × 860 mm², the wedge's being those over it: (300² − what the walls keep off)/2.
    expect(homeMm2 + wedgeMm2 + noPushMm2 + deadLowMm2).toBeCloseTo(1160 * 860, 3);
    expect(wedgeMm2 / ((280 - 20) ** 2 / 2)).toBeCloseTo(1, 1);
    expect(homeMm2).toBeGreaterThan(0.8 * 1160 * 860);
    expect(deadLowMm2).toBeLessThanOrEqual(deadHighMm2);
    expect(pockets.meanSeconds).toBeLessThan(pockets.slowestSeconds);
  });

  it("says it in words for another project", async () => {
    const { code, stdout, stderr } = await runCommand("pockets", "plate-robot");
    expect({ code, stderr }).toEqual({ code: 0, stderr: "" });
    expect(stdout).toContain("pushed home");
    expect(stdout).toContain("out of the robot's reach");
  });
});

interface PushJson {
  readonly placement: readonly { readonly xMm: number; readonly yMm: number }[];
  readonly moves: readonly object[];
  readonly trips: readonly { readonly balls: readonly number[]; readonly homeS: number }[];
  readonly leftOut: readonly number[];
  readonly timeS: number;
  readonly delivered: readonly boolean[];
}

describe("wedgeward push", () => {
  it("plans for a drawn layout, and for the same in a file", async () => {
    const drawn = await runForJson<PushJson>("push", "--placement", "random", "--seed", "4");
    expect(drawn.trips.length).toBeGreaterThan(0);
    expect([...drawn.trips.flatMap(({ balls }) => balls), ...drawn.leftOut].sort()).toEqual([0, 1, 2]);
    const file = join(tempDirectory(), "balls.json");
    writeFileSync(file, JSON.stringify(drawn.placement));
    expect(await runForJson<PushJson>("push", "usual-zone", "--placement", file)).toEqual(drawn);
  });

  it("prints trips and moves with their times", async () => {
    const { code, stdout, stderr } = await runCommand("push", "--placement", "random", "--seed", "4");
    expect({ code, stderr }).toEqual({ code: 0, stderr: "" });
    expect(stdout).toMatch(/^The usual zone: \d of 3 balls in \d trips?, \d+\.\d s in all/);
    expect(stdout).toMatch(/Trip 1: ball \d at \d+, \d+ mm.*; home after \d+\.\d s/);
    expect(stdout).toMatch(/Run without drift: \d of 3 balls home\./);
  });

  it("lists all that is wrong with the balls", async () => {
    const none = await runCommand("push");
    expect([none.code, none.stderr]).toEqual([2, expect.stringMatching(/--placement/)]);
    const file = join(tempDirectory(), "bad.json");
    writeFileSync(file, '[{ "xMm": -5, "yMm": 300 }, { "xMm": "a", "yMm": 3 }]');
    const bad = await runCommand("push", "--placement", file);
    expect([bad.code, bad.stderr]).toEqual([
      2,
      expect.stringMatching(/one place for each ball[\s\S]*\[1\]\.xMm/i),
    ]);
  });
});
