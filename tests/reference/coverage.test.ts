import { describe, expect, test } from "vitest";
import { regionContains, regionOutlineMm } from "../../src/geometry/region.ts";
import { robotOutline } from "../../src/model/outline.ts";
import type { Project } from "../../src/model/project.ts";
import type { Move } from "../../src/model/routine.ts";
import { nominalCourse } from "../../src/motion/course.ts";
import { entryPose } from "../../src/motion/entry.ts";
import type { Pose } from "../../src/motion/pose.ts";
import { coverageOf } from "../../src/score/coverage.ts";
import { shippedProject } from "../support/projectFiles.ts";

/** Against the plain definition: the robot put down at many places of its way, the pusher's distance measured from a grid of points. */

const GRID_MM = 12;
/** Way of the farthest pusher corner between two places, mm. */
const STEP_MM = 1.5;

const drive = (distanceMm: number): Move => ({ kind: "drive", distanceMm, speedMmPerS: 150 });
const turn = (angleRad: number): Move => ({ kind: "turn", angleRad, rateRadPerS: 1 });
const MOVES: readonly Move[] = [
  drive(260),
  turn(-0.9),
  { kind: "toWall", distanceMm: 900, overrunMm: 30, speedMmPerS: 150 },
  drive(-150),
  turn(1.3),
  { kind: "arc", distanceMm: 350, angleRad: -1.1, speedMmPerS: 150 },
  { kind: "toWall", distanceMm: 700, overrunMm: 30, speedMmPerS: 150 },
  drive(-200),
  turn(2.4),
  drive(250),
];

type Segment = readonly [ax: number, ay: number, bx: number, by: number];

function pusherSegments(project: Project): readonly Segment[] {
  const { footprint, pusherEdges } = robotOutline(project.robot);
  return pusherEdges.map((edge) => {
    const a = footprint[edge]!;
    const b = footprint[(edge + 1) % footprint.length]!;
    return [a.xMm, a.yMm, b.xMm, b.yMm];
  });
}

/** Poses along the nominal way, close enough together. */
function places(project: Project, reachMm: number): readonly Pose[] {
  const poses: Pose[] = [entryPose(project.zone, project.robot)];
  for (const piece of nominalCourse(project, MOVES).pieces) {
    const { from, to, angleRad, centreXMm, centreYMm } = piece;
    const radius = piece.kind === "line" ? 0 : Math.hypot(from.xMm - centreXMm, from.yMm - centreYMm);
    const way = Math.hypot(to.xMm - from.xMm, to.yMm - from.yMm) + Math.abs(angleRad) * (radius + reachMm);
    const steps = Math.ceil(way / STEP_MM);
    for (let k = 0; k <= steps; k++) poses.push(between(piece, k / Math.max(1, steps)));
  }
  return poses;
}

function between(piece: ReturnType<typeof nominalCourse>["pieces"][number], share: number): Pose {
  const { from, to, angleRad, centreXMm, centreYMm } = piece;
  if (piece.kind === "line") {
    const xMm = from.xMm + share * (to.xMm - from.xMm);
    return { xMm, yMm: from.yMm + share * (to.yMm - from.yMm), headingRad: from.headingRad };
  }
  const c = Math.cos(share * angleRad);
  const s = Math.sin(share * angleRad);
  const [x, y] = [from.xMm - centreXMm, from.yMm - centreYMm];
  return {
    xMm: centreXMm + c * x - s * y,
    yMm: centreYMm + s * x + c * y,
    headingRad: from.headingRad + share * angleRad,
  };
}

function leastDistance(x: number, y: number, poses: readonly Pose[], segments: readonly Segment[]): number {
  let least = Number.POSITIVE_INFINITY;
  for (const { xMm, yMm, headingRad } of poses) {
    const [c, s] = [Math.cos(headingRad), Math.sin(headingRad)];
    const [dx, dy] = [x - xMm, y - yMm];
    if (dx * dx + dy * dy > 300 * 300) continue;
    for (const segment of segments)
      least = Math.min(least, segmentDistance(c * dx + s * dy, c * dy - s * dx, segment));
  }
  return least;
}

function segmentDistance(x: number, y: number, [ax, ay, bx, by]: Segment): number {
  const [ex, ey] = [bx - ax, by - ay];
  const t = Math.min(1, Math.max(0, ((x - ax) * ex + (y - ay) * ey) / (ex * ex + ey * ey)));
  return Math.sqrt((x - ax - t * ex) ** 2 + (y - ay - t * ey) ** 2);
}

describe.each(["usual-zone.json", "plate-robot.json", "pillar-zone.json"])("coverage in %s", (name) => {
  const project = shippedProject(name);
  const segments = pusherSegments(project);
  const poses = places(
    project,
    Math.max(...segments.flatMap((s) => [Math.hypot(s[0], s[1]), Math.hypot(s[2], s[3])])),
  );
  const { sizes } = coverageOf(project, { moves: MOVES });

  test.each(sizes)("is what a grid of points says, balls of $diameterMm mm", (size) => {
    const radius = size.diameterMm / 2;
    let touched = 0;
    let reachable = 0;
    for (let x = GRID_MM / 2; x < project.zone.widthMm; x += GRID_MM) {
      for (let y = GRID_MM / 2; y < project.zone.heightMm; y += GRID_MM) {
        const inTouched = regionContains(size.touched, x, y);
        if (!inTouched && !regionContains(size.blindSpots, x, y)) continue;
        reachable++;
        const away = leastDistance(x, y, poses, segments);
        if (away <= radius) touched++;
        // Measured at places: never too near, too far by less than half a step (the nearest point moves on a curve).
        if (away <= radius - 0.15) expect(inTouched).toBe(true);
        if (away > radius + STEP_MM / 2) expect(inTouched).toBe(false);
      }
    }
    expect(touched).toBeGreaterThan(100);
    // A grid point stands for its square; only squares on the edge between touched and blind can be wrong, and about half of each cancels.
    const edgeMm = regionOutlineMm(size.blindSpots);
    const resolution = (edgeMm * GRID_MM) / 4 / size.reachableAreaMm2;
    expect(Math.abs(touched / reachable - size.coverageFrac)).toBeLessThanOrEqual(
      size.errorFrac + resolution,
    );
  });
});
