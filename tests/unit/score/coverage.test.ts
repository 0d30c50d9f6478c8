import { describe, expect, test } from "vitest";
import { regionAreaMm2, regionContains, regionOutlineMm } from "../../../src/geometry/region.ts";
import type { Ring } from "../../../src/geometry/ring.kernel.ts";
import type { Project } from "../../../src/model/project.ts";
import { ballsOf } from "../../../src/model/project.ts";
import type { Move } from "../../../src/model/routine.ts";
import { coverageOf } from "../../../src/score/coverage.ts";
import { reachableFloor } from "../../../src/score/reachable.ts";
import { shippedProject } from "../../support/projectFiles.ts";

const drive = (distanceMm: number): Move => ({ kind: "drive", distanceMm, speedMmPerS: 150 });
const turn = (angleRad: number): Move => ({ kind: "turn", angleRad, rateRadPerS: 1 });
const arc = (distanceMm: number, angleRad: number): Move => ({
  kind: "arc",
  distanceMm,
  angleRad,
  speedMmPerS: 150,
});
const toWall = (distanceMm: number): Move => ({
  kind: "toWall",
  distanceMm,
  overrunMm: 30,
  speedMmPerS: 150,
});

/** A plate robot that stands 300 mm inside a doorway in the middle of a wall, and balls of 40 mm. */
function plateProject(): Project {
  const usual = shippedProject("usual-zone.json");
  const plate = shippedProject("plate-robot.json");
  return {
    ...usual,
    zone: { ...usual.zone, doorway: { wall: "bottom", centreMm: 600, widthMm: 250 } },
    robot: { ...plate.robot, entry: { alongMm: 0, insetMm: 300, headingRad: 0 } },
  };
}

describe("where a ball's centre can lie", () => {
  const { zone } = shippedProject("usual-zone.json");

  test("is the zone without a strip along the walls and without the wedge", () => {
    // 1160 × 860, less the right triangle of legs 300 cut by strips of 20 along both: legs 300 − 40.
    const floor = reachableFloor(zone, 20);
    expect(floor.areaMm2).toBeCloseTo(1160 * 860 - (260 * 260) / 2, 1);
    expect(floor.excessMm2).toBe(0);
    expect(regionContains(floor.region, 1100, 800)).toBe(false);
    expect(regionContains(floor.region, 100, 800)).toBe(true);
  });

  test("keeps a ball's radius away from keep-outs, round their corners", () => {
    const keepOuts = [{ xMm: 300, yMm: 300, widthMm: 100, heightMm: 50 }];
    const floor = reachableFloor({ ...zone, keepOuts }, 20);
    const grown = 100 * 50 + 20 * 300 + Math.PI * 400;
    const free = 1160 * 860 - (260 * 260) / 2 - grown;
    expect(floor.areaMm2).toBeGreaterThanOrEqual(free - 0.1);
    expect(floor.areaMm2 - floor.excessMm2).toBeLessThanOrEqual(free + 0.1);
    expect(floor.excessMm2).toBeLessThan(20);
  });

  test("is nothing in a zone narrower than the ball", () => {
    expect(reachableFloor({ ...zone, widthMm: 30 }, 20)).toEqual({ region: [], areaMm2: 0, excessMm2: 0 });
  });
});

describe("coverage by hand", () => {
  const project = plateProject();
  const plateMm = 190;
  const reachable = 1160 * 860 - (260 * 260) / 2;
  const expectShare = (moves: readonly Move[], touchedMm2: number): void => {
    const { coverageFrac, errorFrac } = coverageOf(project, { moves });
    expect(Math.abs(coverageFrac - touchedMm2 / reachable)).toBeLessThanOrEqual(errorFrac);
    expect(errorFrac).toBeLessThan(2e-4);
  };

  test("a routine without moves touches what lies at the plate", () => {
    expectShare([], plateMm * 40 + Math.PI * 400);
    expectShare([{ kind: "wait", durationS: 3 }], plateMm * 40 + Math.PI * 400);
  });

  test("a straight drive touches a rounded rectangle, forth and back no more", () => {
    const rounded = plateMm * 300 + 40 * (plateMm + 300) + Math.PI * 400;
    expectShare([drive(300)], rounded);
    expectShare([drive(300), drive(-300)], rounded);
    expectShare([drive(150), { kind: "wait", durationS: 1 }, drive(150)], rounded);
  });

  test("a turn once round on the spot touches a ring", () => {
    // The plate's face lies 165 mm ahead of the axle: body 170 with the axle 75 from its rear, plate 70 further.
    const outer = Math.sqrt(165 ** 2 + (plateMm / 2) ** 2) + 20;
    expectShare([turn(Math.PI), turn(Math.PI)], Math.PI * (outer ** 2 - 145 ** 2));
  });

  test("touched and blind make up the floor", () => {
    const { sizes, touchedAreaMm2, reachableAreaMm2 } = coverageOf(project, { moves: [drive(300)] });
    const [size] = sizes;
    expect(reachableAreaMm2).toBeCloseTo(reachable, 1);
    const sum = regionAreaMm2(size?.touched ?? []) + regionAreaMm2(size?.blindSpots ?? []);
    expect(sum).toBeCloseTo(reachableAreaMm2, 0);
    expect(Math.abs(regionAreaMm2(size?.touched ?? []) - touchedAreaMm2)).toBeLessThan(100);
  });

  test("a robot without pusher edges touches nothing", () => {
    const outline = [
      { xMm: -75, yMm: -70 },
      { xMm: 95, yMm: -70 },
      { xMm: 95, yMm: 70 },
      { xMm: -75, yMm: 70 },
    ];
    const bare = {
      ...project,
      robot: { ...project.robot, shape: { kind: "polygon" as const, outline, pusherEdges: [] } },
    };
    expect(coverageOf(bare, { moves: [drive(300)] }).coverageFrac).toBe(0);
  });
});

describe("balls of several sizes", () => {
  const project = shippedProject("five-mixed-balls.json");
  const moves = [drive(300), turn(-1), drive(200)];
  const coverage = coverageOf(project, { moves });

  test("count by their number", () => {
    const diameters = ballsOf(project).map((kind) => kind.diameterMm);
    expect(coverage.sizes.map((size) => size.diameterMm)).toEqual(
      [...new Set(diameters)].sort((a, b) => a - b),
    );
    const shares = diameters.map(
      (diameter) => coverage.sizes.find((size) => size.diameterMm === diameter)?.coverageFrac ?? Number.NaN,
    );
    expect(coverage.coverageFrac).toBeCloseTo(shares.reduce((a, b) => a + b, 0) / shares.length, 12);
  });

  test("the larger ball is touched from farther away", () => {
    const touched = coverage.sizes.map((size) => size.touchedAreaMm2);
    expect(touched).toEqual([...touched].sort((a, b) => a - b));
    expect(new Set(touched).size).toBe(touched.length);
  });
});

/** Left and right swapped: a project whose robot is symmetric, and its moves. */
function mirrored(project: Project): Project {
  const { zone, robot } = project;
  const { widthMm, wedge, doorway, keepOuts } = zone;
  const corner = {
    "lower-left": "lower-right",
    "lower-right": "lower-left",
    "upper-left": "upper-right",
    "upper-right": "upper-left",
  } as const;
  const wall = { left: "right", right: "left", bottom: "bottom", top: "top" } as const;
  const level = doorway.wall === "bottom" || doorway.wall === "top";
  const { alongMm, insetMm, headingRad } = robot.entry;
  return {
    ...project,
    zone: {
      ...zone,
      wedge: { ...wedge, corner: corner[wedge.corner] },
      doorway: {
        ...doorway,
        wall: wall[doorway.wall],
        centreMm: level ? widthMm - doorway.centreMm : doorway.centreMm,
      },
      keepOuts: keepOuts.map((rect) => ({ ...rect, xMm: widthMm - rect.xMm - rect.widthMm })),
    },
    robot: {
      ...robot,
      entry: { alongMm: level ? 0 - alongMm : alongMm, insetMm, headingRad: 0 - headingRad },
    },
  };
}

const mirroredMove = (move: Move): Move =>
  move.kind === "turn" || move.kind === "arc" ? { ...move, angleRad: -move.angleRad } : move;

/** Walls, arcs, turns near the middle: every sort of piece, in zones with the doorway in different walls. */
const MOVES: readonly Move[] = [
  drive(260),
  turn(-0.9),
  toWall(900),
  drive(-150),
  turn(1.3),
  arc(350, -1.1),
  toWall(700),
  drive(-200),
  turn(2.4),
  drive(250),
  arc(-200, 0.7),
  toWall(800),
];

describe.each([
  "usual-zone.json",
  "plate-robot.json",
  "pillar-zone.json",
  "long-narrow.json",
  "tray-corner.json",
])("coverage in %s", (name) => {
  const project = shippedProject(name);
  const coverage = coverageOf(project, { moves: MOVES });

  test("is the same in the mirror", () => {
    const other = coverageOf(mirrored(project), { moves: MOVES.map(mirroredMove) });
    expect(coverage.coverageFrac).toBeGreaterThan(0.05);
    expect(other.reachableAreaMm2).toBeCloseTo(coverage.reachableAreaMm2, 0);
    // Corners on the grid round to one side; a pivot against a wall is cut into the same pieces but for rounding.
    expect(Math.abs(other.coverageFrac - coverage.coverageFrac)).toBeLessThanOrEqual(coverage.errorFrac);
  });

  test("never shrinks when the routine goes on", () => {
    let before = 0;
    for (let count = 0; count <= MOVES.length; count += 3) {
      const { coverageFrac, errorFrac } = coverageOf(project, { moves: MOVES.slice(0, count) });
      expect(coverageFrac).toBeGreaterThanOrEqual(before - errorFrac);
      before = coverageFrac;
    }
    expect(coverage.errorFrac).toBeLessThan(3e-4);
  });
});

test("a closed outline of the blind spots is a ring of pairs", () => {
  const { sizes } = coverageOf(shippedProject(), { moves: MOVES });
  const rings: readonly Ring[] = sizes.flatMap((size) => [...size.touched, ...size.blindSpots]);
  expect(rings.length).toBeGreaterThan(1);
  for (const ring of rings) {
    expect(ring.length % 2).toBe(0);
    expect(ring.length).toBeGreaterThanOrEqual(6);
  }
  expect(regionOutlineMm(rings)).toBeGreaterThan(2000);
});
