import { describe, expect, it } from "vitest";
import type { Project } from "../../../src/model/project.ts";
import type { Move } from "../../../src/model/routine.ts";
import { nominalCourse } from "../../../src/motion/course.ts";
import type { Pose } from "../../../src/motion/pose.ts";
import { surroundingsOf } from "../../../src/motion/surroundings.ts";
import { Walker } from "../../../src/motion/walker.ts";
import { startingAt } from "../../support/approach.ts";
import { PLAIN_ROBOT, type SceneOptions, sceneProject } from "../../support/scene.ts";

/** Plain robot: plate 180 wide, its face 120 ahead of the axle, body 140 wide from 60 behind the axle. */
const FACE = 120;
const REAR = 60;
const WIDTH = 1200;
const HEIGHT = 900;

const project = sceneProject({ balls: [{ x: 300, y: 300 }] });
const toWall = (distanceMm: number, overrunMm = 0): Move => ({
  kind: "toWall",
  distanceMm,
  overrunMm,
  speedMmPerS: 100,
});
const drive = (distanceMm: number): Move => ({ kind: "drive", distanceMm, speedMmPerS: 100 });
const at = (xMm: number, yMm: number, headingRad: number): Pose => ({ xMm, yMm, headingRad });

/** How far the robot's hull reaches beyond the walls, the doorway in the lower one left open, mm; negative: clear of them. */
function beyondWalls(of: Project, { xMm, yMm, headingRad }: Pose): number {
  const { whole } = surroundingsOf(of.zone, of.robot);
  const [c, s] = [Math.cos(headingRad), Math.sin(headingRad)];
  let most = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < whole.count; i++) {
    const x = xMm + c * whole.x[i]! - s * whole.y[i]!;
    const y = yMm + s * whole.x[i]! + c * whole.y[i]!;
    const { centreMm, widthMm } = of.zone.doorway;
    const inDoorway = y < 0 && Math.abs(x - centreMm) < widthMm / 2;
    most = Math.max(most, -x, x - of.zone.widthMm, inDoorway ? most : -y, y - of.zone.heightMm);
  }
  return most;
}

describe("driving against a wall", () => {
  it("squares up: whatever the heading error, the face ends flat on the wall", () => {
    for (const error of [-0.3, -0.05, -1e-6, 0, 1e-9, 0.01, 0.2, 0.35]) {
      const walker = new Walker(project, at(800, 400, error));
      const walked = walker.advance(toWall(280, 120));
      expect(walked, `${error}`).toEqual({ touched: true, stalled: true, flush: true });
      // Both ends of the face touch within 0.004 mm: over 180 mm that is 0.00002 rad.
      expect(Math.abs(walker.pose.headingRad)).toBeLessThan(2.3e-5);
      expect(walker.pose.xMm).toBeCloseTo(WIDTH - FACE, 2);
    }
  });

  it("takes its time whether or not it moves: tracks slip, the clock runs, and the way back counts from the wall", () => {
    const walker = new Walker(project, at(800, 400, 0));
    walker.advance(toWall(280, 120));
    // 400 mm at 100 mm/s and 500 mm/s²: 4 s and one ramp of 0.2 s.
    expect(walker.timeS).toBeCloseTo(4.2, 12);
    const back = walker.advance(drive(-150));
    expect(back.touched).toBe(false);
    expect(walker.pose.xMm).toBeCloseTo(WIDTH - FACE - 150, 2);
    expect(walker.pose.yMm).toBeCloseTo(400, 9);
  });

  it("does not square up in the time of the nominal way: it stops where the move ends", () => {
    const walker = new Walker(project, at(800, 400, 0.3));
    const walked = walker.advance(toWall(275));
    expect(walked.touched).toBe(true);
    expect(walked.stalled).toBe(false);
    expect(walker.pose.headingRad).toBeGreaterThan(0.001);
    expect(walker.pose.headingRad).toBeLessThan(0.3);
    expect(beyondWalls(project, walker.pose)).toBeLessThan(0.07);
    // A further push finishes it.
    walker.advance(toWall(60));
    expect(walker.pose.headingRad).toBeCloseTo(0, 9);
  });

  it("squares up backward on the rear edge", () => {
    const walker = new Walker(project, at(400, 400, 0.15));
    expect(walker.advance(toWall(-360, -80))).toEqual({ touched: true, stalled: true, flush: true });
    expect(walker.pose.headingRad).toBeCloseTo(0, 9);
    expect(walker.pose.xMm).toBeCloseTo(REAR, 2);
  });

  it("at a glancing angle lays the side along the wall and goes on along it", () => {
    const walker = new Walker(project, at(1080, 150, 1.45));
    const walked = walker.advance(drive(600));
    expect(walked).toEqual({ touched: true, stalled: false, flush: false });
    expect(walker.pose.headingRad).toBeGreaterThan(1.5);
    expect(walker.pose.headingRad).toBeLessThan(Math.PI / 2 + 1e-9);
    expect(walker.pose.yMm).toBeGreaterThan(740);
    expect(beyondWalls(project, walker.pose)).toBeLessThan(0.07);
  });

  it("never leaves the robot in a wall, from wherever it comes", () => {
    // A doorway too narrow to get into.
    const closed: Project = {
      ...project,
      zone: { ...project.zone, doorway: { wall: "bottom", centreMm: 130, widthMm: 20 } },
    };
    for (let n = 0; n < 400; n++) {
      const heading = (n * 2 * Math.PI) / 400 + 0.001;
      const walker = new Walker(closed, at(600, 450, heading));
      for (const move of [
        drive(700),
        drive(-30),
        toWall(200, 50),
        { kind: "turn", angleRad: 0.9, rateRadPerS: 1 },
      ] as Move[]) {
        walker.advance(move);
        expect(beyondWalls(closed, walker.pose), `heading ${heading}, ${move.kind}`).toBeLessThan(0.07);
      }
    }
  });
});

describe("a corner", () => {
  it("holds the robot that drives toward it: it stalls, and reverses off", () => {
    const walker = new Walker(project, at(700, 500, 0.6));
    const walked = walker.advance(toWall(900, 300));
    expect(walked.stalled).toBe(true);
    const { xMm, yMm, headingRad } = walker.pose;
    expect(beyondWalls(project, walker.pose)).toBeLessThan(0.07);
    expect(beyondWalls(project, walker.pose)).toBeGreaterThan(-0.01);
    const back = walker.advance(drive(-100));
    expect(back.stalled).toBe(false);
    expect(walker.pose.xMm).toBeCloseTo(xMm - 100 * Math.cos(headingRad), 1);
    expect(walker.pose.yMm).toBeCloseTo(yMm - 100 * Math.sin(headingRad), 1);
  });

  it("held by both walls at once, it turns no further, however it came in", () => {
    const drive0 = { ...PLAIN_ROBOT.drive, trackContactMm: 0 };
    const wheeled = sceneProject({ robot: { drive: drive0 }, balls: [{ x: 300, y: 300 }] });
    for (const [aside, heading] of [
      [0, Math.PI / 4 + 0.02],
      [20, Math.PI / 4 + 0.06],
      [-20, Math.PI / 4 - 0.06],
    ] as const) {
      const walker = new Walker(wheeled, at(880 - aside, 580 + aside, heading));
      expect(walker.advance(toWall(600, 200)).stalled).toBe(true);
      const { xMm, yMm, headingRad } = walker.pose;
      const tip = (side: number) => ({
        xMm: xMm + FACE * Math.cos(headingRad) - side * 90 * Math.sin(headingRad),
        yMm: yMm + FACE * Math.sin(headingRad) + side * 90 * Math.cos(headingRad),
      });
      expect(tip(-1).xMm, `${heading}`).toBeCloseTo(WIDTH, 1);
      expect(tip(1).yMm, `${heading}`).toBeCloseTo(HEIGHT, 1);
      const back = walker.advance(drive(-100));
      expect(back.touched).toBe(false);
      expect(walker.pose.headingRad).toBe(headingRad);
    }
  });

  it("takes a robot that is flush on one wall and driven along it into the other", () => {
    const walker = new Walker(project, at(800, 400, 0));
    walker.advance(toWall(280, 60));
    for (const move of [
      drive(-110),
      { kind: "turn", angleRad: Math.PI / 2, rateRadPerS: 1 },
      toWall(500, 60),
    ] as Move[])
      walker.advance(move);
    expect(walker.pose.headingRad).toBeCloseTo(Math.PI / 2, 9);
    expect(walker.pose.yMm).toBeCloseTo(HEIGHT - FACE, 2);
  });
});

describe("a crooked stall", () => {
  // Long tracks with much grip sideways: too stiff to be turned by the push of one corner.
  const stiff = sceneProject({
    robot: {
      drive: { ...PLAIN_ROBOT.drive, trackContactMm: 200, lateralFrictionCoeff: 1.2, tractionCoeff: 0.3 },
    },
    balls: [{ x: 300, y: 300 }],
  });

  it("keeps the heading; the robot reverses off as it came", () => {
    const walker = new Walker(stiff, at(800, 400, 0.2));
    const walked = walker.advance(toWall(280, 120));
    expect(walked).toEqual({ touched: true, stalled: true, flush: false });
    expect(walker.pose.headingRad).toBe(0.2);
    expect(beyondWalls(stiff, walker.pose)).toBeLessThan(0.002);
    const { xMm } = walker.pose;
    expect(walker.advance(drive(-80)).touched).toBe(false);
    expect(walker.pose.xMm).toBeCloseTo(xMm - 80 * Math.cos(0.2), 9);
  });
});

describe("along a wall", () => {
  it("a curve into it is guided: the robot keeps its heading and slides on", () => {
    const beside = at(WIDTH - 90, 200, Math.PI / 2);
    const walker = new Walker(project, beside);
    // To the right, into the wall that the plate's end touches.
    walker.advance({ kind: "arc", distanceMm: 400, angleRad: -0.4, speedMmPerS: 100 });
    expect(walker.pose.headingRad).toBeCloseTo(Math.PI / 2, 6);
    expect(walker.pose.yMm).toBeCloseTo(600, 1);
    expect(walker.pose.xMm).toBeCloseTo(WIDTH - 90, 1);
  });

  it("a curve away from it is free", () => {
    const walker = new Walker(project, at(WIDTH - 95, 200, Math.PI / 2));
    const walked = walker.advance({ kind: "arc", distanceMm: 400, angleRad: 0.4, speedMmPerS: 100 });
    expect(walked.touched).toBe(false);
    expect(walker.pose.headingRad).toBeCloseTo(Math.PI / 2 + 0.4, 12);
  });

  it("curves of any kind end in their time, whether they meet a wall, leave it or stall", () => {
    let met = 0;
    for (let n = 0; n < 600; n++) {
      const heading = ((n % 40) * 2 * Math.PI) / 40 + 0.01;
      const angleRad = ((n * 7) % 31) / 5 - 3;
      const distanceMm = n % 3 === 0 ? -350 : 500;
      const walker = new Walker(project, at(300 + ((n * 37) % 600), 300 + ((n * 53) % 300), heading));
      const arc: Move = { kind: "arc", distanceMm, angleRad, speedMmPerS: 100 };
      const walked = walker.advance(arc);
      if (walked.touched) met++;
      const path = walker.lastPath();
      expect(path.length).toBeLessThan(120);
      // Its pieces follow upon each other from the first second to the last, or to the stall.
      expect(path[0]!.startS).toBe(0);
      for (const [i, piece] of path.entries()) {
        expect(piece.endS).toBeGreaterThanOrEqual(piece.startS);
        if (i > 0) expect(piece.startS).toBe(path[i - 1]!.endS);
      }
      if (!walked.stalled) expect(path.at(-1)!.endS, `curve ${n}`).toBeCloseTo(walker.timeS, 9);
      expect(beyondWalls(project, walker.pose), `curve ${n}`).toBeLessThan(0.07);
    }
    expect(met).toBeGreaterThan(200);
  });

  it("a straight touches nothing new and is driven to its end", () => {
    const walker = new Walker(project, at(WIDTH - 90, 200, Math.PI / 2));
    expect(walker.advance(drive(400)).stalled).toBe(false);
    expect(walker.pose.yMm).toBeCloseTo(600, 9);
  });
});

describe("a turn on the spot", () => {
  it("stalls where a corner of the robot meets the wall, and turns back", () => {
    const walker = new Walker(project, at(WIDTH - 95, 400, Math.PI / 2));
    const walked = walker.advance({ kind: "turn", angleRad: -Math.PI / 2, rateRadPerS: 1 });
    expect(walked).toEqual({ touched: true, stalled: true, flush: false });
    expect(beyondWalls(project, walker.pose)).toBeLessThan(0.002);
    expect(beyondWalls(project, walker.pose)).toBeGreaterThan(-0.002);
    // The corner (face, −90) is 150 mm from the axle, the wall 95 mm: cos of the angle between them.
    const turned = Math.acos(95 / Math.hypot(FACE, 90)) - Math.atan2(-90, FACE);
    expect(walker.pose.headingRad).toBeCloseTo(turned, 4);
    walker.advance({ kind: "turn", angleRad: 0.2, rateRadPerS: 1 });
    expect(walker.pose.headingRad).toBeCloseTo(turned + 0.2, 4);
  });
});

describe("the wedge's edge", () => {
  const shelf: SceneOptions["zone"] = {
    widthMm: 1000,
    heightMm: 1000,
    wedge: {
      corner: "upper-right",
      legXMm: 400,
      legYMm: 400,
      profile: "shelf",
      lipMm: 2,
      riseMm: 4,
      runMm: 20,
    },
  };
  const from = { x: 400, y: 400, headingRad: Math.PI / 4 + 0.1 };

  it("stops the ground outline, squares it up, and lets the pusher reach over it", () => {
    const over = startingAt(from, { zone: shelf, balls: [{ x: 300, y: 300 }] });
    const walker = new Walker(over);
    const walked = walker.advance(toWall(600, 100));
    expect(walked).toEqual({ touched: true, stalled: true, flush: true });
    expect(walker.pose.headingRad).toBeCloseTo(Math.PI / 4, 9);
    // The edge is (x + y)/√2 = 1600/√2; the body's front is 100 ahead of the axle, the plate 120.
    const along = (walker.pose.xMm + walker.pose.yMm) / Math.SQRT2;
    expect(along).toBeCloseTo(1600 / Math.SQRT2 - 100, 2);
  });

  it("does not stop a robot that climbs, nor one before a mark on the floor", () => {
    const climbing = startingAt(from, {
      zone: shelf,
      robot: { climbsWedge: true },
      balls: [{ x: 300, y: 300 }],
    });
    const mark = { ...shelf, wedge: { ...shelf.wedge!, profile: "flat", lipMm: 0, riseMm: 0 } as const };
    for (const free of [climbing, startingAt(from, { zone: mark, balls: [{ x: 300, y: 300 }] })]) {
      const walker = new Walker(free);
      expect(walker.advance(drive(400)).touched).toBe(false);
    }
  });
});

describe("the nominal course", () => {
  it("names the moves that met something without meaning to", () => {
    const moves: Move[] = [
      drive(200),
      toWall(600, 40),
      drive(-50),
      drive(300),
      { kind: "wait", durationS: 1 },
    ];
    const start = startingAt({ x: 500, y: 400, headingRad: 0 }, { balls: [{ x: 300, y: 300 }] });
    const course = nominalCourse(start, moves);
    expect(course.blockedMoves).toEqual([3]);
    expect(course.moveStartS).toHaveLength(5);
    expect(course.end.xMm).toBeCloseTo(WIDTH - FACE, 2);
    for (const [n, piece] of course.pieces.entries()) {
      expect(piece.endS).toBeGreaterThanOrEqual(piece.startS);
      const before = course.pieces[n - 1];
      if (before === undefined) continue;
      expect(piece.startS).toBeGreaterThanOrEqual(before.endS - 1e-9);
      expect(Math.hypot(piece.from.xMm - before.to.xMm, piece.from.yMm - before.to.yMm)).toBeLessThan(0.07);
    }
  });

  it("describes rotations by their fixed point and angle", () => {
    const start = startingAt({ x: 500, y: 400, headingRad: 0.3 }, { balls: [{ x: 300, y: 300 }] });
    const course = nominalCourse(start, [
      { kind: "turn", angleRad: -1, rateRadPerS: 1 },
      { kind: "arc", distanceMm: 100, angleRad: 0.5, speedMmPerS: 100 },
    ]);
    const [spin, arc] = course.pieces;
    expect([spin!.kind, arc!.kind]).toEqual(["rotation", "rotation"]);
    expect([spin!.centreXMm, spin!.centreYMm, spin!.angleRad]).toEqual([500, 400, -1]);
    expect(arc!.angleRad).toBeCloseTo(0.5, 12);
    for (const end of [arc!.from, arc!.to]) {
      expect(Math.hypot(end.xMm - arc!.centreXMm, end.yMm - arc!.centreYMm)).toBeCloseTo(200, 9);
    }
  });
});
