import { robotOutline } from "../../src/model/outline.ts";
import type { Project } from "../../src/model/project.ts";
import type { Move } from "../../src/model/routine.ts";
import type { Pose } from "../../src/motion/pose.ts";
import { Walker } from "../../src/motion/walker.ts";

/** What a picture shows: moves from a pose, as the path tracer makes them. */
export interface MotionCase {
  readonly title: string;
  readonly project: Project;
  readonly from: Pose;
  readonly moves: readonly Move[];
}

/** Between two drawn robots lie at least this much way, mm, or this much turn, rad. */
const APART_MM = 45;
const APART_RAD = 0.12;
const MARGIN_MM = 30;

/** Poses worth drawing of each move, the first and the last included. */
function posesOf({ project, from, moves }: MotionCase): readonly (readonly Pose[])[] {
  const walker = new Walker(project, from);
  return moves.map((move) => {
    const poses: Pose[] = [walker.pose];
    walker.advance(move);
    for (const { from: a, to: b } of walker.lastPath()) {
      const steps = Math.max(1, Math.ceil(Math.hypot(b.xMm - a.xMm, b.yMm - a.yMm) / APART_MM));
      for (let i = 1; i <= steps; i++) {
        const share = i / steps;
        const between = (p: number, q: number): number => p + (q - p) * share;
        poses.push({
          xMm: between(a.xMm, b.xMm),
          yMm: between(a.yMm, b.yMm),
          headingRad: between(a.headingRad, b.headingRad),
        });
      }
    }
    return poses;
  });
}

/** Without poses that would be drawn on top of the one before. */
function thinned(poses: readonly Pose[]): readonly Pose[] {
  const kept: Pose[] = [];
  for (const pose of poses.slice(0, -1)) {
    const last = kept.at(-1);
    if (
      last === undefined ||
      Math.hypot(pose.xMm - last.xMm, pose.yMm - last.yMm) >= APART_MM ||
      Math.abs(pose.headingRad - last.headingRad) >= APART_RAD
    ) {
      kept.push(pose);
    }
  }
  return kept;
}

/**
 * A drawing of the case: the robot's outline on its way (thin) and at the end of each move (thick, numbered), the way of its origin,
 * the walls. Whole millimetres, y upward on the paper.
 */
export function motionPicture(one: MotionCase): string {
  const { zone, robot } = one.project;
  const { footprint } = robotOutline(robot);
  const place = ({ xMm, yMm, headingRad }: Pose): [number, number][] =>
    footprint.map((p) => [
      xMm + Math.cos(headingRad) * p.xMm - Math.sin(headingRad) * p.yMm,
      zone.heightMm - (yMm + Math.sin(headingRad) * p.xMm + Math.cos(headingRad) * p.yMm),
    ]);
  const text = (points: readonly (readonly [number, number])[]): string =>
    points.map(([x, y]) => `${Math.round(x)},${Math.round(y)}`).join(" ");
  const moves = posesOf(one);
  const corners = moves.flat().flatMap(place);
  const [xs, ys] = [corners.map(([x]) => x), corners.map(([, y]) => y)];
  const box = [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)].map(Math.round);
  const [left, top, right, bottom] = box as [number, number, number, number];
  const x0 = left - MARGIN_MM;
  const y0 = top - MARGIN_MM;
  const wide = right - left + 2 * MARGIN_MM;
  const high = bottom - top + 2 * MARGIN_MM;
  const lines = [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${x0} ${y0} ${wide} ${high}" width="${wide}" height="${high}" role="img" aria-label="${one.title}">`,
    `<title>${one.title}</title>`,
    `<rect x="${x0}" y="${y0}" width="${wide}" height="${high}" fill="#fbf8f1"/>`,
    `<rect x="-6" y="-6" width="${zone.widthMm + 12}" height="${zone.heightMm + 12}" fill="none" stroke="#3b3a36" stroke-width="12"/>`,
    ...zone.keepOuts.map(
      ({ xMm, yMm, widthMm, heightMm }) =>
        `<rect x="${xMm}" y="${zone.heightMm - yMm - heightMm}" width="${widthMm}" height="${heightMm}" fill="#3b3a36"/>`,
    ),
  ];
  for (const [n, poses] of moves.entries()) {
    for (const pose of n === 0 ? thinned(poses) : thinned(poses).slice(1)) {
      lines.push(
        `<polygon points="${text(place(pose))}" fill="none" stroke="#6b7f8c" stroke-width="1.5" opacity="0.6"/>`,
      );
    }
    const way = poses.map(({ xMm, yMm }): [number, number] => [xMm, zone.heightMm - yMm]);
    lines.push(
      `<polyline points="${text(way)}" fill="none" stroke="#b4552d" stroke-width="2" stroke-dasharray="6 4"/>`,
    );
    const end = poses.at(-1)!;
    lines.push(
      `<polygon points="${text(place(end))}" fill="#d8e2e6" fill-opacity="0.5" stroke="#1f3a4a" stroke-width="3"/>`,
      `<text x="${Math.round(end.xMm)}" y="${Math.round(zone.heightMm - end.yMm)}" font-family="sans-serif" font-size="26" fill="#1f3a4a">${n + 1}</text>`,
    );
  }
  lines.push("</svg>", "");
  return lines.join("\n");
}
