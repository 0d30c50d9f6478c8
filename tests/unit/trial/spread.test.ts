import { describe, expect, it } from "vitest";
import {
  ballBounce,
  ballFriction,
  robotBounce,
  robotFriction,
  rollDecel,
  slideDecel,
  wallBounce,
  wallFriction,
} from "../../../src/trial/balls.kernel.ts";
import { compileTrial } from "../../../src/trial/compile.ts";
import { loadBalls, loadPlan } from "../../../src/trial/load.kernel.ts";
import { placementOf } from "../../../src/trial/run.ts";
import { shippedProject } from "../../support/projectFiles.ts";
import { routineOf } from "../../support/scene.ts";

const TRIALS = 1500;

/** What each trial has of what nobody measured, over the same without spread: one row a trial. */
function drawn(options: { spread?: boolean } = {}) {
  const project = shippedProject("usual-zone.json");
  const plan = compileTrial(project, routineOf([]), options);
  const plain = compileTrial(project, routineOf([]), { spread: false });
  const read = (of: typeof plan, index: number) => {
    loadPlan(of);
    loadBalls(of, 1, index, placementOf(of, 1, index));
    const frictions = [robotFriction[0]!, wallFriction[0]!, ballFriction[0]!];
    const bounces = [robotBounce[0]!, wallBounce[0]!, ballBounce[0]!];
    return { frictions, bounces, floor: slideDecel[0]!, roll: rollDecel[0]! };
  };
  const stated = read(plain, 0);
  return {
    spread: project.spread,
    rows: Array.from({ length: TRIALS }, (_, index) => {
      const { frictions, bounces, floor, roll } = read(plan, index);
      return {
        faces: frictions.map((value, k) => value / stated.frictions[k]! - 1),
        bounces: bounces.map((value, k) => value - stated.bounces[k]!),
        floor: floor / stated.floor - 1,
        roll: roll / stated.roll - 1,
      };
    }),
  };
}

/** An even law over ± range: its ends are reached, its mean is 0, its variance range²/3. */
function expectEven(values: readonly number[], range: number): void {
  expect(range).toBeGreaterThan(0);
  expect(Math.max(...values)).toBeLessThanOrEqual(range + 1e-12);
  expect(Math.max(...values)).toBeGreaterThan(0.99 * range);
  expect(Math.min(...values)).toBeGreaterThanOrEqual(-range - 1e-12);
  expect(Math.min(...values)).toBeLessThan(-0.99 * range);
  const mean = values.reduce((sum, x) => sum + x, 0) / values.length;
  const variance = values.reduce((sum, x) => sum + x * x, 0) / values.length;
  // Four standard errors of so many: 1/√3 of the range each, and 0.894 of the variance.
  expect(Math.abs(mean)).toBeLessThan((4 * range) / Math.sqrt(3 * TRIALS));
  expect(Math.abs((3 * variance) / range ** 2 - 1)).toBeLessThan((4 * 0.894) / Math.sqrt(TRIALS));
}

function correlation(x: readonly number[], y: readonly number[]): number {
  const dot = (a: readonly number[], b: readonly number[]) =>
    a.reduce((sum, each, i) => sum + each * b[i]!, 0);
  return dot(x, y) / Math.sqrt(dot(x, x) * dot(y, y));
}

describe("what nobody measured", () => {
  const { rows, spread } = drawn();
  const columns = [
    rows.map(({ faces }) => faces[0]!),
    rows.map(({ floor }) => floor),
    rows.map(({ roll }) => roll),
    rows.map(({ bounces }) => bounces[0]!),
  ] as const;

  it("differs from trial to trial by default, evenly over the stated ranges", () => {
    const { frictionFrac, rollingResistanceFrac, restitution } = spread;
    for (const [k, range] of [frictionFrac, frictionFrac, rollingResistanceFrac, restitution].entries())
      expectEven(columns[k]!, range);
  });

  it("is drawn for each of the four by itself", () => {
    for (let a = 1; a < 4; a++)
      for (let b = 0; b < a; b++)
        expect(Math.abs(correlation(columns[a]!, columns[b]!))).toBeLessThan(4 / Math.sqrt(TRIALS));
  });

  it("is alike for all faces of a trial", () => {
    for (const { faces, bounces } of rows.slice(0, 50)) {
      for (const each of faces) expect(each).toBeCloseTo(faces[0]!, 12);
      const [robot, wall, ball] = bounces;
      expect(wall).toBeCloseTo(robot!, 12);
      // A ball that bounces well is not let bounce higher than it fell.
      expect(ball).toBeLessThanOrEqual(robot! + 1e-12);
    }
  });

  it("can be left as it is stated", () => {
    for (const { faces, bounces, floor, roll } of drawn({ spread: false }).rows.slice(0, 20))
      expect([...faces, ...bounces, floor, roll].every((each) => each === 0)).toBe(true);
  });
});
