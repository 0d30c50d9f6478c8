import type { BallKind } from "../model/ball.ts";
import { robotOutline } from "../model/outline.ts";
import { ballsOf, type Project } from "../model/project.ts";
import type { PointMm } from "../model/zone.ts";
import { entryPose } from "../motion/entry.ts";
import { wedgeEdge } from "../motion/obstacles.ts";
import { cos, sin } from "../num/elementary.ts";
import { sobol } from "../num/sobol.kernel.ts";
import { RandomStream } from "../num/stream.ts";
import { STREAMS } from "./streams.ts";

/** Draws for one ball before the whole placement is begun anew, and fresh starts before giving up. */
const MAX_DRAWS = 200;
const MAX_STARTS = 200;

interface Point {
  xMm: number;
  yMm: number;
}

/**
 * Draws where the balls lie at the start of a trial: ball b takes dimensions 2b and 2b+1 of a scrambled Sobol point
 * (index = trial, scrambling = seed), so that many trials cover the allowed region evenly; a ball that falls on a
 * forbidden spot or too near another is drawn again from the trial's own random stream. The order in which balls are
 * laid is the order of the project: random sequential addition.
 */
export class PlacementDrawer {
  private readonly kinds: readonly BallKind[];
  private readonly stream = new RandomStream();
  private readonly allowed: (x: number, y: number, r: number) => boolean;
  private readonly project: Project;

  constructor(project: Project) {
    this.project = project;
    this.kinds = ballsOf(project);
    this.allowed = allowedPlaces(project);
  }

  /**
   * @param seed non-negative safe integer; @param index trial number, below 2³²
   * @throws Error when the layout leaves no room (a checked project always has room)
   */
  draw(seed: number, index: number): readonly PointMm[] {
    const { layout } = this.project.rules;
    if (layout.kind === "fixed") return layout.positions;
    this.stream.open(seed, index, STREAMS.placement);
    for (let start = 0; start < MAX_STARTS; start++) {
      const placed = this.tryDraw(seed, index, start === 0, layout.wallMarginMm, layout.spacingMm);
      if (placed !== null) return placed;
    }
    throw new Error(
      `no room for ${this.kinds.length} balls after ${MAX_STARTS} tries; expected a layout that checkProject accepts`,
    );
  }

  private tryDraw(
    seed: number,
    index: number,
    even: boolean,
    wallMarginMm: number,
    spacingMm: number,
  ): PointMm[] | null {
    const { widthMm, heightMm } = this.project.zone;
    const placed: Point[] = [];
    const radii: number[] = [];
    for (const [b, kind] of this.kinds.entries()) {
      const r = kind.diameterMm / 2;
      const inset = r + wallMarginMm;
      let point: Point | null = null;
      for (let draw = 0; draw < MAX_DRAWS && point === null; draw++) {
        const spread = even && draw === 0;
        const u = spread ? sobol(index, 2 * b, seed + 1) : this.stream.uniform();
        const v = spread ? sobol(index, 2 * b + 1, seed + 1) : this.stream.uniform();
        const xMm = inset + u * (widthMm - 2 * inset);
        const yMm = inset + v * (heightMm - 2 * inset);
        if (this.allowed(xMm, yMm, r) && hasRoom(placed, radii, xMm, yMm, r, spacingMm)) point = { xMm, yMm };
      }
      if (point === null) return null;
      placed.push(point);
      radii.push(r);
    }
    return placed;
  }
}

function hasRoom(
  placed: readonly Point[],
  radii: readonly number[],
  x: number,
  y: number,
  r: number,
  spacing: number,
): boolean {
  return placed.every((other, i) => {
    const dx = other.xMm - x;
    const dy = other.yMm - y;
    const apart = r + (radii[i] ?? 0) + spacing;
    return dx * dx + dy * dy >= apart * apart;
  });
}

/** Tells whether a ball of radius r may start with its centre at (x, y): clear of wedge, keep-outs, forbidden regions and the robot. */
export function allowedPlaces(project: Project): (x: number, y: number, r: number) => boolean {
  const { layout } = project.rules;
  if (layout.kind === "fixed") return () => true;
  const edge = wedgeEdge(project.zone);
  const robot = placedFootprint(project);
  return (x, y, r) => {
    if (edge.nx * x + edge.ny * y - edge.offset < r + layout.wedgeMarginMm) return false;
    for (const rect of layout.forbidden) {
      if (x > rect.xMm && x < rect.xMm + rect.widthMm && y > rect.yMm && y < rect.yMm + rect.heightMm)
        return false;
    }
    for (const rect of project.zone.keepOuts) {
      const dx = Math.max(rect.xMm - x, 0, x - rect.xMm - rect.widthMm);
      const dy = Math.max(rect.yMm - y, 0, y - rect.yMm - rect.heightMm);
      if (dx * dx + dy * dy < r * r) return false;
    }
    return distanceTo(robot, x, y) >= r + layout.robotMarginMm;
  };
}

/** Footprint and ground outline at the entry pose, zone frame, each a closed ring of flat coordinates. */
function placedFootprint(project: Project): readonly (readonly number[])[] {
  const pose = entryPose(project.zone, project.robot);
  const c = cos(pose.headingRad);
  const s = sin(pose.headingRad);
  const outline = robotOutline(project.robot);
  return [outline.footprint, outline.ground].map((ring) =>
    ring.flatMap((p) => [pose.xMm + c * p.xMm - s * p.yMm, pose.yMm + s * p.xMm + c * p.yMm]),
  );
}

/** Distance from a point to the nearest ring, 0 inside. */
function distanceTo(rings: readonly (readonly number[])[], x: number, y: number): number {
  let best = Number.POSITIVE_INFINITY;
  for (const ring of rings) {
    let inside = false;
    let ax = ring[ring.length - 2] ?? 0;
    let ay = ring[ring.length - 1] ?? 0;
    for (let k = 0; k < ring.length; k += 2) {
      const bx = ring[k] ?? 0;
      const by = ring[k + 1] ?? 0;
      const dx = bx - ax;
      const dy = by - ay;
      const t = Math.min(1, Math.max(0, ((x - ax) * dx + (y - ay) * dy) / (dx * dx + dy * dy)));
      const ex = x - ax - t * dx;
      const ey = y - ay - t * dy;
      best = Math.min(best, Math.sqrt(ex * ex + ey * ey));
      if (ay > y !== by > y && x < ax + ((y - ay) / dy) * dx) inside = !inside;
      ax = bx;
      ay = by;
    }
    if (inside) return 0;
  }
  return best;
}

/** One placement; for many, keep a PlacementDrawer. */
export function drawPlacement(project: Project, seed: number, index: number): readonly PointMm[] {
  return new PlacementDrawer(project).draw(seed, index);
}
