import type { Course, CoursePiece } from "../motion/course.ts";
import { courseWay } from "./courseWay.ts";
import type { PointPx, Viewport } from "./viewport.ts";

/** The way of one course piece on the screen; a turn on the spot has a single point. */
export interface PathStroke {
  readonly move: number;
  readonly points: readonly PointPx[];
  readonly lengthPx: number;
}

/** Shows the direction of travel; `rotation` is the screen's, clockwise from the right. */
export interface PathArrow {
  readonly move: number;
  readonly at: PointPx;
  readonly rotation: number;
}

/** Where the number of a move (its index, counted from 0) can be written without covering another. */
export interface PathNumber {
  readonly move: number;
  readonly at: PointPx;
}

/** A turn on the spot, angles as on the screen (clockwise from the right). */
export interface PathTurn {
  readonly move: number;
  readonly at: PointPx;
  readonly fromRad: number;
  readonly toRad: number;
}

export interface PathLayout {
  readonly turns: readonly PathTurn[];
  readonly strokes: readonly PathStroke[];
  readonly arrows: readonly PathArrow[];
  /** Two numbers keep this far apart. */
  readonly numberGapPx: number;
}

/** Where no number may be written: a ball lies there, or its own number. */
export interface Taken {
  readonly at: PointPx;
  readonly radiusPx: number;
}

/** Shorter strokes get no arrow. */
const ARROW_MIN_PX = 26;
/** At most one arrow per this much way. */
const ARROW_EVERY_PX = 190;
/** Two numbers closer than this would overlap. */
const NUMBER_GAP_PX = 19;
/** On a drawing narrower than this, numbers keep further apart, or they would hide the path. */
const NARROW_PX = 480;
const NARROW_NUMBER_GAP_PX = 32;

/** Places along a stroke where its number may stand: the first, unless a ball lies there. */
const NUMBER_ALONG = [0.36, 0.6, 0.2, 0.8];

/** Lays out the planned way of a routine: strokes and arrows. */
export function layOutPath(course: Course, viewport: Viewport): PathLayout {
  const strokes = course.pieces.map((piece) => strokeOf(piece, viewport));
  return {
    turns: course.pieces.flatMap((piece) => turnOf(piece, viewport)),
    strokes,
    arrows: strokes.flatMap(arrowsOf),
    numberGapPx: viewport.widthPx < NARROW_PX ? NARROW_NUMBER_GAP_PX : NUMBER_GAP_PX,
  };
}

function strokeOf(piece: CoursePiece, viewport: Viewport): PathStroke {
  const points =
    piece.kind === "line"
      ? [viewport.point(piece.from), viewport.point(piece.to)]
      : arcPoints(piece, viewport);
  let lengthPx = 0;
  for (let i = 1; i < points.length; i++) lengthPx += distance(points[i - 1], points[i]);
  return { move: piece.move, points, lengthPx };
}

/** Rotations that leave the origin where it is. */
function turnOf(piece: CoursePiece, viewport: Viewport): PathTurn[] {
  if (piece.kind !== "rotation" || arcPoints(piece, viewport).length > 1) return [];
  const { move, from, angleRad } = piece;
  const at = viewport.point(from);
  const fromRad = viewport.rotation(from.headingRad);
  return [{ move, at, fromRad, toRad: fromRad + viewport.rotation(angleRad) }];
}

/** One point where it turns on the spot, for all that can be seen. */
function arcPoints(piece: CoursePiece, viewport: Viewport): PointPx[] {
  const dx = piece.from.xMm - piece.centreXMm;
  const dy = piece.from.yMm - piece.centreYMm;
  if (viewport.px(Math.sqrt(dx * dx + dy * dy)) < 0.5) return [viewport.point(piece.from)];
  return courseWay(piece).map((point) => viewport.point(point));
}

/** Past the middle of each stretch, so that a way driven there and back shows both directions. */
function arrowsOf(stroke: PathStroke): PathArrow[] {
  if (stroke.lengthPx < ARROW_MIN_PX) return [];
  const count = Math.max(1, Math.round(stroke.lengthPx / ARROW_EVERY_PX));
  return Array.from({ length: count }, (_, k) => ({
    move: stroke.move,
    ...along(stroke, ((k + 0.62) / count) * stroke.lengthPx),
  }));
}

/** The move numbers that fit, clear of each other and of what is taken. */
export function spreadNumbers(
  { strokes, numberGapPx: gapPx }: Pick<PathLayout, "strokes" | "numberGapPx">,
  taken: readonly Taken[] = [],
): readonly PathNumber[] {
  const placed: PathNumber[] = [];
  const place = (move: number, places: readonly PointPx[]) => {
    const at = places.find((each) => taken.every((other) => distance(other.at, each) >= other.radiusPx));
    if (!at || placed.some((other) => other.move === move || distance(other.at, at) < gapPx)) return;
    placed.push({ move, at });
  };
  // Driven ways first: a number beside a line says more than one on a turning place.
  for (const stroke of strokes) {
    if (stroke.lengthPx < gapPx) continue;
    place(
      stroke.move,
      NUMBER_ALONG.map((share) => along(stroke, share * stroke.lengthPx).at),
    );
  }
  for (const stroke of strokes) {
    if (stroke.lengthPx < gapPx) place(stroke.move, stroke.points.slice(0, 1));
  }
  return placed.sort((a, b) => a.move - b.move);
}

/** The place and direction after `wayPx` of a stroke. */
function along(stroke: PathStroke, wayPx: number): { at: PointPx; rotation: number } {
  let left = wayPx;
  for (let i = 1; i < stroke.points.length; i++) {
    const from = stroke.points[i - 1];
    const to = stroke.points[i];
    if (!from || !to) continue;
    const length = distance(from, to);
    if (left > length && i < stroke.points.length - 1) {
      left -= length;
      continue;
    }
    const share = length === 0 ? 0 : left / length;
    return {
      at: { x: from.x + share * (to.x - from.x), y: from.y + share * (to.y - from.y) },
      rotation: Math.atan2(to.y - from.y, to.x - from.x),
    };
  }
  return { at: stroke.points[0] ?? { x: 0, y: 0 }, rotation: 0 };
}

function distance(a: PointPx | undefined, b: PointPx | undefined): number {
  if (!a || !b) return 0;
  return Math.sqrt((a.x - b.x) * (a.x - b.x) + (a.y - b.y) * (a.y - b.y));
}
