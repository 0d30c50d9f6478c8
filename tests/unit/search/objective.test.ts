import { describe, expect, it } from "vitest";
import type { Project } from "../../../src/model/project.ts";
import { EVERY_BALL, EXPECTED_POINTS, homeBy } from "../../../src/search/objective.ts";
import { tossBatch } from "../../support/pretendRace.ts";
import { shippedProject } from "../../support/projectFiles.ts";

/** Two balls worth 3 and one worth 10. */
const project = {
  ...shippedProject(),
  balls: [
    { ...shippedProject().balls[0], count: 2, points: 3 },
    { ...shippedProject().balls[0], count: 1, points: 10 },
  ],
} as Project;

const batch = {
  ...tossBatch(0, 0, 1, 0, 3),
  delivered: Uint8Array.of(3, 2, 0),
  points: Float64Array.of(16, 6, 0),
};

describe("an objective", () => {
  it("scores a trial by whether every ball came home", () => {
    expect([...EVERY_BALL.scoresOf(batch, project)]).toEqual([1, 0, 0]);
    expect(EVERY_BALL.projectFor(project)).toBe(project);
  });

  it("scores a trial by its share of all points", () => {
    expect([...EXPECTED_POINTS.scoresOf(batch, project)]).toEqual([1, 6 / 16, 0]);
    const free = { ...project, balls: project.balls.map((ball) => ({ ...ball, points: 0 })) };
    expect([...EXPECTED_POINTS.scoresOf(batch, free)]).toEqual([0, 0, 0]);
  });

  it("scores a trial by the share of balls home at a second, with the clock stopped then", () => {
    const early = homeBy(40);
    expect(early.projectFor(project).rules.timeLimitS).toBe(40);
    expect(homeBy(1e6).projectFor(project).rules.timeLimitS).toBe(project.rules.timeLimitS);
    expect([...early.scoresOf(batch, project)]).toEqual([1, 2 / 3, 0]);
    expect(() => homeBy(0)).toThrow(/second 0/);
  });

  it("calls the higher mean the better one", () => {
    for (const objective of [EVERY_BALL, EXPECTED_POINTS, homeBy(10)])
      expect([objective.isBetter(0.6, 0.5), objective.isBetter(0.5, 0.5)]).toEqual([true, false]);
  });
});
