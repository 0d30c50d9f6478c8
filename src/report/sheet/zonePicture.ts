import type { Project } from "../../model/project.ts";
import type { Move } from "../../model/routine.ts";
import type { PointMm, Zone } from "../../model/zone.ts";
import { entryOutlines, rectPolygon, wedgeTriangle } from "../../model/zoneFrame.ts";
import { nominalCourse } from "../../motion/course.ts";
import { type Drawing, lineOf, type Shape, TEXT_PX, textAt } from "../charts/drawing.ts";

const WIDTH_PX = 640;
const MARGIN_PX = 14;
/** Straight pieces in which a curve is drawn, rad each. */
const CHORD_RAD = 0.2;
/** Numbers nearer to one that stands already are left out, px. */
const APART_PX = 26;
const BALL_PX = 6;

/**
 * The zone in one ink with the way the middle between the wheels takes without drift, its moves numbered where there is room, and, if
 * given, balls. Black and white is enough: the wedge is hatched, blocks are full.
 */
export function zonePicture(
  project: Project,
  moves: readonly Move[],
  title: string,
  balls: readonly PointMm[] = [],
): Drawing {
  const { zone } = project;
  const scale = (WIDTH_PX - 2 * MARGIN_PX) / zone.widthMm;
  const at = ({ xMm, yMm }: PointMm): readonly [number, number] => [
    MARGIN_PX + scale * xMm,
    MARGIN_PX + scale * (zone.heightMm - yMm),
  ];
  const heightPx = scale * zone.heightMm + 2 * MARGIN_PX;
  const { footprint } = entryOutlines(zone, project.robot);
  const shapes: readonly Shape[] = [
    { kind: "area", points: wedgeTriangle(zone).map(at), fill: "hatched" },
    ...zone.keepOuts.map(
      (block): Shape => ({ kind: "area", points: rectPolygon(block).map(at), fill: "full" }),
    ),
    ...wallLines(zone).map((points) => lineOf(points.map(at), "strong", 4)),
    { kind: "area", points: footprint.map(at), fill: "tint" },
    lineOf([...footprint, ...footprint.slice(0, 1)].map(at), "soft", 1.5),
    ...wayShapes(project, moves, at),
    ...balls.map((ball): Shape => {
      const [xPx, yPx] = at(ball);
      return { kind: "dot", xPx, yPx, radiusPx: BALL_PX, fill: "full" };
    }),
  ];
  const count = balls.length > 0 ? ` and ${balls.length} balls` : "";
  const description = `The zone, ${zone.widthMm} by ${zone.heightMm} mm, from above: the wedge hatched in the ${zone.wedge.corner.replace("-", " ")} corner, the doorway in the ${zone.doorway.wall} wall, the robot at its start, the way of ${moves.length} moves${count}.`;
  return { widthPx: WIDTH_PX, heightPx, title, description, shapes };
}

/** The walls as two open lines each or one, with the doorway left out. */
function wallLines(zone: Zone): readonly (readonly PointMm[])[] {
  const { widthMm: w, heightMm: h, doorway } = zone;
  const [from, to] = [doorway.centreMm - doorway.widthMm / 2, doorway.centreMm + doorway.widthMm / 2];
  const ends = {
    left: (mm: number): PointMm => ({ xMm: 0, yMm: mm }),
    right: (mm: number): PointMm => ({ xMm: w, yMm: mm }),
    bottom: (mm: number): PointMm => ({ xMm: mm, yMm: 0 }),
    top: (mm: number): PointMm => ({ xMm: mm, yMm: h }),
  } as const;
  return (["left", "right", "bottom", "top"] as const).flatMap((wall) => {
    const length = wall === "left" || wall === "right" ? h : w;
    const place = ends[wall];
    if (wall !== doorway.wall) return [[place(0), place(length)]];
    return [
      [place(0), place(from)],
      [place(to), place(length)],
    ];
  });
}

/** The way, dashed, and a number where each move ends, unless another number stands there. */
function wayShapes(
  project: Project,
  moves: readonly Move[],
  at: (point: PointMm) => readonly [number, number],
): readonly Shape[] {
  const { pieces } = nominalCourse(project, moves);
  const points = pieces.flatMap(({ kind, from, to, centreXMm, centreYMm, angleRad }): PointMm[] => {
    if (kind === "line") return [from, to];
    const steps = Math.max(1, Math.ceil(Math.abs(angleRad) / CHORD_RAD));
    return Array.from({ length: steps + 1 }, (_, i) => {
      const angle = (angleRad * i) / steps;
      const [dx, dy] = [from.xMm - centreXMm, from.yMm - centreYMm];
      return {
        xMm: centreXMm + Math.cos(angle) * dx - Math.sin(angle) * dy,
        yMm: centreYMm + Math.sin(angle) * dx + Math.cos(angle) * dy,
      };
    });
  });
  const ends = new Map(pieces.map(({ move, to }) => [move, to]));
  const placed: (readonly [number, number])[] = [];
  const numbers = [...ends].flatMap(([move, end]): Shape[] => {
    const [x, y] = at(end);
    if (placed.some(([px, py]) => Math.hypot(px - x, py - y) < APART_PX)) return [];
    placed.push([x, y]);
    return [textAt(x, y + TEXT_PX / 3, String(move + 1), "middle")];
  });
  return points.length === 0 ? [] : [lineOf(points.map(at), "soft", 1.2, [5, 3]), ...numbers];
}
