import type { PointMm } from "../model/zone.ts";
import type { CoursePiece } from "../motion/course.ts";

/** Arcs are drawn as chords of at most this angle: 5° of a 300 mm arc bulges 0.3 mm, less than a pixel. */
const CHORD_RAD = (5 * Math.PI) / 180;

/** The origin's way along a course piece, as points; a single one, or several in the same place, of a turn on the spot. */
export function courseWay(piece: CoursePiece): PointMm[] {
  if (piece.kind === "line") return [piece.from, piece.to];
  const dx = piece.from.xMm - piece.centreXMm;
  const dy = piece.from.yMm - piece.centreYMm;
  const chords = Math.max(1, Math.ceil(Math.abs(piece.angleRad) / CHORD_RAD));
  return Array.from({ length: chords + 1 }, (_, k) => {
    const angle = (piece.angleRad * k) / chords;
    const [c, s] = [Math.cos(angle), Math.sin(angle)];
    return { xMm: piece.centreXMm + c * dx - s * dy, yMm: piece.centreYMm + s * dx + c * dy };
  });
}
