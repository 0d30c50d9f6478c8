import type { Project } from "../../model/project.ts";
import type { PointMm, Zone } from "../../model/zone.ts";
import { entryOutlines, rectPolygon, wedgeTriangle } from "../../model/zoneFrame.ts";
import { moveTexts } from "../../texts/english/move.ts";
import { zonePictureTexts as t } from "../../texts/english/zonePicture.ts";
import { lengthText } from "../../texts/lengths.ts";
import { type Drawing, lineOf, type Shape, TEXT_PX, textAt } from "../charts/drawing.ts";
import type { Way } from "./way.ts";

/** Of the zone's longer side; small, so that numbers can be read where the picture stands in half a page. */
const LONG_PX = 320;
const MARGIN_PX = 10;
/** Numbers nearer to one that stands already are left out, px. */
const APART_PX = 20;
const BALL_PX = 5;

/**
 * The zone in one ink with the way of the middle between the wheels, its steps numbered where there is room, and, if
 * given, balls. Black and white is enough: the wedge is hatched, blocks are full.
 */
export function zonePicture(
  project: Project,
  way: Way,
  title: string,
  balls: readonly PointMm[] = [],
): Drawing {
  const { zone } = project;
  const { at, widthPx, heightPx } = zonePaper(zone);
  const { footprint } = entryOutlines(zone, project.robot);
  const shapes: readonly Shape[] = [
    ...floorShapes(zone, at),
    { kind: "area", points: footprint.map(at), fill: "tint" },
    lineOf([...footprint, ...footprint.slice(0, 1)].map(at), "soft", 1.5),
    ...wayShapes(way, at),
    ...balls.flatMap((ball, i): Shape[] => {
      const [xPx, yPx] = at(ball);
      const number = textAt(xPx + BALL_PX + 3, yPx - BALL_PX, String(i + 1), "start");
      return [{ kind: "dot", xPx, yPx, radiusPx: BALL_PX, fill: "full" }, number];
    }),
  ];
  const description = t.description(
    ...([lengthText(zone.widthMm), lengthText(zone.heightMm)] as const),
    ...([moveTexts.corners[zone.wedge.corner], t.walls[zone.doorway.wall], way.moves, balls.length] as const),
  );
  return { widthPx, heightPx, title, description, shapes };
}

/** Where things lie on a picture of the zone, and how large it is. */
export function zonePaper(zone: Zone) {
  const scale = LONG_PX / Math.max(zone.widthMm, zone.heightMm);
  const at = ({ xMm, yMm }: PointMm): readonly [number, number] => [
    MARGIN_PX + scale * xMm,
    MARGIN_PX + scale * (zone.heightMm - yMm),
  ];
  const [widthPx, heightPx] = [zone.widthMm, zone.heightMm].map((mm) => scale * mm + 2 * MARGIN_PX);
  return { at, scale, widthPx: widthPx ?? 0, heightPx: heightPx ?? 0 };
}

/** Wedge, blocks and walls. */
export function floorShapes(zone: Zone, at: (point: PointMm) => readonly [number, number]): readonly Shape[] {
  return [
    { kind: "area", points: wedgeTriangle(zone).map(at), fill: "hatched" },
    ...zone.keepOuts.map(
      (block): Shape => ({ kind: "area", points: rectPolygon(block).map(at), fill: "full" }),
    ),
    ...wallLines(zone).map((points) => lineOf(points.map(at), "strong", 3)),
  ];
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

/** The way, dashed, and a number where each step ends, unless another number stands there. */
function wayShapes(
  { points, ends }: Way,
  at: (point: PointMm) => readonly [number, number],
): readonly Shape[] {
  const placed: (readonly [number, number])[] = [];
  const numbers = ends.flatMap(({ step, at: end }): Shape[] => {
    const [x, y] = at(end);
    if (placed.some(([px, py]) => Math.hypot(px - x, py - y) < APART_PX)) return [];
    placed.push([x, y]);
    return [textAt(x, y + TEXT_PX / 3, String(step), "middle")];
  });
  return points.length === 0 ? [] : [lineOf(points.map(at), "soft", 1.2, [5, 3]), ...numbers];
}
