import { describe, expect, it } from "vitest";
import type { Project } from "../../../src/model/project.ts";
import { serialiseProject } from "../../../src/model/serialise.ts";
import {
  changedText,
  SHIPPED,
  shippedProject,
  shippedText,
  soundProject,
} from "../../support/projectFiles.ts";

/** The same data with the keys of every object in reverse order. */
function shuffled<T>(value: T): T {
  if (Array.isArray(value)) return value.map(shuffled) as T;
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .reverse()
      .map(([key, entry]) => [key, shuffled(entry)]),
  ) as T;
}

describe("serialiseProject", () => {
  it.each(SHIPPED)("%s reads back as it was", (name) => {
    const project = shippedProject(name);
    expect(soundProject(serialiseProject(project))).toEqual(project);
  });

  it.each(SHIPPED)("%s is written as it ships", (name) => {
    expect(serialiseProject(shippedProject(name))).toBe(shippedText(name));
  });

  it("does not depend on how the project was put together", () => {
    for (const name of SHIPPED) {
      const project = shippedProject(name);
      expect(serialiseProject(shuffled(project))).toBe(serialiseProject(project));
    }
  });

  it("leaves out what no file knows", () => {
    const project = shippedProject();
    const more = { ...project, zone: { ...project.zone, colour: "red" }, selected: true } as Project;
    expect(serialiseProject(more)).toBe(serialiseProject(project));
  });

  it("writes a preset with what differs from it, and other balls in full", () => {
    const text = changedText((f) => {
      f.balls = [
        { preset: "golf", count: 1, restitution: 0.5 },
        { name: "Cork", diameterMm: 30, massKg: 0.003, build: "solid", count: 2, points: 4 },
      ];
    });
    const file = JSON.parse(serialiseProject(soundProject(text)));
    expect(file.balls[0]).toEqual({ preset: "golf", restitution: 0.5, count: 1, points: 1 });
    expect(file.balls[1]).toEqual({
      name: "Cork",
      diameterMm: 30,
      massKg: 0.003,
      build: "solid",
      rollingResistance: 0.02,
      restitution: 0.7,
      frictionCoeff: 0.25,
      floorFrictionCoeff: 0.25,
      count: 2,
      points: 4,
    });
    expect(soundProject(JSON.stringify(file))).toEqual(soundProject(text));
  });

  it("keeps texts with quotes, line breaks and any letters", () => {
    const note = 'Quotes " and \\ and\nlines, é 試 😀, \ud800 alone';
    const project = { ...shippedProject(), name: "日本 “zone”", note };
    expect(soundProject(serialiseProject(project))).toEqual(project);
  });

  it("writes points in pairs, one a line when there are many", () => {
    const text = serialiseProject(shippedProject("five-mixed-balls.json"));
    expect(text).toContain('"outlineMm": [\n        [-80, -75],\n        [90, -75],\n');
    expect(text).toContain('"pusherEdges": [3, 4, 5, 6, 7, 8, 9]');
    expect(text.endsWith("}\n")).toBe(true);
  });

  it("throws on a number that no file can hold", () => {
    const project = shippedProject();
    const broken = { ...project, rules: { ...project.rules, timeLimitS: Number.NaN } };
    expect(() => serialiseProject(broken)).toThrow(/a file cannot hold NaN/);
  });
});
