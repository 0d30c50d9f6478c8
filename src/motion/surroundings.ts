import { convexHull } from "../geometry/polygon.ts";
import { robotOutline } from "../model/outline.ts";
import type { Robot } from "../model/robot.ts";
import type { PointMm, Zone } from "../model/zone.ts";
import { type Box, boxOf, doorwayParts, type HalfPlane, wedgeEdge, wholeWalls } from "./obstacles.ts";

/** A convex outline in the robot frame, counter-clockwise, as flat arrays with its edges' outward unit normals. */
export interface ConvexOutline {
  readonly count: number;
  readonly x: Float64Array;
  readonly y: Float64Array;
  /** Edge i runs from vertex i to vertex i+1. */
  readonly normalX: Float64Array;
  readonly normalY: Float64Array;
  /** Largest distance of a vertex from the robot's origin, mm. */
  readonly radius: number;
}

/** What can stop the robot, and the outlines it is stopped by. */
export interface Surroundings {
  readonly whole: ConvexOutline;
  readonly ground: ConvexOutline;
  readonly planes: readonly HalfPlane[];
  readonly boxes: readonly Box[];
}

/** The hull of points, ready for the search for a touch. */
export function convexOutline(points: readonly PointMm[]): ConvexOutline {
  const hull = convexHull(points);
  const count = hull.length;
  const x = Float64Array.from(hull, (p) => p.xMm);
  const y = Float64Array.from(hull, (p) => p.yMm);
  const normalX = new Float64Array(count);
  const normalY = new Float64Array(count);
  let radius = 0;
  hull.forEach((from, i) => {
    const to = hull[(i + 1) % count] ?? from;
    const dx = to.xMm - from.xMm;
    const dy = to.yMm - from.yMm;
    const length = Math.sqrt(dx * dx + dy * dy);
    normalX[i] = dy / length;
    normalY[i] = -dx / length;
    radius = Math.max(radius, Math.sqrt(from.xMm * from.xMm + from.yMm * from.yMm));
  });
  return { count, x, y, normalX, normalY, radius };
}

/** True where the wedge's edge is something that tracks can run against. */
export function wedgeStopsRobot(zone: Zone, robot: Robot): boolean {
  return !robot.climbsWedge && zone.wedge.profile !== "flat";
}

/**
 * Walls stop the convex hull of everything (footprint and ground outline); the wedge's edge stops the ground outline.
 * The hull instead of the outline itself is exact against straight walls; at doorposts and keep-outs it stops a
 * robot with open arms a little early.
 */
export function surroundingsOf(zone: Zone, robot: Robot): Surroundings {
  const ofZone = known.get(zone) ?? new WeakMap<Robot, Surroundings>();
  known.set(zone, ofZone);
  const around = ofZone.get(robot) ?? workedOut(zone, robot);
  ofZone.set(robot, around);
  return around;
}

/** Of zones and robots that are in use: every routine of a catalogue and every plan of a trial asks. */
const known = new WeakMap<Zone, WeakMap<Robot, Surroundings>>();

function workedOut(zone: Zone, robot: Robot): Surroundings {
  const outline = robotOutline(robot);
  const planes: HalfPlane[] = [...wholeWalls(zone)];
  if (wedgeStopsRobot(zone, robot)) planes.push({ ...wedgeEdge(zone), stops: "ground" });
  return {
    whole: convexOutline([...outline.footprint, ...outline.ground]),
    ground: convexOutline(outline.ground),
    planes,
    boxes: [...doorwayParts(zone), ...zone.keepOuts.map(boxOf)],
  };
}
