import { describe, expect, test } from "vitest";
import { offsetOf } from "../../src/geometry/offset.ts";
import { type Region, regionContains } from "../../src/geometry/region.ts";
import type { Project } from "../../src/model/project.ts";
import type { Move } from "../../src/model/routine.ts";
import { RandomStream } from "../../src/num/stream.ts";
import { RoutineMaker } from "../../src/plan/maker.ts";
import { type DriftBounds, driftBounds } from "../../src/score/driftBounds.ts";
import { sureCoverage } from "../../src/score/sureCoverage.ts";
import { shippedProject } from "../support/projectFiles.ts";
import { RealPath } from "../support/realPath.ts";

const drive = (distanceMm: number): Move => ({ kind: "drive", distanceMm, speedMmPerS: 150 });
const turn = (angleRad: number): Move => ({ kind: "turn", angleRad, rateRadPerS: 1 });
const arc = (distanceMm: number, angleRad: number): Move => ({
  kind: "arc",
  distanceMm,
  angleRad,
  speedMmPerS: 150,
});
const toWall = (distanceMm: number, overrunMm = 60): Move => ({
  kind: "toWall",
  distanceMm,
  overrunMm: distanceMm < 0 ? -overrunMm : overrunMm,
  speedMmPerS: 150,
});

/** Lanes with square-ups on both far walls, a long run beside a wall, arcs either way, a run back over the same ground. */
const LANES: readonly Move[] = [
  drive(300),
  turn(-Math.PI / 2),
  toWall(-90),
  drive(700),
  drive(-600),
  arc(250, 1.2),
  arc(-200, -0.7),
  drive(150),
];

/** Over to the left wall in a gentle bend, and then close beside it, so that drift pushes the robot against it. */
const BESIDE_WALL: readonly Move[] = [
  drive(30),
  arc(150, 0.2),
  arc(150, -0.2),
  drive(280),
  drive(-150),
  { kind: "wait", durationS: 1 },
  drive(150),
];

/** For a robot that needs more room to turn. */
const OPEN_LANES: readonly Move[] = [
  drive(330),
  turn(0.9),
  drive(250),
  turn(-0.9),
  drive(300),
  drive(-400),
  turn(0.6),
  drive(200),
];

interface Case {
  readonly name: string;
  readonly project: Project;
  readonly moves: readonly Move[];
  readonly sds: number;
  readonly drifts: number;
}

const usual = shippedProject();
const plate = shippedProject("plate-robot.json");
const picked = (id: string): readonly Move[] => new RoutineMaker(usual).make(id)?.moves ?? [];

const CASES: readonly Case[] = [
  { name: "lanes, arms, one sd", project: usual, moves: LANES, sds: 1, drifts: 40_000 },
  { name: "lanes, arms, three sd", project: usual, moves: LANES, sds: 3, drifts: 25_000 },
  { name: "lanes, a plate, one sd", project: plate, moves: OPEN_LANES, sds: 1, drifts: 15_000 },
  { name: "beside a wall, one and a half sd", project: usual, moves: BESIDE_WALL, sds: 1.5, drifts: 13_000 },
  {
    name: "hooks with square-ups, a third of an sd",
    project: usual,
    moves: picked("herd-outer-c0-q-b-v100"),
    sds: 0.3,
    drifts: 3500,
  },
  {
    name: "rings, a tenth of an sd",
    project: usual,
    moves: picked("ringin-long-v100"),
    sds: 0.1,
    drifts: 3500,
  },
];

/** Points of a region: its corners, moved in by a hair, and as many from all over it. */
function pointsOf(region: Region, stream: RandomStream, zone: Project["zone"]): number[] {
  const points = offsetOf(region, -0.06, "inside").flatMap((ring) => [...ring]);
  const corners = points.length;
  while (points.length < 2 * corners) {
    const x = zone.widthMm * stream.uniform();
    const y = zone.heightMm * stream.uniform();
    if (regionContains(region, x, y)) points.push(x, y);
  }
  return points;
}

/** Points looked at under each drift. */
const POINTS = 4;
/** Chords for arcs in the path looked at, mm. */
const SLACK_MM = 0.09;

describe.each(CASES)("a sure point: $name", ({ name, project, moves, sds, drifts }) => {
  const bounds = driftBounds(project.robot.drift, sds);
  const coverage = sureCoverage(project, { moves }, bounds);
  const followed = moves.slice(0, coverage.endsAt?.move ?? moves.length);
  const [size] = coverage.sizes;
  const radiusMm = (size?.diameterMm ?? 0) / 2;
  const path = new RealPath(project, followed);
  const stream = new RandomStream();

  test(`is touched under each of ${drifts} drifts`, () => {
    expect(followed.length).toBeGreaterThan(3);
    expect(coverage.sureFrac).toBeGreaterThan(0.03);
    stream.open(
      17,
      CASES.findIndex((each) => each.name === name),
      0,
    );
    const points = pointsOf(size?.sure ?? [], stream, project.zone);
    const missed: string[] = [];
    for (let drift = 0; drift < drifts; drift++) {
      // Half of them at the very ends of all bounds.
      const pick = (): number =>
        drift % 2 === 0 ? (stream.uniform() < 0.5 ? -1 : 1) : 2 * stream.uniform() - 1;
      const poses = path.drive(bounds, pick);
      for (let k = 0; k < POINTS; k++) {
        const at = 2 * stream.below(points.length / 2);
        const x = points[at] ?? 0;
        const y = points[at + 1] ?? 0;
        if (!path.touches(poses, x, y, radiusMm + SLACK_MM)) missed.push(`drift ${drift}: ${x}, ${y}`);
      }
    }
    expect(missed.slice(0, 5)).toEqual([]);
  });

  test("and one that is never touched is not", () => {
    const never = size?.never ?? [];
    if (coverage.endsAt !== null) {
      expect(never).toEqual([]);
      return;
    }
    stream.open(18, 0, 0);
    const points = pointsOf(never, stream, project.zone);
    expect(points.length).toBeGreaterThan(20);
    let touched = 0;
    for (let drift = 0; drift < 500; drift++) {
      const poses = path.drive(bounds, () => (stream.uniform() < 0.5 ? -1 : 1));
      const at = 2 * stream.below(points.length / 2);
      if (path.touches(poses, points[at] ?? 0, points[at + 1] ?? 0, radiusMm - SLACK_MM)) touched++;
    }
    expect(touched).toBe(0);
  });
});

test("a hundred thousand drifts are looked at", () => {
  expect(CASES.reduce((sum, { drifts }) => sum + drifts, 0)).toBe(100_000);
});

/** Ten times the start error, so that the certificate must not hold: the test can fail. */
test("a point that is sure within narrow bounds is missed under wider ones", () => {
  const narrow = driftBounds(usual.robot.drift, 1);
  const wide: DriftBounds = { ...narrow, startMm: 60 };
  const moves = LANES.slice(0, 1);
  const [size] = sureCoverage(usual, { moves }, narrow).sizes;
  const stream = new RandomStream().open(5, 0, 0);
  const points = pointsOf(size?.sure ?? [], stream, usual.zone);
  const path = new RealPath(usual, moves);
  let missed = 0;
  for (let drift = 0; drift < 500; drift++) {
    const poses = path.drive(wide, () => (stream.uniform() < 0.5 ? -1 : 1));
    const at = 2 * stream.below(points.length / 2);
    if (!path.touches(poses, points[at] ?? 0, points[at + 1] ?? 0, (size?.diameterMm ?? 0) / 2 + SLACK_MM))
      missed++;
  }
  expect(missed).toBeGreaterThan(10);
});
