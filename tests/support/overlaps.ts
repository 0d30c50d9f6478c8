import { withArmsAt } from "../../src/model/arms.ts";
import { robotOutline } from "../../src/model/outline.ts";
import type { Zone } from "../../src/model/zone.ts";
import { type Surroundings, surroundingsOf } from "../../src/motion/surroundings.ts";
import { arms } from "../../src/trial/arms.kernel.ts";
import { bx, by, mode, OUT, radius } from "../../src/trial/balls.kernel.ts";
import type { TrialPlan } from "../../src/trial/plan.ts";
import { robot } from "../../src/trial/robot.kernel.ts";

/**
 * How deep things stand in each other in the engine's world right now, by plain geometry of its own: distances to whole
 * polygons and rectangles, not to the features the engine looks at.
 */

export interface Overlap {
  readonly what: string;
  readonly depthMm: number;
}

type Point = readonly [number, number];

/** Distance from a point to a ring, negative inside. */
export function signedDistance(ring: readonly Point[], [x, y]: Point): number {
  let best = Number.POSITIVE_INFINITY;
  let inside = false;
  for (const [i, [ax, ay]] of ring.entries()) {
    const [bx_, by_] = ring[(i + 1) % ring.length]!;
    const dx = bx_ - ax;
    const dy = by_ - ay;
    const t = Math.min(1, Math.max(0, ((x - ax) * dx + (y - ay) * dy) / (dx * dx + dy * dy)));
    best = Math.min(best, Math.hypot(x - ax - t * dx, y - ay - t * dy));
    if (ay > y !== by_ > y && x < ax + ((y - ay) / dy) * dx) inside = !inside;
  }
  return inside ? -best : best;
}

function placed(points: readonly { xMm: number; yMm: number }[]): Point[] {
  const { x, y, c, s } = robot;
  return points.map((p) => [x + c * p.xMm - s * p.yMm, y + s * p.xMm + c * p.yMm]);
}

/** Solid parts beside the zone: deep rectangles behind every wall, the doorway left open, and the keep-outs. */
function solids(zone: Zone): { name: string; ring: Point[] }[] {
  const { widthMm: w, heightMm: h, doorway } = zone;
  const deep = 5000;
  const from = doorway.centreMm - doorway.widthMm / 2;
  const to = doorway.centreMm + doorway.widthMm / 2;
  const rect = (name: string, x0: number, y0: number, x1: number, y1: number) => ({
    name,
    ring: [
      [x0, y0],
      [x1, y0],
      [x1, y1],
      [x0, y1],
    ] as Point[],
  });
  const parts = (wall: string): [number, number][] =>
    wall === doorway.wall
      ? [
          [-deep, from],
          [to, deep],
        ]
      : [[-deep, deep]];
  return [
    ...parts("left").map(([a, b]) => rect("left wall", -deep, a, 0, b)),
    ...parts("right").map(([a, b]) => rect("right wall", w, a, w + deep, b)),
    ...parts("bottom").map(([a, b]) => rect("bottom wall", a, -deep, b, 0)),
    ...parts("top").map(([a, b]) => rect("top wall", a, h, b, h + deep)),
    ...zone.keepOuts.map((k) => rect("keep-out", k.xMm, k.yMm, k.xMm + k.widthMm, k.yMm + k.heightMm)),
  ];
}

/** Overlap of a convex ring with a rectangle along the axis where it is least, 0 if apart. */
function ringDepth(ring: readonly Point[], box: readonly Point[]): number {
  let least = Number.POSITIVE_INFINITY;
  for (const polygon of [ring, box]) {
    for (const [i, [ax, ay]] of polygon.entries()) {
      const [bx_, by_] = polygon[(i + 1) % polygon.length]!;
      const length = Math.hypot(bx_ - ax, by_ - ay);
      const nx = (by_ - ay) / length;
      const ny = -(bx_ - ax) / length;
      const other = polygon === ring ? box : ring;
      const reach = Math.min(...other.map(([x, y]) => (x - ax) * nx + (y - ay) * ny));
      least = Math.min(least, -reach);
    }
  }
  return Math.max(0, least);
}

/** A watcher of one plan's world: call it at any step; it returns the deepest overlap of each sort. */
export function overlapWatch(plan: TrialPlan): () => Overlap[] {
  const { zone, robot: described } = plan.project;
  const stands = solids(zone);
  const around = surroundingsOf(zone, described);
  const n = plan.kinds.length;
  const hullOf = ({ whole }: Surroundings) =>
    Array.from({ length: whole.count }, (_, i) => ({ xMm: whole.x[i]!, yMm: whole.y[i]! }));
  const still = hullOf(around);
  return () => {
    const found: Overlap[] = [];
    const now = withArmsAt(described, arms.angle);
    const hull = plan.arms === null ? still : hullOf(surroundingsOf(zone, now));
    const footprint = placed(plan.arms === null ? plan.outline.footprint : robotOutline(now).footprint);
    for (let i = 0; i < n; i++) {
      if (mode[i] === OUT) continue;
      const at: Point = [bx[i]!, by[i]!];
      found.push({ what: `robot and ball ${i}`, depthMm: radius[i]! - signedDistance(footprint, at) });
      for (const { name, ring } of stands)
        found.push({ what: `${name} and ball ${i}`, depthMm: radius[i]! - signedDistance(ring, at) });
      for (let j = 0; j < i; j++) {
        const high = radius[i]! - radius[j]!;
        const apart = Math.hypot(Math.hypot(bx[i]! - bx[j]!, by[i]! - by[j]!), high);
        found.push({ what: `balls ${j} and ${i}`, depthMm: radius[i]! + radius[j]! - apart });
      }
    }
    const whole = placed(hull);
    for (const { name, ring } of stands)
      found.push({ what: `${name} and robot`, depthMm: ringDepth(whole, ring) });
    for (const plane of around.planes) {
      if (plane.stops !== "ground") continue;
      const ground = placed(plan.outline.ground);
      const deepest = Math.max(...ground.map(([x, y]) => plane.offset - plane.nx * x - plane.ny * y));
      found.push({ what: "wedge and robot", depthMm: deepest });
    }
    return found;
  };
}
