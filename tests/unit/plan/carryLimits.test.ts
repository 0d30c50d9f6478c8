import { describe, expect, it } from "vitest";
import type { Move } from "../../../src/model/routine.ts";
import { Walker } from "../../../src/motion/walker.ts";
import { carryLimits } from "../../../src/plan/carryLimits.ts";
import { RoutineMaker } from "../../../src/plan/maker.ts";
import { carryLines } from "../../../src/report/carryWords.ts";
import { compileTrial } from "../../../src/trial/compile.ts";
import { runTrial } from "../../../src/trial/run.ts";
import { shippedProject } from "../../support/projectFiles.ts";
import { routineOf } from "../../support/scene.ts";

const arms = shippedProject("arm-robot.json");
const drive = (distanceMm: number, speedMmPerS: number): Move => ({ kind: "drive", distanceMm, speedMmPerS });
const turn = (angleRad: number, rateRadPerS: number): Move => ({ kind: "turn", angleRad, rateRadPerS });
/** Carried 300 mm, slow at the end, and turned by the rate. */
const carried = (rate: number): readonly Move[] => [drive(250, 60), turn(Math.PI / 2, rate)];

describe("carrying limits", () => {
  it("find the turn that is too fast and the stop that is too sudden, and their remedy", () => {
    const limits = carryLimits(arms, [drive(400, 250), turn(1.5, 2)]);
    expect(limits.map(({ move, why }) => [move, why])).toEqual([
      [0, "brakes"],
      [1, "turns"],
    ]);
    const [stop, swing] = limits;
    expect(stop?.reached).toBe(250);
    expect(carryLimits(arms, [drive(400, stop?.safe ?? 0), turn(1.5, swing?.safe ?? 0)])).toEqual([]);
    expect(carryLines(limits, [drive(400, 250), turn(1.5, 2)]).join("\n")).toMatch(
      /step 2, in the turn: .* deg\/s/,
    );
  });

  it("leave out what goes straight on, meets a wall, or has an empty pusher", () => {
    expect(carryLimits(arms, [drive(300, 250), drive(100, 60)])).toEqual([]);
    expect(carryLimits(arms, [drive(-100, 250), turn(1, 2)])).toEqual([]);
    const wall: Move = { kind: "toWall", distanceMm: 300, overrunMm: 40, speedMmPerS: 250 };
    expect(carryLimits(arms, [wall, drive(-100, 250), turn(1, 2)])).toEqual([]);
  });

  it("say of a plate that it keeps no ball in a turn, and of closed arms that they keep every one", () => {
    const plate = carryLimits(shippedProject("plate-robot.json"), [drive(200, 60), turn(1, 0.2)]);
    expect(plate.find(({ move }) => move === 1)).toMatchObject({ why: "turns", safe: 0 });
    const caged: readonly Move[] = [
      drive(300, 60),
      { kind: "arms", to: "closed", durationS: 0.6 },
      turn(1.5, 2),
      drive(-100, 250),
      turn(-1.5, 2),
    ];
    expect(carryLimits(shippedProject("swinging-arms.json"), caged).filter(({ move }) => move > 1)).toEqual(
      [],
    );
  });

  it("leave out a turn with nothing in the pusher: where no ball lies, or where it has been already", () => {
    const moves = [drive(300, 60), turn(1, 2), drive(100, 60)];
    expect(carryLimits(arms, moves, [{ xMm: 700, yMm: 700 }])).toEqual([]);
    expect(carryLimits(arms, moves, [{ xMm: 320, yMm: 180 }]).map(({ move }) => move)).toEqual([1]);
    const again = [drive(300, 60), drive(-300, 60), drive(300, 60), turn(1, 2)];
    expect(carryLimits(arms, again)).toEqual([]);
  });

  it("leave out a stop that lets the ball run on only to what is right ahead", () => {
    const freeMm = new Walker(arms).freeWayMm(1);
    const stopsBefore = (mm: number) => carryLimits(arms, [drive(freeMm - mm, 250)]).map(({ why }) => why);
    expect(stopsBefore(200)).toEqual(["brakes"]);
    expect(stopsBefore(20)).toEqual([]);
  });

  it("are kept by the patterns that carry: none of their moves is faster", () => {
    for (const name of ["usual-zone.json", "arm-robot.json"]) {
      const project = shippedProject(name);
      const maker = new RoutineMaker(project);
      for (const id of ["herd-all-c0-v60", "carry-long-s75-v100", "diag-s70-c2-b-v100"]) {
        const { moves = [] } = maker.make(id) ?? {};
        expect(moves.length).toBeGreaterThan(10);
        expect(carryLimits(project, moves)).toEqual([]);
      }
    }
  });

  it("make the curves of a V wide: hardly a turn is left that it would lose its ball in at any speed", () => {
    const project = shippedProject("pillar-zone.json");
    const { moves = [] } = new RoutineMaker(project).make("herd-all-c2-q-b-v60") ?? {};
    const arcs = moves.flatMap((move) => (move.kind === "arc" && move.distanceMm > 0 ? [move] : []));
    const lost = carryLimits(project, moves).filter(({ move }) => moves[move]?.kind === "arc");
    expect(arcs.length).toBeGreaterThan(8);
    expect(lost.length).toBeLessThan(3);
  });

  it("hold in the engine: the ball stays between the arms at the safe rate, and is lost at the fastest", () => {
    const safe = carryLimits(arms, carried(2)).find(({ why }) => why === "turns")?.safe ?? 0;
    expect(safe).toBeGreaterThan(0.2);
    const aheadAfter = (rate: number) => {
      const placement = [{ xMm: 320, yMm: 180 }];
      const one = { ...arms, balls: [{ ...arms.balls[0]!, count: 1 }] };
      const plan = compileTrial(one, routineOf(carried(rate)), { drift: false, spread: false, placement });
      const [end] = runTrial(plan, 1, 0).endPositions;
      // Turned left about (335, 180), the robot looks along y, its front at y = 275.
      return { aheadMm: (end?.yMm ?? 0) - 275, asideMm: Math.abs((end?.xMm ?? 0) - 335) };
    };
    const kept = aheadAfter(safe);
    expect(kept.aheadMm).toBeLessThan(93);
    expect(kept.asideMm).toBeLessThan(90);
    const lost = aheadAfter(2);
    expect(Math.max(lost.aheadMm - 93, lost.asideMm - 90)).toBeGreaterThan(0);
  });
});
