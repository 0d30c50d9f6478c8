import { describe, expect, it } from "vitest";
import { parseProjectFile } from "../../../src/model/parse.ts";
import type { Project } from "../../../src/model/project.ts";
import type { Move } from "../../../src/model/routine.ts";
import type { DistanceSensor } from "../../../src/model/sensor.ts";
import { SENSOR_PRESETS } from "../../../src/model/sensorPresets.ts";
import { serialiseProject } from "../../../src/model/serialise.ts";
import { compileTrial } from "../../../src/trial/compile.ts";
import { robotAt } from "../../../src/trial/playback.ts";
import { recordTrial } from "../../../src/trial/run.ts";
import { startingAt } from "../../support/approach.ts";
import { PLAIN_ROBOT, routineOf } from "../../support/scene.ts";
import { SHARP_EYE } from "../../support/sensingScene.ts";

const RIGHT = -Math.PI / 2;
const sharp = { ...SHARP_EYE, alongMm: 0, headingRad: RIGHT } as DistanceSensor;
const usual: DistanceSensor = { ...SENSOR_PRESETS["ultrasonic-echo"], headingRad: RIGHT };

/** Tracks bend its way, otherwise each time, by 1/10 000 mm: 6° a metre. */
const BENDING = {
  ...PLAIN_ROBOT.drift,
  systematic: { ...PLAIN_ROBOT.drift.systematic, curvatureSdRadPerMm: 1 / 10_000 },
};

interface Way {
  /** Distance of the axle from the wall on the right at the start, and heading off it. */
  readonly fromMm?: number;
  readonly tiltRad?: number;
  readonly sensors?: readonly DistanceSensor[];
  readonly drift?: Project["robot"]["drift"];
  readonly move?: Move;
  readonly balls?: readonly { readonly x: number; readonly y: number }[];
}

/** Wants to keep 200 mm from the lower wall, from x = 250 on. */
const KEEPING: Move = {
  kind: "drive",
  distanceMm: 650,
  speedMmPerS: 200,
  beside: { sensor: 0, readsMm: 200 },
};

function planOf(way: Way) {
  const { fromMm = 200, tiltRad = 0, sensors = [sharp], drift = PLAIN_ROBOT.drift, move = KEEPING } = way;
  const project = startingAt(
    { x: 250, y: fromMm, headingRad: tiltRad },
    {
      zone: { doorway: { wall: "bottom", centreMm: 1000, widthMm: 200 } },
      robot: { drift },
      balls: way.balls ?? [{ x: 600, y: 850 }],
    },
  );
  const robot = { ...project.robot, sensors };
  return compileTrial({ ...project, robot }, routineOf([move]));
}

/** Offset from the line, to the left, and heading at the end. */
function endOf(way: Way, index = 0): { readonly offMm: number; readonly tiltRad: number } {
  const { outcome, recording } = recordTrial(planOf(way), 4, index);
  const { yMm, headingRad } = robotAt(recording, outcome.timeS);
  return { offMm: yMm - 200, tiltRad: headingRad };
}

describe("a way beside a wall", () => {
  it.each([
    { fromMm: 230, tiltRad: 0 },
    { fromMm: 170, tiltRad: 0 },
    { fromMm: 200, tiltRad: 0.05 },
    { fromMm: 215, tiltRad: -0.06 },
  ])("leads a robot that is off by $fromMm, $tiltRad back to its line", (way) => {
    const { offMm, tiltRad } = endOf(way);
    expect(Math.abs(offMm)).toBeLessThan(4);
    expect(Math.abs(tiltRad)).toBeLessThan(0.015);
    // Without the sensor it goes on as it is.
    expect(Math.abs(endOf({ ...way, sensors: [] }).offMm)).toBeGreaterThan(14);
  });

  it("is kept driving backward too", () => {
    const move: Move = { ...KEEPING, distanceMm: -650 };
    const start = { fromMm: 225, tiltRad: 0.03, move };
    const project = { ...start, balls: [{ x: 600, y: 850 }] };
    const plan = planOf(project);
    const [x, y] = [1000, 225];
    const entry = { ...plan.entry, xMm: x, yMm: y };
    const { outcome, recording } = recordTrial({ ...plan, entry }, 4, 0);
    const end = robotAt(recording, outcome.timeS);
    expect(end.xMm).toBeLessThan(360);
    expect(Math.abs(end.yMm - 200)).toBeLessThan(4);
    expect(Math.abs(end.headingRad)).toBeLessThan(0.015);
  });

  it("is kept by a usual sensor with tracks that bend it", () => {
    const rms = (way: Way, of: (end: ReturnType<typeof endOf>) => number) =>
      Math.sqrt(Array.from({ length: 40 }, (_, i) => of(endOf(way, i)) ** 2).reduce((a, b) => a + b) / 40);
    const [blind, seeing] = [
      { drift: BENDING, sensors: [] },
      { drift: BENDING, sensors: [usual] },
    ];
    expect(rms(blind, (end) => end.offMm)).toBeGreaterThan(15);
    expect(rms(seeing, (end) => end.offMm)).toBeLessThan(9);
    expect(rms(seeing, (end) => end.tiltRad)).toBeLessThan(0.55 * rms(blind, (end) => end.tiltRad));
  });

  it("is not left for a ball that lies between robot and wall", () => {
    const { offMm, tiltRad } = endOf({ fromMm: 205, balls: [{ x: 600, y: 40 }] });
    expect(Math.abs(offMm)).toBeLessThan(5);
    expect(Math.abs(tiltRad)).toBeLessThan(0.015);
  });

  it("is driven like any other without a sensor that looks to a side", () => {
    const plain: Move = { kind: "drive", distanceMm: 650, speedMmPerS: 200 };
    const ahead = { ...sharp, headingRad: 0 };
    const hash = (way: Way) => recordTrial(planOf({ drift: BENDING, ...way }), 4, 1).outcome.hash;
    expect(hash({ sensors: [ahead] })).toBe(hash({ sensors: [ahead], move: plain }));
    expect(hash({ sensors: [sharp] })).not.toBe(hash({ sensors: [sharp], move: plain }));
  });

  it("ends flush on the wall ahead where it is to go there", () => {
    const move: Move = { ...KEEPING, kind: "toWall", distanceMm: 850, overrunMm: 60 };
    const { outcome, recording } = recordTrial(planOf({ fromMm: 220, tiltRad: 0.03, move }), 4, 0);
    const end = robotAt(recording, outcome.timeS);
    expect(end.headingRad).toBeCloseTo(0, 6);
    expect(Math.abs(end.yMm - 200)).toBeLessThan(6);
    expect(outcome.stalls).toBe(0);
  });

  it("stands in project files, sensors counted from 1", () => {
    const project = planOf({ sensors: [usual, { ...usual, name: "other" }] }).project;
    const beside = { sensor: 1, readsMm: 123.4 };
    const moves: readonly Move[] = [
      { kind: "drive", distanceMm: 300, speedMmPerS: 100, beside },
      { kind: "toWall", distanceMm: -300, overrunMm: -20, speedMmPerS: 100, beside },
    ];
    const routine = { id: "own-1", pattern: "own", label: "own", params: {}, moves };
    const text = serialiseProject(project, [routine]);
    expect(text).toMatch(/"beside":\s*\{\s*"sensor": 2,\s*"readsMm": 123\.4/);
    const parsed = parseProjectFile(text);
    expect(parsed.ok && parsed.value.routines[0]?.moves).toEqual(moves);
  });
});
