import { ballsOf, type Project } from "../model/project.ts";
import { startRegion } from "../model/startRegion.ts";
import type { PointMm } from "../model/zone.ts";
import type { CoursePiece } from "../motion/course.ts";
import type { Pose } from "../motion/pose.ts";
import { cos, sin } from "../num/elementary.ts";
import type { Reach } from "./reach.ts";

/** Places at which a ball may lie are looked at this far apart, mm, or so that about so many are: far less than a pusher's width. */
const GRID_MM = 40;
const PLACES = 800;
/** Way between two looks at what is in the pusher in a curve, mm; a ball that is touched by the pusher's back counts as well. */
const STEP_MM = 10;

/**
 * Which stretches of a course can have brought a ball into the pusher: those that take it over a place where one may still lie. What
 * the pusher has been over counts as empty; balls that were lost on the way are not followed.
 */
export class Gathering {
  private readonly reach: Reach;
  private readonly radiusMm: number;
  /** x, y of the places where a ball may still lie, the first `count` of them. */
  private readonly open: Float64Array;
  private count: number;

  /** @param places where the balls lie; left out: wherever the project's layout may put one */
  constructor(project: Project, reach: Reach, places: readonly PointMm[] = startPlaces(project)) {
    this.reach = reach;
    this.radiusMm = ballsOf(project).reduce((most, ball) => Math.max(most, ball.diameterMm / 2), 0);
    this.open = flat(places).slice();
    this.count = places.length;
  }

  /** Whether a piece driven forward gathers anything; what it does is no longer there. */
  gathers(piece: CoursePiece): boolean {
    const { from, to, kind } = piece;
    const before = this.count;
    const [dx, dy] = [to.xMm - from.xMm, to.yMm - from.yMm];
    const wayMm = Math.sqrt(dx * dx + dy * dy);
    if (kind === "line") this.takeIn(from, wayMm);
    else {
      const steps = Math.max(1, Math.ceil(wayMm / STEP_MM));
      for (let k = 0; k <= steps; k++) this.takeIn(poseAt(piece, k / steps), 0);
    }
    return this.count < before;
  }

  /** Everything that the pusher comes over in so much way straight ahead. */
  private takeIn({ xMm, yMm, headingRad }: Pose, wayMm: number): void {
    const { open, radiusMm } = this;
    const { pusherFrontMm, pusherBackMm, pusherLeftMm, pusherRightMm } = this.reach;
    const [c, s] = [cos(headingRad), sin(headingRad)];
    let kept = 0;
    for (let i = 0; i < 2 * this.count; i += 2) {
      const [x = 0, y = 0] = [open[i], open[i + 1]];
      const ahead = c * (x - xMm) + s * (y - yMm);
      const left = c * (y - yMm) - s * (x - xMm);
      const inLength = ahead > pusherBackMm - STEP_MM && ahead < pusherFrontMm + radiusMm + wayMm;
      if (inLength && left < pusherLeftMm && left > 0 - pusherRightMm) continue;
      open[kept] = x;
      open[kept + 1] = y;
      kept += 2;
    }
    this.count = kept / 2;
  }
}

/** x, y of places; hundreds of routines are gone through with the same ones. */
function flat(places: readonly PointMm[]): Float64Array {
  const known = flats.get(places) ?? Float64Array.from(places.flatMap(({ xMm, yMm }) => [xMm, yMm]));
  flats.set(places, known);
  return known;
}

const flats = new WeakMap<readonly PointMm[], Float64Array>();

/** Along a curve. */
function poseAt({ from, centreXMm, centreYMm, angleRad }: CoursePiece, share: number): Pose {
  const [c, s] = [cos(share * angleRad), sin(share * angleRad)];
  const [dx, dy] = [from.xMm - centreXMm, from.yMm - centreYMm];
  return {
    xMm: centreXMm + c * dx - s * dy,
    yMm: centreYMm + s * dx + c * dy,
    headingRad: from.headingRad + share * angleRad,
  };
}

/** The places of a fixed layout, or an even grid over those of a random one, for its smallest ball. */
export function startPlaces(project: Project): readonly PointMm[] {
  const { layout } = project.rules;
  if (layout.kind === "fixed") return layout.positions;
  const region = startRegion(project);
  const radiusMm = ballsOf(project).reduce(
    (least, ball) => Math.min(least, ball.diameterMm / 2),
    Number.POSITIVE_INFINITY,
  );
  const { widthMm, heightMm } = project.zone;
  const inset = radiusMm + (region?.wallMarginMm ?? 0);
  const gridMm = Math.max(GRID_MM, Math.sqrt((widthMm * heightMm) / PLACES));
  const columns = 1 + Math.ceil(Math.max(0, widthMm - 2 * inset) / gridMm);
  const rows = 1 + Math.ceil(Math.max(0, heightMm - 2 * inset) / gridMm);
  const at = (i: number, count: number, lengthMm: number) =>
    inset + (Math.max(0, lengthMm - 2 * inset) * i) / Math.max(1, count - 1);
  return Array.from({ length: columns * rows }, (_, k) => ({
    xMm: at(k % columns, columns, widthMm),
    yMm: at(Math.floor(k / columns), rows, heightMm),
  })).filter(({ xMm, yMm }) => region?.allows(xMm, yMm, radiusMm) === true);
}
