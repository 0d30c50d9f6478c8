import { discFreeWay } from "./keepOut.kernel.ts";
import { DIRECTIONS } from "./room.ts";
import type { PushSetup } from "./setup.ts";

/** Rounding of places at walls, mm. */
export const EDGE_MM = 1e-6;
/** The robot comes at a ball straight from at least this far behind it, mm. */
export const RUN_UP_MM = 30;

/** One straight push, as far as it can go; the result of `meet`. Lengths in mm. */
export interface Push {
  /** Where the robot's origin is when it touches the ball. */
  robotX: number;
  robotY: number;
  /** Where the ball is once it rides in its seat. */
  ballX: number;
  ballY: number;
  /** Way of the robot from the touch until something stops it or the ball. */
  travel: number;
  /** Way of the robot until the ball is in its seat; the ball then goes as far as the robot. */
  advance: number;
  /** Way of the ball from its seat until a wall or keep-out stops it. */
  ballFree: number;
}

export function newPush(): Push {
  return { robotX: 0, robotY: 0, ballX: 0, ballY: 0, travel: 0, advance: 0, ballFree: 0 };
}

/**
 * Meets a ball at (x, y) in direction d by contact k. False where the robot has no room there or behind, where the ball has
 * none to slide into its seat, or where a push along a wall lacks the wall.
 */
export function meet(setup: PushSetup, x: number, y: number, d: number, k: number, out: Push): boolean {
  const { room, radius, width, height, keepOuts } = setup;
  const contact = setup.contacts[k]!;
  const c = room.cos[d]!;
  const s = room.sin[d]!;
  if (contact.wall !== 0 && !wallBeside(setup, x, y, c, s, d, contact.wall)) return false;
  const rx = x - c * contact.touchXMm + s * contact.touchYMm;
  const ry = y - s * contact.touchXMm - c * contact.touchYMm;
  const bx = x + c * contact.shiftXMm - s * contact.shiftYMm;
  const by = y + s * contact.shiftXMm + c * contact.shiftYMm;
  const most = robotFreeWay(setup, rx, ry, d);
  if (most < 0 || !hasRoom(setup, rx - c * RUN_UP_MM, ry - s * RUN_UP_MM, d)) return false;
  if (bx < radius - EDGE_MM || bx > width - radius + EDGE_MM) return false;
  if (by < radius - EDGE_MM || by > height - radius + EDGE_MM) return false;
  let ball = Math.min(
    exit(bx, c, radius, width - radius),
    exit(by, s, radius, height - radius),
    width + height,
  );
  if (keepOuts.length > 0) {
    ball = discFreeWay(keepOuts, radius, bx, by, c, s, ball);
    if (ball < 0) return false;
  }
  if (ball < 0) ball = 0;
  const travel = Math.min(most, contact.advanceMm + ball);
  if (travel < contact.advanceMm) return false;
  out.robotX = rx;
  out.robotY = ry;
  out.ballX = bx;
  out.ballY = by;
  out.travel = travel;
  out.advance = contact.advanceMm;
  out.ballFree = ball;
  return true;
}

/** Whether the robot fits at a place, facing direction d. */
export function hasRoom(setup: PushSetup, x: number, y: number, d: number): boolean {
  const { room, blocks } = setup;
  if (x < room.minX[d]! - EDGE_MM || x > room.maxX[d]! + EDGE_MM) return false;
  if (y < room.minY[d]! - EDGE_MM || y > room.maxY[d]! + EDGE_MM) return false;
  if (room.edgeX * x + room.edgeY * y - room.edgeLevel[d]! < -EDGE_MM) return false;
  return blocks.freeWay(d, x, y, 0) >= 0;
}

/** Way of the robot from a place straight on in direction d; −1 where it has no room. */
export function robotFreeWay(setup: PushSetup, x: number, y: number, d: number): number {
  const { room, blocks } = setup;
  if (x < room.minX[d]! - EDGE_MM || x > room.maxX[d]! + EDGE_MM) return -1;
  if (y < room.minY[d]! - EDGE_MM || y > room.maxY[d]! + EDGE_MM) return -1;
  const c = room.cos[d]!;
  const s = room.sin[d]!;
  const gap = room.edgeX * x + room.edgeY * y - room.edgeLevel[d]!;
  if (gap < -EDGE_MM) return -1;
  let free = Math.min(exit(x, c, room.minX[d]!, room.maxX[d]!), exit(y, s, room.minY[d]!, room.maxY[d]!));
  const rate = room.edgeX * c + room.edgeY * s;
  if (rate < 0) free = Math.min(free, gap / -rate);
  free = Math.max(0, free);
  return blocks.freeWay(d, x, y, free);
}

/** Way along one axis until a coordinate leaves low … high. */
function exit(at: number, rate: number, low: number, high: number): number {
  if (rate > 1e-12) return (high - at) / rate;
  return rate < -1e-12 ? (low - at) / rate : Number.POSITIVE_INFINITY;
}

/** A wall right beside the ball, on the robot's left (1) or right (−1), that runs along direction d. The doorway's wall does not count. */
function wallBeside(
  setup: PushSetup,
  x: number,
  y: number,
  c: number,
  s: number,
  d: number,
  side: number,
): boolean {
  if (d % (DIRECTIONS / 4) !== 0) return false;
  const { radius, width, height, doorSide } = setup;
  const toX = -s * side;
  const toY = c * side;
  if (toX > 0.5) return doorSide !== "right" && width - radius - x < EDGE_MM;
  if (toX < -0.5) return doorSide !== "left" && x - radius < EDGE_MM;
  if (toY > 0.5) return doorSide !== "top" && height - radius - y < EDGE_MM;
  return doorSide !== "bottom" && y - radius < EDGE_MM;
}
