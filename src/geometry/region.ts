import {
  Clipper64,
  ClipType,
  FillRule,
  type Path64,
  type Paths64,
  PathType,
  type Point64,
} from "clipper2-ts";
import { GeometryError } from "./error.ts";
import { type Ring, ringAreaMm2, ringCrossesOddly, ringLengthMm, ringReversed } from "./ring.kernel.ts";

/**
 * A part of the plane: filled outlines counter-clockwise, holes clockwise, no two crossing; in mm. Every operation
 * rounds to whole micrometres, so that its result is the same on every machine.
 */
export type Region = readonly Ring[];

/** Spacing of the grid that all corners of a result lie on, mm. */
export const GRID_MM = 0.001;
const PER_MM = 1000;

/** Largest coordinate taken, mm: differences stay below 9e7 µm, whose products are exact in a double. */
export const REACH_MM = 40_000;

/** Rectangle from its lower left to its upper right corner; empty when it has no width or no height. */
export function rectangle(minXMm: number, minYMm: number, maxXMm: number, maxYMm: number): Region {
  if (!(maxXMm > minXMm && maxYMm > minYMm)) return [];
  return [[minXMm, minYMm, maxXMm, minYMm, maxXMm, maxYMm, minXMm, maxYMm]];
}

/**
 * The region inside one simple outline, given either way round.
 * @throws GeometryError 'too-few-vertices' | 'odd-length'
 */
export function regionInside(outline: Ring): Region {
  if (outline.length % 2 !== 0) throw new GeometryError("odd-length", "an outline holds pairs x, y");
  if (outline.length < 6) throw new GeometryError("too-few-vertices", "an outline has at least 3 vertices");
  return [ringAreaMm2(outline) >= 0 ? outline : ringReversed(outline)];
}

/**
 * Everything in at least one of the rings, each counter-clockwise (or a hole of its own outline, clockwise).
 * All at once: one call for many overlapping rings costs far less than one by one.
 * @throws GeometryError 'not-finite' | 'out-of-range'
 */
export function unionOf(rings: readonly Ring[]): Region {
  return clip(ClipType.Union, rings, [], FillRule.NonZero);
}

/** What lies in both. @throws GeometryError 'not-finite' | 'out-of-range' */
export function intersectionOf(a: Region, b: Region): Region {
  return clip(ClipType.Intersection, a, b, FillRule.NonZero);
}

/** What lies in the first but not in the second. @throws GeometryError 'not-finite' | 'out-of-range' */
export function differenceOf(a: Region, b: Region): Region {
  return clip(ClipType.Difference, a, b, FillRule.NonZero);
}

/** What rings that may cross themselves surround more often counter-clockwise than clockwise. For offset.ts. */
export function woundPositively(rings: readonly Ring[]): Region {
  return clip(ClipType.Union, rings, [], FillRule.Positive);
}

/** Area in mm², holes taken off. */
export function regionAreaMm2(region: Region): number {
  let sum = 0;
  for (const ring of region) sum += ringAreaMm2(ring);
  return sum;
}

/** Length of all outlines, those of holes included, mm. */
export function regionOutlineMm(region: Region): number {
  let sum = 0;
  for (const ring of region) sum += ringLengthMm(ring);
  return sum;
}

/** Whether a point lies in the region; points on an outline may fall on either side. */
export function regionContains(region: Region, xMm: number, yMm: number): boolean {
  let inside = false;
  for (const ring of region) if (ringCrossesOddly(ring, xMm, yMm)) inside = !inside;
  return inside;
}

function clip(type: ClipType, subject: readonly Ring[], clipping: readonly Ring[], fill: FillRule): Region {
  const engine = new Clipper64();
  engine.preserveCollinear = false;
  engine.addPaths(pathsOf(subject), PathType.Subject);
  if (clipping.length > 0) engine.addPaths(pathsOf(clipping), PathType.Clip);
  const solution: Paths64 = [];
  engine.execute(type, fill, solution);
  return solution.map(ringOf);
}

function pathsOf(rings: readonly Ring[]): Paths64 {
  return rings.map(pathOf);
}

/**
 * The ring on the grid, without corners between two edges of the same height. Such a corner bounds nothing, and clipper2-ts 2.0.1
 * gets a turn back along a level line wrong (countertype/clipper2-ts, pull request 36): it loses area or never ends.
 */
function pathOf(ring: Ring): Path64 {
  const path: Path64 = [];
  for (let i = 0; i + 1 < ring.length; i += 2) {
    const next = { x: gridNumber(ring[i] ?? Number.NaN), y: gridNumber(ring[i + 1] ?? Number.NaN) };
    while (isLevel(path.at(-2), path.at(-1), next)) path.pop();
    path.push(next);
  }
  while (isLevel(path.at(-2), path.at(-1), path[0])) path.pop();
  while (isLevel(path.at(-1), path[0], path[1])) path.shift();
  return path;
}

function isLevel(a: Point64 | undefined, b: Point64 | undefined, c: Point64 | undefined): boolean {
  return a !== undefined && b !== undefined && c !== undefined && a !== c && a.y === b.y && b.y === c.y;
}

function gridNumber(mm: number): number {
  if (Math.abs(mm) <= REACH_MM) return Math.round(mm * PER_MM);
  const what = Number.isFinite(mm) ? "out-of-range" : "not-finite";
  throw new GeometryError(what, `coordinate ${mm} mm; expected a number within ±${REACH_MM} mm`);
}

function ringOf(path: Path64): Ring {
  const ring: number[] = [];
  for (const { x, y } of path) ring.push(x / PER_MM, y / PER_MM);
  return ring;
}
