import { withArmsAt } from "../model/arms.ts";
import { robotOutline } from "../model/outline.ts";
import { ballsOf, type Project } from "../model/project.ts";
import type { PointMm } from "../model/zone.ts";
import type { Pose } from "../motion/pose.ts";
import { armsAt, ballAt, robotAt } from "../trial/playback.ts";
import type { Recording } from "../trial/recording.ts";
import { ballColour, type Palette } from "./palette.ts";

/** The drawing of a clip: what a 2D canvas offers, on screen or off. */
export type ClipPen = CanvasRenderingContext2D | OffscreenCanvasRenderingContext2D;

/** What all runs of a clip share. */
export interface ClipCast {
  readonly project: Project;
  readonly palette: Palette;
  /** The robot's, its arms as the project has them. */
  readonly footprint: readonly PointMm[];
  /** A single run: drawn opaque, its balls numbered as everywhere else. */
  readonly isAlone: boolean;
}

/** From the zone to the picture. */
export interface ClipPlace {
  readonly at: (point: PointMm) => readonly [number, number];
  readonly scale: number;
}

/** How faint one of many is. A hundred robots one upon the other are still a dark line, one that strays can be seen. */
const GHOST_ROBOT_ALPHA = 0.2;
const GHOST_BALL_ALPHA = 0.3;
const LEAST_BALL_PX = 3;

/** Robot and balls at a second of a run; a run that is over stands still. */
export function drawClipRun(
  pen: ClipPen,
  cast: ClipCast,
  run: Recording,
  timeS: number,
  place: ClipPlace,
): void {
  const second = Math.min(timeS, run.durationS);
  pen.lineWidth = 1.5;
  pen.strokeStyle = cast.palette.robotLine;
  pen.globalAlpha = cast.isAlone ? 1 : GHOST_ROBOT_ALPHA;
  drawRobot(pen, cast, run, second, place);
  pen.globalAlpha = cast.isAlone ? 1 : GHOST_BALL_ALPHA;
  for (const [ball, kind] of ballsOf(cast.project).entries()) {
    const [x, y] = place.at(ballAt(run, ball, second));
    drawBall(pen, cast, ball, { x, y, radius: Math.max(LEAST_BALL_PX, (place.scale * kind.diameterMm) / 2) });
  }
}

function drawRobot(
  pen: ClipPen,
  { project, palette, footprint, isAlone }: ClipCast,
  run: Recording,
  second: number,
  { at }: ClipPlace,
): void {
  const arms = armsAt(run, second);
  const pose = robotAt(run, second);
  const shape = arms === null ? footprint : robotOutline(withArmsAt(project.robot, arms)).footprint;
  const outline = shape.map((point) => at(placed(point, pose)));
  if (isAlone) fillShape(pen, outline, palette.robot);
  else traceShape(pen, outline);
  pen.stroke();
}

function drawBall(
  pen: ClipPen,
  { palette, isAlone }: ClipCast,
  ball: number,
  { x, y, radius }: { readonly x: number; readonly y: number; readonly radius: number },
): void {
  pen.beginPath();
  pen.arc(x, y, radius, 0, 2 * Math.PI);
  pen.fillStyle = ballColour(palette, ball);
  pen.fill();
  if (!isAlone) return;
  pen.stroke();
  pen.fillStyle = palette.ballInk;
  pen.font = `bold ${Math.round(1.2 * radius)}px system-ui, sans-serif`;
  pen.textAlign = "center";
  pen.textBaseline = "middle";
  pen.fillText(String(ball + 1), x, y);
  pen.textAlign = "start";
  pen.textBaseline = "alphabetic";
}

export function traceShape(pen: ClipPen, points: readonly (readonly [number, number])[]): void {
  pen.beginPath();
  for (const [x, y] of points) pen.lineTo(x, y);
  pen.closePath();
}

export function fillShape(
  pen: ClipPen,
  points: readonly (readonly [number, number])[],
  colour: string,
): void {
  traceShape(pen, points);
  pen.fillStyle = colour;
  pen.fill();
}

function placed({ xMm, yMm }: PointMm, pose: Pose): PointMm {
  const [c, s] = [Math.cos(pose.headingRad), Math.sin(pose.headingRad)];
  return { xMm: pose.xMm + c * xMm - s * yMm, yMm: pose.yMm + s * xMm + c * yMm };
}
