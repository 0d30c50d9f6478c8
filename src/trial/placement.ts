import type { BallKind } from "../model/ball.ts";
import { ballsOf, type Project } from "../model/project.ts";
import { type StartRegion, startRegion } from "../model/startRegion.ts";
import type { PointMm } from "../model/zone.ts";
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
  private readonly region: StartRegion | undefined;
  private readonly project: Project;

  constructor(project: Project) {
    this.project = project;
    this.kinds = ballsOf(project);
    this.region = startRegion(project);
  }

  /**
   * @param seed non-negative safe integer; @param index trial number, below 2³²
   * @throws Error when the layout leaves no room (a checked project always has room)
   */
  draw(seed: number, index: number): readonly PointMm[] {
    const { layout } = this.project.rules;
    const { region } = this;
    if (layout.kind === "fixed") return layout.positions;
    if (region === undefined) throw new Error("a random layout without a start region");
    this.stream.open(seed, index, STREAMS.placement);
    for (let start = 0; start < MAX_STARTS; start++) {
      const placed = this.tryDraw(seed, index, start === 0, region);
      if (placed !== null) return placed;
    }
    throw new Error(
      `no room for ${this.kinds.length} balls after ${MAX_STARTS} tries; expected a layout that checkProject accepts`,
    );
  }

  private tryDraw(seed: number, index: number, even: boolean, region: StartRegion): PointMm[] | null {
    const { widthMm, heightMm } = this.project.zone;
    const placed: Point[] = [];
    const radii: number[] = [];
    for (const [b, kind] of this.kinds.entries()) {
      const r = kind.diameterMm / 2;
      const inset = r + region.wallMarginMm;
      let point: Point | null = null;
      for (let draw = 0; draw < MAX_DRAWS && point === null; draw++) {
        const spread = even && draw === 0;
        const u = spread ? sobol(index, 2 * b, seed + 1) : this.stream.uniform();
        const v = spread ? sobol(index, 2 * b + 1, seed + 1) : this.stream.uniform();
        const xMm = inset + u * (widthMm - 2 * inset);
        const yMm = inset + v * (heightMm - 2 * inset);
        if (region.allows(xMm, yMm, r) && hasRoom(placed, radii, xMm, yMm, r, region.spacingMm))
          point = { xMm, yMm };
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

/** One placement; for many, keep a PlacementDrawer. */
export function drawPlacement(project: Project, seed: number, index: number): readonly PointMm[] {
  return new PlacementDrawer(project).draw(seed, index);
}
