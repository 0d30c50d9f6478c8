import { withArmsAt } from "../model/arms.ts";
import { robotOutline } from "../model/outline.ts";
import { ballsOf, type Project } from "../model/project.ts";
import type { PointMm, Zone } from "../model/zone.ts";
import { rectPolygon, wedgeTriangle } from "../model/zoneFrame.ts";
import type { Pose } from "../motion/pose.ts";
import { armsAt, ballAt, robotAt } from "../trial/playback.ts";
import type { Recording } from "../trial/recording.ts";
import { ballColour, type Palette } from "./palette.ts";

/** What a clip shows: one run, or many at once. */
export interface ClipScene {
  readonly project: Project;
  readonly runs: readonly Recording[];
  readonly palette: Palette;
  /** Burnt into every frame, below the zone. */
  readonly captions: (timeS: number) => readonly [string, string];
}

/** The drawing of a frame: what a 2D canvas offers, on screen or off. */
export type Pen = CanvasRenderingContext2D | OffscreenCanvasRenderingContext2D;

const MARGIN_PX = 16;
const CAPTION_PX = 64;
const TEXT_PX = 18;

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
export function drawClipFrame(
  pen: Pen,
  { project, runs, palette, captions }: ClipScene,
  timeS: number,
): void {
  const { zone } = project;
  const { width, height } = pen.canvas;
  const scale = (width - 2 * MARGIN_PX) / zone.widthMm;
  const at = ({ xMm, yMm }: PointMm): readonly [number, number] => [
    MARGIN_PX + scale * xMm,
    MARGIN_PX + scale * (zone.heightMm - yMm),
  ];
  pen.globalAlpha = 1;
  pen.fillStyle = palette.paper;
  pen.fillRect(0, 0, width, height);
  trace(pen, rectPolygon({ xMm: 0, yMm: 0, widthMm: zone.widthMm, heightMm: zone.heightMm }).map(at));
  pen.fillStyle = palette.floor;
  pen.fill();
  fill(pen, wedgeTriangle(zone).map(at), palette.wedge);
  for (const block of zone.keepOuts) fill(pen, rectPolygon(block).map(at), palette.keepOut);
  trace(pen, rectPolygon({ xMm: 0, yMm: 0, widthMm: zone.widthMm, heightMm: zone.heightMm }).map(at));
  pen.lineWidth = 6;
  pen.strokeStyle = palette.wall;
  pen.stroke();
  pen.beginPath();
  for (const point of doorwayEnds(zone)) pen.lineTo(...at(point));
  pen.strokeStyle = palette.floor;
  pen.lineWidth = 8;
  pen.stroke();
  // The more runs, the fainter each.
  pen.globalAlpha = runs.length === 1 ? 1 : Math.max(0.06, Math.min(0.4, 6 / runs.length));
  for (const run of runs) drawRun(pen, project, run, palette, timeS, at, scale);
  pen.globalAlpha = 1;
  pen.fillStyle = palette.ink;
  pen.font = `${TEXT_PX}px system-ui, sans-serif`;
  for (const [i, caption] of captions(timeS).entries()) {
    pen.fillText(caption, MARGIN_PX, height - CAPTION_PX + 20 + i * (TEXT_PX + 6), width - 2 * MARGIN_PX);
  }
}

function drawRun(
  pen: Pen,
  project: Project,
  run: Recording,
  palette: Palette,
  timeS: number,
  at: (point: PointMm) => readonly [number, number],
  scale: number,
): void {
  const second = Math.min(timeS, run.durationS);
  const arms = armsAt(run, second);
  const pose = robotAt(run, second);
  const { footprint } = robotOutline(arms === null ? project.robot : withArmsAt(project.robot, arms));
  trace(
    pen,
    footprint.map((point) => at(placed(point, pose))),
  );
  if (pen.globalAlpha === 1) {
    pen.fillStyle = palette.robot;
    pen.fill();
  }
  pen.lineWidth = 1.5;
  pen.strokeStyle = palette.robotLine;
  pen.stroke();
  for (const [ball, kind] of ballsOf(project).entries()) {
    const [x, y] = at(ballAt(run, ball, second));
    pen.beginPath();
    pen.arc(x, y, Math.max(3, (scale * kind.diameterMm) / 2), 0, 2 * Math.PI);
    pen.fillStyle = ballColour(palette, ball);
    pen.fill();
    pen.stroke();
  }
}

function placed({ xMm, yMm }: PointMm, pose: Pose): PointMm {
  const [c, s] = [Math.cos(pose.headingRad), Math.sin(pose.headingRad)];
  return { xMm: pose.xMm + c * xMm - s * yMm, yMm: pose.yMm + s * xMm + c * yMm };
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

function trace(pen: Pen, points: readonly (readonly [number, number])[]): void {
  pen.beginPath();
  for (const [x, y] of points) pen.lineTo(x, y);
  pen.closePath();
}

function fill(pen: Pen, points: readonly (readonly [number, number])[], colour: string): void {
  trace(pen, points);
  pen.fillStyle = colour;
  pen.fill();
}
