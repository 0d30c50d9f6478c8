import type { Project } from "../model/project.ts";
import type { Routine } from "../model/routine.ts";
import { wedgeTriangle } from "../model/zoneFrame.ts";
import { nominalCourse } from "../motion/course.ts";
import { layOutPath } from "./pathLayout.ts";
import { type PointPx, Viewport } from "./viewport.ts";

/** A routine's way in a few pixels, as SVG: path data and corners, y down. */
export interface RoutineSketch {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly path: string;
  readonly wedge: string;
}

/** Longer side of a sketch, and a rim for the line's width, px. */
const SIDE_PX = 64;
const RIM_PX = 2;

/** The planned way of a routine, small; null where it decides on the way and has no moves before. Costs one walk of its moves. */
export function routineSketch(project: Project, routine: Routine): RoutineSketch | null {
  const { pieces, ...course } = nominalCourse(project, routine.moves);
  if (routine.program !== undefined || pieces.length === 0) return null;
  const { zone } = project;
  const scale = SIDE_PX / Math.max(zone.widthMm, zone.heightMm);
  const widthPx = Math.ceil(zone.widthMm * scale) + 2 * RIM_PX;
  const heightPx = Math.ceil(zone.heightMm * scale) + 2 * RIM_PX;
  const rim = { left: RIM_PX, right: RIM_PX, top: RIM_PX, bottom: RIM_PX };
  const viewport = new Viewport(zone, widthPx, heightPx, rim);
  const { strokes } = layOutPath({ pieces, ...course }, viewport);
  return {
    widthPx,
    heightPx,
    path: strokes
      .filter(({ points }) => points.length > 1)
      .map(({ points }) => `M${points.map(words).join("L")}`)
      .join(""),
    wedge: wedgeTriangle(zone)
      .map((point) => words(viewport.point(point)))
      .join(" "),
  };
}

function words({ x, y }: PointPx): string {
  return `${x.toFixed(1)},${y.toFixed(1)}`;
}
