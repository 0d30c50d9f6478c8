import { describe, expect, it } from "vitest";
import type { Project } from "../../../src/model/project.ts";
import type { Move, Routine } from "../../../src/model/routine.ts";
import { nominalCourse } from "../../../src/motion/course.ts";
import { routineDurationS } from "../../../src/motion/duration.ts";
import { generateRoutines } from "../../../src/plan/catalogue.ts";
import { FUNCTIONS } from "../../../src/report/coder/functions.ts";
import { listing } from "../../../src/report/coder/listing.ts";
import { type CoderStep, type StepSheet, stepSheet } from "../../../src/report/coder/steps.ts";
import { stepCsv, stepJson, stepRows } from "../../../src/report/coder/stepTable.ts";
import { compileTrial } from "../../../src/trial/compile.ts";
import { robotAt } from "../../../src/trial/playback.ts";
import { recordTrial } from "../../../src/trial/run.ts";
import { shippedProject } from "../../support/projectFiles.ts";
import { PLAIN_ROBOT, routineOf, sceneProject } from "../../support/scene.ts";
import { moveOfWheels, movesOfCsv, movesOfListing, wheelsOfCsv } from "../../support/stepInterpreter.ts";

const PATH_MM = 0.1;

/** Moves of every kind, in a hall without walls near by, and numbers that do not come out even. */
const EVERY_KIND: readonly Move[] = [
  { kind: "drive", distanceMm: 400 / 3, speedMmPerS: 170 },
  { kind: "turn", angleRad: -1 / 3, rateRadPerS: 7 },
  { kind: "arc", distanceMm: 700 / 3, angleRad: 1 / 7, speedMmPerS: 900 },
  { kind: "wait", durationS: 1 / 3 },
  { kind: "arc", distanceMm: -500 / 3, angleRad: -2 / 3, speedMmPerS: 90 },
  { kind: "drive", distanceMm: -800 / 7, speedMmPerS: 30 },
  { kind: "turn", angleRad: 8 / 3, rateRadPerS: 0.4 },
];

/** The steps of a routine that is a list of moves. */
function plain(sheet: StepSheet): readonly CoderStep[] {
  return sheet.steps.filter((line) => line.kind === "do");
}

function hall(drift = PLAIN_ROBOT.drift): Project {
  const side = 9000;
  return sceneProject({
    zone: { widthMm: side, heightMm: side, doorway: { wall: "bottom", centreMm: side / 2, widthMm: 400 } },
    robot: { drift, entry: { alongMm: 0, insetMm: side / 2, headingRad: 0.3 } },
    balls: [{ x: 300, y: 300 }],
  });
}

function besideOf(move: Move) {
  return "beside" in move ? move.beside : undefined;
}

/** Greatest distance between two courses at the ends of their moves. */
function apartMm(project: Project, a: readonly Move[], b: readonly Move[]): number {
  expect(b).toHaveLength(a.length);
  let most = 0;
  for (let n = 1; n <= a.length; n++) {
    const [p, q] = [a, b].map((moves) => nominalCourse(project, moves.slice(0, n)).end);
    most = Math.max(most, Math.hypot(p!.xMm - q!.xMm, p!.yMm - q!.yMm));
  }
  return most;
}

/** Ways beside a wall, by sensors 2 and 1. */
const BESIDE: readonly Move[] = [
  { kind: "drive", distanceMm: 600, speedMmPerS: 200, beside: { sensor: 1, readsMm: 132.6 } },
  { kind: "drive", distanceMm: -800 / 7, speedMmPerS: 30, beside: { sensor: 0, readsMm: 90 } },
  {
    ...{ kind: "toWall", distanceMm: 500, overrunMm: 40, speedMmPerS: 120 },
    beside: { sensor: 1, readsMm: 77.5 },
  },
];

const usual = shippedProject();
const made = generateRoutines(usual);
const longest = [...made].sort((a, b) => b.moves.length - a.moves.length)[0]!;
const cases: readonly (readonly [string, Project, Routine])[] = [
  ["every kind of move", hall(), routineOf(EVERY_KIND)],
  ["ways beside a wall", hall(), routineOf(BESIDE)],
  ["the longest routine of the usual zone", usual, longest],
  ["a fan of the usual zone", usual, made.find(({ id }) => id.startsWith("fan"))!],
];

describe.each(cases)("%s, written out and read again", (_, project, routine) => {
  const sheet = stepSheet(project, routine);

  it.each(["python", "c", "pseudo"] as const)("gives the same path as %s", (language) => {
    const moves = movesOfListing(listing(sheet, language), language);
    expect(apartMm(project, routine.moves, moves)).toBeLessThan(PATH_MM);
    expect(moves.map(besideOf)).toEqual(routine.moves.map(besideOf));
  });

  it("gives the same path and time as CSV and JSON", () => {
    const moves = movesOfCsv(stepCsv(sheet));
    expect(apartMm(project, routine.moves, moves)).toBeLessThan(PATH_MM);
    expect(moves.map(besideOf)).toEqual(routine.moves.map(besideOf));
    expect(routineDurationS(project.robot.drive, moves)).toBeCloseTo(sheet.durationS!, 1);
    const json = JSON.parse(JSON.stringify(stepJson(sheet))) as {
      steps: { call: keyof typeof FUNCTIONS; args: Record<string, number> }[];
    };
    const text = json.steps.map(({ call, args }) => {
      const params: readonly string[] = FUNCTIONS[call].params;
      return `${call}(${params.map((param) => args[param]).join(", ")})`;
    });
    const again = movesOfListing(["def routine():", ...text].join("\n"), "python");
    expect(apartMm(project, routine.moves, again)).toBeLessThan(1e-6);
  });
});

describe("wheel degrees", () => {
  const drift = {
    ...PLAIN_ROBOT.drift,
    systematic: {
      ...PLAIN_ROBOT.drift.systematic,
      distanceScaleMean: -0.03,
      turnScaleMean: -0.22,
      curvatureMeanRadPerMm: 4e-5,
    },
  };

  it("take the robot with its mean drift along the path that was planned, by the trial's own drive", () => {
    const project = hall(drift);
    const { drive } = project.robot;
    const rows = wheelsOfCsv(stepCsv(stepSheet(project, routineOf(EVERY_KIND))));
    const commanded = rows.map((row) => moveOfWheels(row, drive.gaugeMm, drive.wheelDiameterMm));
    const { recording } = recordTrial(compileTrial(project, routineOf(commanded)), 0, 0);
    const end = robotAt(recording, recording.durationS);
    const wanted = nominalCourse(project, EVERY_KIND).end;
    expect(Math.hypot(end.xMm - wanted.xMm, end.yMm - wanted.yMm)).toBeLessThan(PATH_MM);
    expect(Math.sin(end.headingRad - wanted.headingRad)).toBeCloseTo(0, 5);
    // Told the plan itself, that robot ends centimetres away.
    const { recording: plain } = recordTrial(compileTrial(project, routineOf(EVERY_KIND)), 0, 0);
    const lost = robotAt(plain, plain.durationS);
    expect(Math.hypot(lost.xMm - wanted.xMm, lost.yMm - wanted.yMm)).toBeGreaterThan(20);
  });

  // Borenstein, Everett, Feng, Where am I? (1996), eqs 1.2 to 1.7: dU = (dR + dL)/2, dθ = (dR − dL)/b; r 0.045 m: one turn of the
  // wheel is 0.282743 m. references.md P8.5.
  it("turn once for 282.743 mm on wheels of 90 mm", () => {
    const robot = { ...PLAIN_ROBOT, drive: { ...PLAIN_ROBOT.drive, wheelDiameterMm: 90 } };
    const project = sceneProject({ robot, balls: [] });
    const sheet = stepSheet(project, routineOf([{ kind: "drive", distanceMm: 282.743, speedMmPerS: 100 }]));
    expect(plain(sheet)[0]!.wheels!.leftDeg).toBeCloseTo(360, 3);
    expect(plain(sheet)[0]!.wheels!.rightDeg).toBeCloseTo(360, 3);
  });

  // 308 of 2464 ticks each way on wheels of r 0.05 m, b 0.2 m turn the robot by π/8 = 0.392699 rad (public course code). P8.6.
  it("turn 45° each way for a spin of π/8 where r is 50 mm and the gauge 200 mm", () => {
    const robot = { ...PLAIN_ROBOT, drive: { ...PLAIN_ROBOT.drive, wheelDiameterMm: 100, gaugeMm: 200 } };
    const project = sceneProject({ robot, balls: [] });
    const spin: Move = { kind: "turn", angleRad: 0.392699, rateRadPerS: 1 };
    const { leftDeg, rightDeg } = plain(stepSheet(project, routineOf([spin])))[0]!.wheels!;
    expect(rightDeg).toBeCloseTo((308 / 2464) * 360, 4);
    expect(leftDeg).toBe(-rightDeg);
  });

  it("turn the wheels further by the slip of the tracks: an effective gauge 1.31 times as wide", () => {
    // Mandow et al., IROS 2007, Table I: efficiency 0.761 on asphalt, a track of 0.4 m acts as one of 0.526 m. references.md P10.6.
    const slipping = { ...drift, systematic: { ...drift.systematic, turnScaleMean: 0.761 - 1 } };
    const robot = { ...PLAIN_ROBOT, drift: slipping, drive: { ...PLAIN_ROBOT.drive, gaugeMm: 400 } };
    const { gain } = stepSheet(sceneProject({ robot, balls: [] }), routineOf([]));
    expect(gain.effectiveGaugeMm / 1000).toBeCloseTo(0.526, 3);
    expect(gain.wheelDegPerTurnDeg).toBeCloseTo(gain.effectiveGaugeMm / 40, 9);
  });
});

describe("what a coder reads", () => {
  const sheet = stepSheet(hall(), routineOf(EVERY_KIND));

  it("announces every function it calls, and no others", () => {
    for (const language of ["python", "c"] as const) {
      const [head, body] = listing(sheet, language).split(/^(?:def routine|void routine).*$/m);
      const called = new Set([...body!.matchAll(/^ {4}(\w+)\(/gm)].map((match) => match[1]!));
      expect([...called].sort()).toEqual(["curve", "drive", "turn", "wait"]);
      for (const name of Object.keys(FUNCTIONS)) {
        expect(new RegExp(`\\b${name}\\(`).test(head!), `${language} ${name}`).toBe(called.has(name));
      }
    }
  });

  it("never asks for more than the drive can do", () => {
    const { topSpeedMmPerS, wheelDiameterMm } = PLAIN_ROBOT.drive;
    const most = (topSpeedMmPerS * 360) / (Math.PI * wheelDiameterMm);
    for (const { wheels } of plain(sheet)) {
      if (wheels !== null) expect(wheels.wheelDegPerS).toBeLessThanOrEqual(most * (1 + 1e-12));
    }
  });

  it("rounds in the table, which people read, and only there", () => {
    const odd = routineOf([
      { kind: "turn", angleRad: (-59.6538 * Math.PI) / 180, rateRadPerS: (100 * Math.PI) / 180 },
      { kind: "drive", distanceMm: 1221.999, speedMmPerS: 150 },
    ]);
    const steps = stepSheet(hall(), odd);
    expect(stepRows(steps).map(([, words]) => words)).toEqual([
      "do",
      "turn right 59.7 deg at 100 deg/s",
      "drive forward 1222 mm at 150 mm/s",
    ]);
    expect(steps.steps.map(({ words }) => words)).toEqual([
      "turn right 59.6538 deg at 100 deg/s",
      "drive forward 1221.999 mm at 150 mm/s",
    ]);
    expect(stepCsv(steps)).toContain("-59.6538");
  });

  it("numbers the steps as the drawing does, and adds up their seconds", () => {
    const rows = stepRows(sheet);
    expect(rows.slice(1).map(([number]) => number)).toEqual(EVERY_KIND.map((_, i) => String(i + 1)));
    expect(sheet.durationS).toBeCloseTo(routineDurationS(PLAIN_ROBOT.drive, EVERY_KIND), 9);
    expect(rows[4]!.slice(2, 5)).toEqual(["", "", ""]);
  });
});
