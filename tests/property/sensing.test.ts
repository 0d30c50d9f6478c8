import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { linesOf, type Program, type Step } from "../../src/model/program.ts";
import type { Project } from "../../src/model/project.ts";
import type { Routine } from "../../src/model/routine.ts";
import { SENSOR_PRESETS } from "../../src/model/sensorPresets.ts";
import { RoutineMaker } from "../../src/plan/maker.ts";
import { sensingIds } from "../../src/plan/sensingPlan.ts";
import { compileTrial } from "../../src/trial/compile.ts";
import { runFates } from "../../src/trial/fates.ts";
import { moveAt, robotAt } from "../../src/trial/playback.ts";
import { recordTrial, runBatch, runTrial } from "../../src/trial/run.ts";
import { mirroredPoints, mirroredProject } from "../support/mirror.ts";
import { shippedProject } from "../support/projectFiles.ts";
import { routineOf } from "../support/scene.ts";
import { SHARP_EYE } from "../support/sensingScene.ts";
import { anyMoves, anyProject } from "../support/worlds.ts";

const SEED = 11;
const corner = "upper-right";

function made(project: Project, id: string): Routine {
  const routine = new RoutineMaker(project).make(id);
  if (routine === null) throw new Error(`no room for ${id}`);
  return routine;
}

const SENSING = [
  ["looking-robot.json", "look-n1-fan"],
  ["unknown-corner.json", "find-n1-none"],
] as const;

describe.each(SENSING)("%s, %s", (name, id) => {
  const project = shippedProject(name);
  const routine = made(project, id);

  it("is in the list of ids, with the moves of a robot that sees nothing", () => {
    expect(sensingIds(project)).toContain(id);
    expect(routine.program?.length).toBeGreaterThan(0);
    expect(routine.moves.length).toBeGreaterThan(0);
  });

  it("the same seed gives the same trial, alone, in any order and in a batch", () => {
    const plan = compileTrial(project, routine);
    const alone = [0, 1, 2, 3].map((index) => runTrial(plan, SEED, index));
    const again = compileTrial(project, routine);
    for (const index of [3, 1, 0, 2]) expect(runTrial(again, SEED, index)).toEqual(alone[index]);
    const whole = runBatch(plan, SEED, 0, 4);
    const parts = [runBatch(again, SEED, 2, 4), runBatch(again, SEED, 0, 2)];
    expect(parts.reduce((sum, part) => (sum + part.hashLow) >>> 0, 0)).toBe(whole.hashLow);
    expect([...whole.delivered]).toEqual(alone.map(({ delivered }) => delivered.filter(Boolean).length));
  });

  it("what was driven, and from which line, is kept with the recording and can be played", () => {
    const { outcome, recording } = recordTrial(compileTrial(project, routine), SEED, 1);
    const { executed = [], lines = [] } = recording;
    expect(executed.length).toBeGreaterThan(3);
    expect(lines.length).toBe(executed.length);
    expect(recording.moveStartS.length).toBe(executed.length + 1);
    const program = linesOf(routine.program ?? []);
    for (const [i, line] of lines.entries()) {
      const step = program[line];
      expect(step).toBeDefined();
      if (step?.kind === "scan") expect(executed[i]?.kind).toBe("turn");
    }
    expect(moveAt(recording, outcome.timeS / 2)).toBeLessThan(executed.length);
    expect(Number.isFinite(robotAt(recording, outcome.timeS / 2).xMm)).toBe(true);
  });

  it("losses are put down to a line of the program", () => {
    const fates = runFates(compileTrial(project, routine), SEED, 0, 8);
    const blamed = [...fates.lossMove].map((move, i) => [move, fates.lossLine[i] ?? -1] as const);
    const count = linesOf(routine.program ?? []).length;
    expect(blamed.some(([, line]) => line >= 0)).toBe(true);
    for (const [move, line] of blamed) {
      expect(line).toBeLessThan(count);
      if (move < 0) expect(line).toBe(-1);
    }
  });
});

/** Without noise, drift and missed echoes. */
function sharp(project: Project): Project {
  return { ...project, robot: { ...project.robot, sensors: [SHARP_EYE] } };
}

describe("laws of a robot that senses", () => {
  it("a mirrored project gives the mirrored search", () => {
    const project = sharp(shippedProject("looking-robot.json"));
    const image = mirroredProject(project);
    const plan = compileTrial(project, made(project, "look-n1-none"), { drift: false });
    for (let index = 0; index < 4; index++) {
      const placement = plan.placements.draw(SEED, index);
      const one = runTrial(
        compileTrial(project, made(project, "look-n1-none"), { drift: false, placement }),
        SEED,
        index,
      );
      const other = runTrial(
        compileTrial(image, made(image, "look-n1-none"), {
          drift: false,
          placement: mirroredPoints(project.zone, placement),
        }),
        SEED,
        index,
      );
      expect(other.delivered).toEqual(one.delivered);
      expect(other.timeS).toBeCloseTo(one.timeS, 6);
    }
  });

  it("a list of moves keeps its luck when sensors are fitted that do not steer", () => {
    fc.assert(
      fc.property(anyProject, anyMoves, (project, moves) => {
        const fitted = {
          ...project,
          robot: {
            ...project.robot,
            sensors: [
              SENSOR_PRESETS["ultrasonic-echo"],
              SENSOR_PRESETS["light-barrier"],
              SENSOR_PRESETS["reflected-light"],
            ],
          },
        };
        const routine = routineOf(moves);
        expect(runTrial(compileTrial(fitted, routine), SEED, 0)).toEqual(
          runTrial(compileTrial(project, routine), SEED, 0),
        );
      }),
      { seed: 20302, numRuns: 40 },
    );
  });

  it("a program of moves alone is the list of moves, bit for bit", () => {
    fc.assert(
      fc.property(anyProject, anyMoves, (project, moves) => {
        const list = runTrial(compileTrial(project, routineOf(moves)), SEED, 0);
        const program = runTrial(compileTrial(project, { ...routineOf(moves), program: moves }), SEED, 0);
        expect(program.hash).toBe(list.hash);
        expect(program.delivered).toEqual(list.delivered);
      }),
      { seed: 20303, numRuns: 60 },
    );
  });

  it("every program ends, whatever it repeats and asks", () => {
    const leaf = fc.constantFrom<Step>(
      { kind: "wait", durationS: 0 },
      { kind: "drive", distanceMm: 30, speedMmPerS: 200 },
      { kind: "turn", angleRad: 0.5, rateRadPerS: 2 },
      { kind: "scan", angleRad: 1, rateRadPerS: 2, corner },
      { kind: "fetch", speedMmPerS: 200, corner },
    );
    const ask = fc.constantFrom(
      { kind: "seen" } as const,
      { kind: "holding" } as const,
      { kind: "overWedge" } as const,
      { kind: "shortOfTime", belowS: 10 } as const,
      { kind: "nearer", sensor: 0, thanMm: 300 } as const,
      { kind: "bumped", side: "front" } as const,
    );
    const question = fc.record({ ask, not: fc.boolean() });
    const { step } = fc.letrec<{ step: Step }>((tie) => ({
      step: fc.oneof(
        { maxDepth: 4, withCrossShrink: true },
        leaf,
        fc.record({
          kind: fc.constant("repeat" as const),
          atMost: fc.constant(100),
          until: fc.option(question),
          steps: fc.array(tie("step"), { maxLength: 3 }),
        }),
        fc.record({
          kind: fc.constant("if" as const),
          when: question,
          yes: fc.array(tie("step"), { maxLength: 2 }),
          no: fc.array(tie("step"), { maxLength: 2 }),
        }),
      ),
    }));
    const project = { ...shippedProject("looking-robot.json") };
    const short = { ...project, rules: { ...project.rules, timeLimitS: 8 } };
    fc.assert(
      fc.property(fc.array(step, { minLength: 1, maxLength: 3 }), (program: Program) => {
        const outcome = runTrial(compileTrial(short, { ...routineOf([]), program }), SEED, 0);
        expect(outcome.timeS).toBeLessThanOrEqual(8);
      }),
      { seed: 20304, numRuns: 40 },
    );
  });
});
