import { describe, expect, it } from "vitest";
import type { Program } from "../../../src/model/program.ts";
import type { Project } from "../../../src/model/project.ts";
import type { Routine } from "../../../src/model/routine.ts";
import type { Sensor } from "../../../src/model/sensor.ts";
import { Walker } from "../../../src/motion/walker.ts";
import { RoutineMaker } from "../../../src/plan/maker.ts";
import { exampleRows, exampleRun } from "../../../src/report/coder/exampleRun.ts";
import { FUNCTIONS, READINGS } from "../../../src/report/coder/functions.ts";
import { type ListingLanguage, listing } from "../../../src/report/coder/listing.ts";
import { type StepSheet, stepSheet } from "../../../src/report/coder/steps.ts";
import { stepCsv, stepJson, stepRows } from "../../../src/report/coder/stepTable.ts";
import { compileTrial } from "../../../src/trial/compile.ts";
import { robotAt } from "../../../src/trial/playback.ts";
import { recordTrial } from "../../../src/trial/run.ts";
import { runListing } from "../../support/programInterpreter.ts";
import { shippedProject } from "../../support/projectFiles.ts";
import { PLAIN_ROBOT, routineOf, sceneProject } from "../../support/scene.ts";
import { listen, ReplayTeam, type SensorLog, TimeIsUp } from "../../support/teamCode.ts";

const PATH_MM = 0.1;
const FORMS = ["python", "c", "pseudo", "csv", "json"] as const;
type Form = (typeof FORMS)[number];

const MOUNT = { acrossMm: 0, headingRad: 0 };
const SENSORS: readonly Sensor[] = [
  {
    ...{ kind: "distance", name: "eye", ...MOUNT, alongMm: 60, beamHalfRad: 0.1, nearestMm: 10 },
    ...{ rangeMm: 4000, noiseSdMm: 0, noiseSdFrac: 0, missFrac: 0, readsPerS: 40, airC: 20 },
  },
  { kind: "bump", name: "front", side: "front" },
  { kind: "bump", name: "back", side: "back" },
  { kind: "barrier", name: "gate", ...MOUNT, alongMm: 110, headingRad: 0, lengthMm: 10, wrongFrac: 0 },
  { kind: "floor", name: "below", alongMm: 0, acrossMm: 0, wrongFrac: 0 },
];

/** Asks everything there is to ask, wanting both answers, in blocks inside blocks. */
const EVERY_QUESTION: Program = [
  {
    kind: "repeat",
    atMost: 3,
    until: { ask: { kind: "bumped", side: "front" }, not: false },
    steps: [
      { kind: "drive", distanceMm: 1000 / 7, speedMmPerS: 170 },
      {
        kind: "if",
        when: { ask: { kind: "nearer", sensor: 0, thanMm: 421.5 }, not: true },
        yes: [{ kind: "turn", angleRad: -1 / 7, rateRadPerS: 1 }],
        no: [
          { kind: "toWall", distanceMm: 700, overrunMm: 40, speedMmPerS: 150 },
          { kind: "wait", durationS: 1 / 3 },
        ],
      },
      {
        kind: "if",
        when: { ask: { kind: "holding" }, not: false },
        yes: [],
        no: [{ kind: "arc", distanceMm: -400 / 7, angleRad: 0.3, speedMmPerS: 90 }],
      },
    ],
  },
  { kind: "scan", angleRad: 2 * Math.PI, rateRadPerS: 1.5, corner: "upper-right" },
  {
    kind: "repeat",
    atMost: 2,
    until: { ask: { kind: "seen" }, not: true },
    steps: [{ kind: "fetch", speedMmPerS: 200, corner: "upper-right" }],
  },
  {
    kind: "if",
    when: { ask: { kind: "shortOfTime", belowS: 12.5 }, not: true },
    yes: [
      { kind: "goTo", xMm: 700.25, yMm: 450, headingRad: 1 / 3, speedMmPerS: 200, corner: "upper-right" },
    ],
    no: [],
  },
  {
    kind: "if",
    when: { ask: { kind: "overWedge" }, not: false },
    yes: [{ kind: "drive", distanceMm: -90, speedMmPerS: 100 }],
    no: [
      { kind: "repeat", atMost: 2, until: null, steps: [{ kind: "turn", angleRad: 0.2, rateRadPerS: 1 }] },
    ],
  },
  {
    kind: "if",
    when: { ask: { kind: "bumped", side: "back" }, not: true },
    yes: [{ kind: "wait", durationS: 0.25 }],
    no: [],
  },
];

const asker = sceneProject({
  robot: { sensors: SENSORS, entry: { ...PLAIN_ROBOT.entry, insetMm: 120 } },
  balls: [
    { x: 640, y: 500 },
    { x: 420, y: 620 },
  ],
});
const made = (project: Project, id: string): Routine => new RoutineMaker(project).make(id)!;
const looking = shippedProject("looking-robot.json");
const lost = shippedProject("unknown-corner.json");

const cases: readonly (readonly [string, Project, Routine, number])[] = [
  ["every question", asker, { ...routineOf([]), program: EVERY_QUESTION }, 0],
  ["a routine that looks, fetches and sweeps", looking, made(looking, "look-n1-herd"), 5],
  ["a routine that finds the corner", lost, made(lost, "find-n1-none"), 2],
];

function textOf(sheet: StepSheet, form: Form): string {
  if (form === "csv") return stepCsv(sheet);
  return form === "json" ? JSON.stringify(stepJson(sheet)) : listing(sheet, form as ListingLanguage);
}

function replay(text: string, form: Form, log: SensorLog): ReplayTeam {
  const team = new ReplayTeam(log);
  try {
    runListing(text, form, team);
  } catch (fault) {
    if (!(fault instanceof TimeIsUp)) throw fault;
  }
  return team;
}

describe.each(cases)(
  "%s, written out, read again and run with the sensors of a run",
  (_, project, routine, index) => {
    const sheet = stepSheet(project, routine);
    const log = listen(project, routine, 1, index);
    const executed = log.recording.executed ?? [];

    it.each(FORMS)("gives the same path as %s", (form) => {
      const { moves } = replay(textOf(sheet, form), form, log);
      expect(executed.length).toBeGreaterThan(8);
      expect(moves.map(({ kind }) => kind)).toEqual(executed.map(({ kind }) => kind));
      const [told, driven] = [new Walker(log.project), new Walker(log.project)];
      for (const [i, move] of moves.entries()) {
        told.advance(move);
        driven.advance(executed[i]!);
        const apart = Math.hypot(told.pose.xMm - driven.pose.xMm, told.pose.yMm - driven.pose.yMm);
        expect(apart, `move ${i + 1}`).toBeLessThan(PATH_MM);
      }
    });

    it("takes the robot of the trial, drift and all, along the path it drove", () => {
      const { moves } = replay(textOf(sheet, "python"), "python", log);
      const { recording } = recordTrial(compileTrial(project, routineOf(moves)), 1, index);
      // Once a scan has told the robot where it is, a wall that it then meets tells it something else than a list of moves would know.
      const scan = moves.findIndex((move) => move.kind === "turn" && Math.abs(move.angleRad) > 6);
      const wall = moves.findIndex((move, i) => i > scan && move.kind === "toWall");
      const starts = log.recording.moveStartS.slice(0, wall < 0 ? undefined : wall + 1);
      expect(starts.length).toBeGreaterThan(8);
      for (const [i, startS] of starts.entries()) {
        const driven = robotAt(log.recording, startS);
        const again = robotAt(recording, recording.moveStartS[i] ?? 0);
        expect(Math.hypot(driven.xMm - again.xMm, driven.yMm - again.yMm), `move ${i}`).toBeLessThan(PATH_MM);
      }
    });

    it("numbers its lines in every form as the losses do, and announces what it calls and asks", () => {
      const numbers = stepRows(sheet)
        .slice(1)
        .flatMap(([number]) => (number === "" ? [] : [Number(number)]));
      expect(numbers).toEqual(numbers.map((__, i) => i + 1));
      const [head = "", body = ""] = listing(sheet, "c").split(/^void routine.*$/m);
      for (const name of [...Object.keys(FUNCTIONS), ...Object.keys(READINGS)])
        expect([name, new RegExp(`^\\w+ ${name}\\(`, "m").test(head)]).toEqual([
          name,
          body.includes(` ${name}(`) || body.includes(`(${name}(`) || body.includes(`!${name}(`),
        ]);
      const run = exampleRun(project, routine.program ?? [], log.recording);
      expect(exampleRows(run)).toHaveLength(1 + executed.length);
      expect(run.lines).toEqual(log.recording.lines!.map((line) => line + 1));
    });
  },
);

it("the test program asks for every reading there is", () => {
  const log = listen(asker, { ...routineOf([]), program: EVERY_QUESTION }, 1, 0);
  const team = replay(listing(stepSheet(asker, cases[0]![2]), "c"), "c", log);
  expect([...new Set(team.asked)].sort()).toEqual(Object.keys(READINGS).sort());
});
