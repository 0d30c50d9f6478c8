import { describe, expect, it } from "vitest";
import { runCommand, runForJson } from "../support/command.ts";

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
