import { robotOutline } from "../model/outline.ts";
import type { Project } from "../model/project.ts";
import type { Corner, PointMm, Zone } from "../model/zone.ts";
import { rectPolygon, wedgeTriangle } from "../model/zoneFrame.ts";
import type { Recording } from "../trial/recording.ts";
import { type ClipPen, drawClipRun, fillShape, traceShape } from "./clipRun.ts";
import type { Palette } from "./palette.ts";

/** What a clip shows: one run, or many at once. */
export interface ClipScene {
  readonly project: Project;
  readonly runs: readonly Recording[];
  readonly palette: Palette;
  /** Burnt into every frame, below the zone; long ones are broken between words. */
  readonly captions: (timeS: number) => readonly string[];
}

const MARGIN_PX = 16;
const TEXT_PX = 16;
const LINE_PX = 22;
/** Lines of text that have room below the zone: two for the routine's name, two for its rate, two for what happens. */
const LINES = 6;
const CAPTION_PX = LINES * LINE_PX + 12;

/** Size of the frames for a zone, even as codecs want it. */
export function clipSize(
  { zone }: Project,
  widthPx: number,
): { readonly width: number; readonly height: number } {
  const scale = (widthPx - 2 * MARGIN_PX) / zone.widthMm;
  const height = scale * zone.heightMm + 2 * MARGIN_PX + CAPTION_PX;
  return { width: 2 * Math.round(widthPx / 2), height: 2 * Math.round(height / 2) };
}

/** Draws everything as it is at a second of the runs; runs that are over stand still. */
export function drawClipFrame(pen: ClipPen, scene: ClipScene, timeS: number): void {
  const { project, runs, palette } = scene;
  const { width } = pen.canvas;
  const scale = (width - 2 * MARGIN_PX) / project.zone.widthMm;
  const at = ({ xMm, yMm }: PointMm): readonly [number, number] => [
    MARGIN_PX + scale * xMm,
    MARGIN_PX + scale * (project.zone.heightMm - yMm),
  ];
  drawZone(pen, scene, at);
  const { footprint } = robotOutline(project.robot);
  const drawn = { project, palette, footprint, isAlone: runs.length === 1 };
  for (const run of runs) drawClipRun(pen, drawn, run, timeS, { at, scale });
  pen.globalAlpha = 1;
  drawCaptions(pen, palette, scene.captions(timeS));
}

function drawZone(
  pen: ClipPen,
  { project: { zone }, runs, palette }: ClipScene,
  at: (point: PointMm) => readonly [number, number],
): void {
  const floor = rectPolygon({ xMm: 0, yMm: 0, widthMm: zone.widthMm, heightMm: zone.heightMm }).map(at);
  pen.fillStyle = palette.paper;
  pen.fillRect(0, 0, pen.canvas.width, pen.canvas.height);
  fillShape(pen, floor, palette.floor);
  for (const corner of cornersOf(zone, runs)) {
    const wedge = wedgeTriangle({ ...zone, wedge: { ...zone.wedge, corner } }).map(at);
    fillShape(pen, wedge, palette.wedge);
    pen.lineWidth = 1.5;
    pen.strokeStyle = palette.wedgeLine;
    pen.stroke();
  }
  for (const block of zone.keepOuts) fillShape(pen, rectPolygon(block).map(at), palette.keepOut);
  traceShape(pen, floor);
  pen.lineWidth = 6;
  pen.strokeStyle = palette.wall;
  pen.stroke();
  pen.beginPath();
  for (const point of doorwayEnds(zone)) pen.lineTo(...at(point));
  pen.strokeStyle = palette.floor;
  pen.lineWidth = 8;
  pen.stroke();
}

/** Every corner in which the wedge is in one of the runs. */
function cornersOf(zone: Zone, runs: readonly Recording[]): ReadonlySet<Corner> {
  return new Set(runs.map(({ corner }) => corner ?? zone.wedge.corner));
}

function drawCaptions(pen: ClipPen, palette: Palette, captions: readonly string[]): void {
  const { width, height } = pen.canvas;
  const room = width - 2 * MARGIN_PX;
  pen.fillStyle = palette.ink;
  pen.font = `${TEXT_PX}px system-ui, sans-serif`;
  const widthOf = (text: string): number => pen.measureText(text).width;
  const lines = captions.flatMap((caption) => brokenLines(caption, room, widthOf)).slice(0, LINES);
  for (const [i, line] of lines.entries()) {
    pen.fillText(line, MARGIN_PX, height - CAPTION_PX + TEXT_PX + i * LINE_PX, room);
  }
}

/** A text on as many lines as it needs, broken between words; a single word is never broken. */
export function brokenLines(
  text: string,
  roomPx: number,
  widthOf: (text: string) => number,
): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(" ")) {
    const last = lines.at(-1);
    if (last !== undefined && widthOf(`${last} ${word}`) <= roomPx)
      lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}

/** Where the doorway begins and ends. */
function doorwayEnds({ widthMm, heightMm, doorway }: Zone): readonly PointMm[] {
  const { wall, centreMm } = doorway;
  return [centreMm - doorway.widthMm / 2, centreMm + doorway.widthMm / 2].map((mm) =>
    wall === "left" || wall === "right"
      ? { xMm: wall === "left" ? 0 : widthMm, yMm: mm }
      : { xMm: mm, yMm: wall === "bottom" ? 0 : heightMm },
  );
}
