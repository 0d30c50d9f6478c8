import { describe, expect, it } from "vitest";
import type { Project } from "../../../src/model/project.ts";
import type { Beside, Move } from "../../../src/model/routine.ts";
import { sideOf } from "../../../src/model/sensor.ts";
import { nominalCourse } from "../../../src/motion/course.ts";
import { besideMoves } from "../../../src/plan/beside.ts";
import { generateRoutines } from "../../../src/plan/catalogue.ts";
import { mirroredProject } from "../../../src/plan/mirror.ts";
import { usualSideSensor } from "../../../src/plan/usualSensors.ts";
import { shippedProject } from "../../support/projectFiles.ts";

const plain = shippedProject();
const left = usualSideSensor();
const right = { ...left, headingRad: -left.headingRad };

function seeing(project: Project): Project {
  return { ...project, robot: { ...project.robot, sensors: [left, right] } };
}

function sweeps(project: Project) {
  return generateRoutines(project).filter(({ program }) => program === undefined);
}

const blind = sweeps(plain);
const made = sweeps(seeing(plain));

function besideOf(move: Move): Beside | undefined {
  return "beside" in move ? move.beside : undefined;
}

describe("routines for a robot that looks to both sides", () => {
  it("drive the same path in the same time", () => {
    expect(made.map(({ id }) => id)).toEqual(blind.map(({ id }) => id));
    const without = made.map(({ moves }) =>
      moves.map((move) => (besideOf(move) ? { ...move, beside: undefined } : move)),
    );
    expect(without).toEqual(blind.map(({ moves }) => moves));
  });

  it("keep beside walls what a ruler says, on every wall", () => {
    const { widthMm, heightMm } = plain.zone;
    const walls = new Set<string>();
    for (const { moves } of made.filter((_, i) => i % 4 === 0)) {
      const { pieces } = nominalCourse(plain, moves);
      for (const [i, move] of moves.entries()) {
        const beside = besideOf(move);
        if (!beside) continue;
        const { from } = pieces.find((piece) => piece.move === i)!;
        const side = from.headingRad + sideOf([left, right][beside.sensor]) * (Math.PI / 2);
        const [ux, uy] = [Math.cos(side), Math.sin(side)];
        const [byX, byY] = [ux > 0 ? widthMm - from.xMm : from.xMm, uy > 0 ? heightMm - from.yMm : from.yMm];
        expect(beside.readsMm).toBeCloseTo(Math.abs(ux) > 0.5 ? byX : byY, 0);
        walls.add(`${Math.round(ux)} ${Math.round(uy)}`);
      }
    }
    expect(walls.size).toBe(4);
  });

  it("are mirrored for a mirrored zone, by the sensors of the other side", () => {
    const mirrored = sweeps(mirroredProject(seeing(plain)));
    const of = (list: readonly (typeof made)[number][]) =>
      list.map(({ moves }) => moves.map((move) => besideOf(move)?.sensor));
    expect(of(mirrored)).toEqual(of(made));
  });

  it("leave alone what is short, slanting, or too far from any wall", () => {
    const way = (distanceMm: number): Move => ({ kind: "drive", distanceMm, speedMmPerS: 100 });
    const project = seeing(plain);
    const long = { ...left, rangeMm: 200 };
    const from = { xMm: 300, yMm: 150, headingRad: 0 };
    const kept = (moves: readonly Move[], at = from, sensors = [left, right]) =>
      besideMoves({ ...project, robot: { ...project.robot, sensors } }, moves, at).map(
        (move) => besideOf(move)?.sensor,
      );
    expect(kept([way(300)])).toEqual([1]);
    expect(kept([way(60), way(300)])).toEqual([undefined, 1]);
    expect(kept([way(300)], { ...from, headingRad: 0.2 })).toEqual([undefined]);
    expect(
      kept([way(300)], { ...from, yMm: 450 }, [long, { ...long, headingRad: -long.headingRad }]),
    ).toEqual([undefined]);
    expect(kept([way(300)], from, [left])).toEqual([0]);
  });
});
