import { Container, Graphics, type Text } from "pixi.js";
import type { Course } from "../motion/course.ts";
import { dashes } from "./dashes.ts";
import { label } from "./label.ts";
import { emptyLayer } from "./layer.ts";
import type { Palette } from "./palette.ts";
import {
  layOutPath,
  type PathArrow,
  type PathLayout,
  type PathNumber,
  type PathTurn,
  spreadNumbers,
  type Taken,
} from "./pathLayout.ts";
import type { PointPx, Viewport } from "./viewport.ts";

const DISC_PX = 8.5;
/** A turn is drawn with at least this radius. */
const MIN_TURN_PX = 24;

/** The planned way: dashed, with arrows and move numbers; the move under way drawn over it. */
export class PathScene {
  readonly layer = new Container();
  readonly #plan = new Container();
  readonly #written = new Container();
  readonly #now = new Container();
  #layout: PathLayout | null = null;
  #numbers: readonly PathNumber[] = [];
  #shownMove = -1;
  #turnRadiusPx = 0;

  constructor() {
    this.layer.addChild(this.#plan, this.#written, this.#now);
  }

  /** @param gaugeMm of the robot: a turn on the spot is drawn around it */
  draw(course: Course | null, gaugeMm: number, viewport: Viewport, palette: Palette): void {
    for (const part of [this.#plan, this.#written, this.#now]) emptyLayer(part);
    this.#shownMove = -1;
    this.#numbers = [];
    this.#turnRadiusPx = Math.max(MIN_TURN_PX, viewport.px(gaugeMm));
    this.#layout = course ? layOutPath(course, viewport) : null;
    if (!this.#layout) return;
    const lines = new Graphics();
    for (const stroke of this.#layout.strokes) polyline(lines, stroke.points, true);
    lines.stroke({ width: 1.5, color: palette.path });
    for (const arrow of this.#layout.arrows) arrowHead(lines, arrow, 5.5);
    lines.fill(palette.path);
    this.#plan.addChild(lines);
  }

  /** Writes the moves' numbers, clear of the balls. */
  number(taken: readonly Taken[], palette: Palette): void {
    emptyLayer(this.#written);
    this.#shownMove = -1;
    this.#numbers = this.#layout ? spreadNumbers(this.#layout, taken) : [];
    if (this.#numbers.length === 0) return;
    const discs = new Graphics();
    for (const { at } of this.#numbers) discs.circle(at.x, at.y, DISC_PX);
    discs.fill(palette.paper).stroke({ width: 1, color: palette.path });
    this.#written.addChild(
      discs,
      ...this.#numbers.map(({ move, at }) => numberText(move, at, palette.inkSoft)),
    );
  }

  /** @param move index of the move under way, −1 for none */
  highlight(move: number, palette: Palette): void {
    if (move === this.#shownMove) return;
    this.#shownMove = move;
    emptyLayer(this.#now);
    const strokes = this.#layout?.strokes.filter((stroke) => stroke.move === move) ?? [];
    const first = strokes[0]?.points[0];
    if (!this.#layout || !first) return;
    const lines = new Graphics();
    for (const stroke of strokes) polyline(lines, stroke.points, false);
    const turns = this.#layout.turns.filter((turn) => turn.move === move);
    for (const turn of turns) turnArc(lines, turn, this.#turnRadiusPx);
    lines.stroke({ width: 3.5, color: palette.pathNow, cap: "round", join: "round" });
    for (const turn of turns) arrowHead(lines, turnTip(turn, this.#turnRadiusPx), 8);
    for (const arrow of this.#layout.arrows) if (arrow.move === move) arrowHead(lines, arrow, 8);
    lines.fill(palette.pathNow);
    const at = this.#numbers.find((number) => number.move === move)?.at ?? first;
    const disc = new Graphics().circle(at.x, at.y, DISC_PX + 0.5).fill(palette.pathNow);
    this.#now.addChild(lines, disc, numberText(move, at, palette.paper));
  }
}

function polyline(lines: Graphics, points: readonly PointPx[], dashed: boolean): void {
  if (points.length < 2) return;
  if (dashed) {
    for (const { from, to } of dashes(points, 6, 4)) lines.moveTo(from.x, from.y).lineTo(to.x, to.y);
    return;
  }
  for (const [index, point] of points.entries()) {
    if (index === 0) lines.moveTo(point.x, point.y);
    else lines.lineTo(point.x, point.y);
  }
}

function turnArc(lines: Graphics, turn: PathTurn, radiusPx: number): void {
  const { at, fromRad, toRad } = turn;
  lines.moveTo(at.x + radiusPx * Math.cos(fromRad), at.y + radiusPx * Math.sin(fromRad));
  lines.arc(at.x, at.y, radiusPx, fromRad, toRad, toRad < fromRad);
}

function turnTip(turn: PathTurn, radiusPx: number): Pick<PathArrow, "at" | "rotation"> {
  const { at, fromRad, toRad } = turn;
  return {
    at: { x: at.x + radiusPx * Math.cos(toRad), y: at.y + radiusPx * Math.sin(toRad) },
    rotation: toRad + (toRad < fromRad ? -Math.PI / 2 : Math.PI / 2),
  };
}

function arrowHead(lines: Graphics, arrow: Pick<PathArrow, "at" | "rotation">, size: number): void {
  const [c, s] = [Math.cos(arrow.rotation), Math.sin(arrow.rotation)];
  const at = (ahead: number, side: number) => ({
    x: arrow.at.x + c * ahead - s * side,
    y: arrow.at.y + s * ahead + c * side,
  });
  lines.poly([at(size, 0), at(-size * 0.8, size * 0.85), at(-size * 0.8, -size * 0.85)]);
}

function numberText(move: number, at: PointPx, ink: string): Text {
  const text = label(String(move + 1), { colour: ink, sizePx: 10.5, bold: true });
  text.position.set(at.x, at.y);
  return text;
}
