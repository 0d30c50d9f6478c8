import { expect, test } from "vitest";
import { robotOutline } from "../../src/model/outline.ts";
import { reachMm } from "../../src/model/turningRoom.ts";
import { nominalCourse } from "../../src/motion/course.ts";
import { generateRoutines } from "../../src/plan/catalogue.ts";
import { coverageOf } from "../../src/score/coverage.ts";
import { shippedProject } from "../support/projectFiles.ts";

// Tube inequality (Hotelling 1939, from memory): what lies within R of a curve of length L has at most the area 2RL + πR², so that
// a path that touches the area A has a length of (A − πR²)/(2R) at least. references.md M1.5.
test("no routine touches more than a tube around its path holds", () => {
  const project = shippedProject();
  const reach = reachMm(robotOutline(project.robot).footprint);
  // Every eighth, to keep it short.
  const routines = generateRoutines(project).filter((_, n) => n % 8 === 0);
  expect(routines.length).toBeGreaterThan(10);
  let nearest = 0;
  for (const { id, moves } of routines) {
    let lengthMm = 0;
    for (const { kind, from, centreXMm, centreYMm, to, angleRad } of nominalCourse(project, moves).pieces) {
      lengthMm +=
        kind === "line"
          ? Math.hypot(to.xMm - from.xMm, to.yMm - from.yMm)
          : Math.abs(angleRad) * Math.hypot(from.xMm - centreXMm, from.yMm - centreYMm);
    }
    for (const { touchedAreaMm2, diameterMm } of coverageOf(project, { moves }).sizes) {
      const r = reach + diameterMm / 2;
      const least = (touchedAreaMm2 - Math.PI * r * r) / (2 * r);
      expect(lengthMm, id).toBeGreaterThan(least);
      nearest = Math.max(nearest, least / lengthMm);
    }
  }
  // The bound bites: some path is less than five times as long as it must be.
  expect(nearest).toBeGreaterThan(0.2);
});
