import { describe, expect, it } from "vitest";
import { generateRoutines } from "../../src/plan/catalogue.ts";
import { runCommand, runForJson, stoppedCommand } from "../support/command.ts";
import { shippedProject } from "../support/projectFiles.ts";

interface WeakJson {
  readonly trials: number;
  readonly deliveredBalls: number;
  readonly losses: readonly {
    readonly balls: number;
    readonly examples: readonly { readonly index: number }[];
  }[];
  readonly stop: { readonly best: { readonly timeS: number } };
  readonly worstWithoutDrift: readonly {
    readonly placement: readonly { readonly xMm: number; readonly yMm: number }[];
    readonly seed: number;
    readonly deliveredStill: number;
  }[];
}

/** The shortest routine of the default project: the command's work is the same, and less of it. */
const routine =
  [...generateRoutines(shippedProject())].sort((a, b) => a.moves.length - b.moves.length)[0]?.id ?? "none";
const ARGS = ["weak", "--routine", routine, "--trials", "60"];

describe("wedgeward weak", () => {
  it("gives the same for one worker and for two, and its layouts play", async () => {
    const one = await runForJson<WeakJson>(...ARGS, "--workers", "1");
    const two = await runForJson<WeakJson>(...ARGS, "--workers", "2");
    expect(two).toEqual(one);
    const lost = one.losses.reduce((sum, { balls }) => sum + balls, 0);
    expect([one.trials, one.deliveredBalls + lost]).toEqual([60, 180]);
    const [worst] = one.worstWithoutDrift;
    const at = worst?.placement.map(({ xMm, yMm }) => `${xMm},${yMm}`).join(":") ?? "";
    const played = await runForJson<{ readonly delivered: readonly boolean[]; readonly placement: object[] }>(
      ...["trial", "--routine", routine, "--at", at, "--still", "--seed", `${worst?.seed}`, "--index", "0"],
    );
    expect(played.placement).toEqual(worst?.placement);
    expect(played.delivered.filter(Boolean)).toHaveLength(worst?.deliveredStill ?? -1);
  });

  it("says it in words", async () => {
    const { code, stdout } = await runCommand(...ARGS);
    expect(code).toBe(0);
    expect(stdout).toMatch(/\d+ of 180 balls lost in 60 trials, seed 1/);
    expect(stdout).toMatch(/Best moment to stop and leave: after move \d+ of \d+/);
    expect(stdout).toMatch(/Largest blind spots:\n {2}around \d+, \d+ mm/);
    expect(stdout).toMatch(/Layouts that beat it even without drift, scored on fresh seeds/);
  });

  it("stopped with Ctrl-C prints what is known", async () => {
    const ended = await stoppedCommand(["weak", "--routine", routine, "--trials", "1000000", "--json"]);
    expect(ended.code).toBe(130);
    const known = JSON.parse(ended.stdout) as WeakJson & { readonly stopped: boolean };
    expect(known.stopped).toBe(true);
    expect(known.trials).toBeLessThan(1_000_000);
  });

  it("refuses places that are none", async () => {
    const trial = ["trial", "--routine", routine, "--seed", "1", "--index", "0", "--at"];
    const few = await runCommand(...trial, "100,200:300,400");
    expect([few.code, few.stderr]).toEqual([2, expect.stringMatching(/one place for each ball/)]);
    const outside = await runCommand(...trial, "100,200:300,400:5000,10");
    expect([outside.code, outside.stderr]).toEqual([2, expect.stringMatching(/--at/)]);
  });
});
