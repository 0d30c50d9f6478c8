import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Project } from "../../src/model/project.ts";
import { nominalCourse } from "../../src/motion/course.ts";
import { routineDurationS } from "../../src/motion/duration.ts";
import type { Pose } from "../../src/motion/pose.ts";
import { Walker } from "../../src/motion/walker.ts";
import { arms } from "../../src/trial/arms.kernel.ts";
import { compileTrial } from "../../src/trial/compile.ts";
import { robot } from "../../src/trial/robot.kernel.ts";
import { mirroredMove, mirroredProject } from "../support/mirror.ts";
import { overlapWatch } from "../support/overlaps.ts";
import { watchTrial } from "../support/probe.ts";
import { routineOf } from "../support/scene.ts";
import { anyMove, anyMoves, anyProject } from "../support/worlds.ts";

/** How far a pivoting robot may stray into a wall, and jump back when its next move begins, mm. */
const STRAY_MM = 0.07;

function apart(a: Pose, b: Pose): number {
  return Math.hypot(a.xMm - b.xMm, a.yMm - b.yMm) + Math.abs(a.headingRad - b.headingRad);
}

/** Where the trial's robot would overlap something, set to a pose by hand, hinged arms at an angle. */
function depthAt(project: Project, pose: Pose, armsRad: number): number {
  const plan = compileTrial(project, routineOf([]), { drift: false });
  Object.assign(robot, {
    x: pose.xMm,
    y: pose.yMm,
    c: Math.cos(pose.headingRad),
    s: Math.sin(pose.headingRad),
  });
  arms.angle = armsRad;
  const found = overlapWatch(plan)().filter(({ what }) => what.endsWith("and robot"));
  return Math.max(...found.map(({ depthMm }) => depthMm));
}

describe("the path of a robot without drift", () => {
  it("stays out of walls, blocks and the wedge, takes the time the routine takes, and hangs together", () => {
    fc.assert(
      fc.property(anyProject, anyMoves, (project, moves) => {
        const course = nominalCourse(project, moves);
        expect(course.durationS).toBeCloseTo(routineDurationS(project.robot.drive, moves), 9);
        for (const [n, piece] of course.pieces.entries()) {
          expect(depthAt(project, piece.to, course.armsRad[piece.move] ?? 0)).toBeLessThan(STRAY_MM);
          expect(piece.startS).toBeGreaterThanOrEqual(course.moveStartS[piece.move]! - 1e-9);
          expect(piece.endS).toBeGreaterThanOrEqual(piece.startS);
          const before = course.pieces[n - 1];
          if (before === undefined) continue;
          expect(apart(before.to, piece.from)).toBeLessThan(STRAY_MM);
          expect(piece.startS).toBeGreaterThanOrEqual(before.endS - 1e-9);
        }
      }),
      { seed: 61, numRuns: 150 },
    );
  });

  it("is made of straight lines and rotations about the centres it names", () => {
    fc.assert(
      fc.property(anyProject, anyMoves, (project, moves) => {
        for (const { kind, from, to, centreXMm, centreYMm, angleRad } of nominalCourse(project, moves)
          .pieces) {
          expect(to.headingRad - from.headingRad).toBeCloseTo(angleRad, 9);
          const [dx, dy] = [to.xMm - from.xMm, to.yMm - from.yMm];
          if (kind === "line") {
            expect(Math.abs(dx * Math.sin(from.headingRad) - dy * Math.cos(from.headingRad))).toBeLessThan(
              1e-9,
            );
            continue;
          }
          // A drift of a millionth makes circles of a kilometre: rounding grows with the radius.
          const radius = Math.hypot(from.xMm - centreXMm, from.yMm - centreYMm);
          const [c, s] = [Math.cos(angleRad), Math.sin(angleRad)];
          const [rx, ry] = [from.xMm - centreXMm, from.yMm - centreYMm];
          expect(Math.abs(centreXMm + c * rx - s * ry - to.xMm)).toBeLessThan(1e-9 + 1e-11 * radius);
          expect(Math.abs(centreYMm + s * rx + c * ry - to.yMm)).toBeLessThan(1e-9 + 1e-11 * radius);
        }
      }),
      { seed: 62, numRuns: 150 },
    );
  });

  it("is the mirror image in a mirrored project", () => {
    fc.assert(
      fc.property(anyProject, anyMoves, (project, moves) => {
        const plain = nominalCourse(project, moves);
        const image = nominalCourse(mirroredProject(project), moves.map(mirroredMove));
        expect(image.blockedMoves).toEqual(plain.blockedMoves);
        expect(image.end.xMm).toBeCloseTo(project.zone.widthMm - plain.end.xMm, 6);
        expect(image.end.yMm).toBeCloseTo(plain.end.yMm, 6);
        const turned = image.end.headingRad + plain.end.headingRad - Math.PI;
        expect(Math.abs(Math.sin(turned))).toBeLessThan(1e-9);
      }),
      { seed: 63, numRuns: 150 },
    );
  });

  it("is the one that the trial's robot drives when no ball is in its way", () => {
    fc.assert(
      fc.property(anyProject, anyMoves, (project, moves) => {
        const course = nominalCourse(project, moves);
        // Balls far outside: they touch nothing.
        const placement = compileTrial(project, routineOf(moves)).kinds.map((_, i) => ({
          xMm: 5e4 + 500 * i,
          yMm: 5e4,
        }));
        const unhurried = { ...project, rules: { ...project.rules, timeLimitS: 3600 } };
        const plan = compileTrial(unhurried, routineOf(moves), { drift: false, placement });
        let end: Pose = course.end;
        watchTrial(plan, 1, 0, () => {
          end = { xMm: robot.x, yMm: robot.y, headingRad: robot.heading };
        });
        // The walker takes sine and cosine of the heading anew with each move: a wall may be touched 0.001 mm sooner or later.
        expect(Math.hypot(end.xMm - course.end.xMm, end.yMm - course.end.yMm)).toBeLessThan(0.002);
        expect(Math.abs(Math.sin((end.headingRad - course.end.headingRad) / 2))).toBeLessThan(3e-5);
      }),
      { seed: 64, numRuns: 100 },
    );
  });
});

describe("a walker", () => {
  it("knows beforehand whether a move is clear, and how far it may drive", () => {
    fc.assert(
      fc.property(anyProject, anyMoves, anyMove, (project, moves, next) => {
        const walker = new Walker(project);
        for (const move of moves) walker.advance(move);
        const start = walker.pose;
        const clear = walker.isClear(next);
        const ahead = walker.freeWayMm(1);
        expect(walker.advance(next).touched).toBe(!clear);
        for (const [wayMm, touches] of [
          [ahead - 0.01, false],
          [ahead + 0.05, true],
        ] as const) {
          if (wayMm < 0.01 || ahead > 5000) continue;
          const again = new Walker(project, start);
          expect(again.advance({ kind: "drive", distanceMm: wayMm, speedMmPerS: 100 }).touched).toBe(touches);
        }
      }),
      { seed: 65, numRuns: 200 },
    );
  });

  it("comes back the way it went, where the way is free", () => {
    fc.assert(
      fc.property(anyProject, anyMoves, anyMove, (project, moves, there) => {
        const walker = new Walker(project);
        for (const move of moves) walker.advance(move);
        const start = walker.pose;
        if (
          there.kind === "wait" ||
          there.kind === "arms" ||
          there.kind === "toWall" ||
          walker.advance(there).touched
        )
          return;
        const back =
          there.kind === "drive"
            ? { ...there, distanceMm: -there.distanceMm }
            : there.kind === "turn"
              ? { ...there, angleRad: -there.angleRad }
              : { ...there, distanceMm: -there.distanceMm, angleRad: -there.angleRad };
        // What it touched at the start it may touch again a little sooner.
        const met = walker.advance(back).touched;
        expect(apart(walker.pose, start)).toBeLessThan(met ? STRAY_MM : 1e-6);
      }),
      { seed: 66, numRuns: 200 },
    );
  });
});
