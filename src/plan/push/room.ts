import type { Project } from "../../model/project.ts";
import { RAD_PER_DEG } from "../../model/units.ts";
import { wedgeEdge } from "../../motion/obstacles.ts";
import { type ConvexOutline, surroundingsOf, wedgeStopsRobot } from "../../motion/surroundings.ts";
import { cos, sin } from "../../num/elementary.ts";

/** Number of push directions, and the angle between two of them: 5°. */
export const DIRECTIONS = 72;
export const DIRECTION_RAD = (360 / DIRECTIONS) * RAD_PER_DEG;

/**
 * Where the robot's origin may be at each of the directions, without touching anything: a rectangle, less what the wedge's
 * edge cuts off. Exact, for walls and edge are straight. The doorway counts as wall: a robot that pushes stays inside.
 */
export interface Room {
  readonly cos: Float64Array;
  readonly sin: Float64Array;
  readonly minX: Float64Array;
  readonly maxX: Float64Array;
  readonly minY: Float64Array;
  readonly maxY: Float64Array;
  /** Allowed is edgeX·x + edgeY·y ≥ edgeLevel; −Infinity where the wedge does not stop the robot. */
  readonly edgeX: number;
  readonly edgeY: number;
  readonly edgeLevel: Float64Array;
  /** Hull of footprint and ground outline, for keep-outs. */
  readonly hull: ConvexOutline;
}

/** @param clearanceMm gap kept to walls, not to the wedge, which balls are pushed against; 0: what is just possible */
export function roomOf(project: Project, clearanceMm = 0): Room {
  const { zone, robot } = project;
  const { whole, ground } = surroundingsOf(zone, robot);
  const edge = wedgeEdge(zone);
  const stops = wedgeStopsRobot(zone, robot);
  const room = {
    cos: new Float64Array(DIRECTIONS),
    sin: new Float64Array(DIRECTIONS),
    minX: new Float64Array(DIRECTIONS),
    maxX: new Float64Array(DIRECTIONS),
    minY: new Float64Array(DIRECTIONS),
    maxY: new Float64Array(DIRECTIONS),
    edgeX: edge.nx,
    edgeY: edge.ny,
    edgeLevel: new Float64Array(DIRECTIONS).fill(Number.NEGATIVE_INFINITY),
    hull: whole,
  };
  for (let d = 0; d < DIRECTIONS; d++) {
    const c = cosOf(d);
    const s = sinOf(d);
    room.cos[d] = c;
    room.sin[d] = s;
    room.minX[d] = clearanceMm + support(whole, c, s, -1, 0);
    room.maxX[d] = zone.widthMm - clearanceMm - support(whole, c, s, 1, 0);
    room.minY[d] = clearanceMm + support(whole, c, s, 0, -1);
    room.maxY[d] = zone.heightMm - clearanceMm - support(whole, c, s, 0, 1);
    if (stops) {
      room.edgeLevel[d] = edge.offset + support(ground, c, s, -edge.nx, -edge.ny);
    }
  }
  return room;
}

/** How far an outline turned by (c, s) reaches along the unit vector (nx, ny) from its origin, mm. */
function support(outline: ConvexOutline, c: number, s: number, nx: number, ny: number): number {
  const ahead = c * nx + s * ny;
  const left = c * ny - s * nx;
  let most = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < outline.count; i++) {
    most = Math.max(most, ahead * (outline.x[i] ?? 0) + left * (outline.y[i] ?? 0));
  }
  return most;
}

/** Cosine and sine of direction d, exact at right angles, so that a push along a wall stays on it. */
function cosOf(d: number): number {
  return d % (DIRECTIONS / 2) === DIRECTIONS / 4 ? 0 : cos(d * DIRECTION_RAD);
}

function sinOf(d: number): number {
  return d % (DIRECTIONS / 2) === 0 ? 0 : sin(d * DIRECTION_RAD);
}
