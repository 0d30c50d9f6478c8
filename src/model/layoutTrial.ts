import { RandomStream } from "../num/stream.ts";
import { zoneIssueTexts as t } from "../texts/english/zoneIssue.ts";
import { ballsOf, type Project } from "./project.ts";
import { type StartRegion, startRegion } from "./startRegion.ts";
import { PI } from "./units.ts";
import type { PointMm } from "./zone.ts";

/** Places drawn for one ball before a layout is begun anew. */
export const LAYOUT_DRAWS = 200;

/** Layouts begun by the check. */
const STARTS = 40;

/**
 * So many of them must work. With a true share of 0.1, 12 of 40 would come up once in 2,500 checks; and a share above 0.1
 * makes 200 failures in a row, after which a trial could not start, rarer than 10⁻⁹.
 */
const NEEDED = 12;

/** No equal discs lie denser in the plane: π/√12 (Fejes Tóth, Math. Z. 48, 1943). Unequal ones can; for them the bound is 1. */
const DENSEST = PI / Math.sqrt(12);

export type LayoutTrial = { readonly fits: true } | { readonly fits: false; readonly reason: string };

/**
 * Whether the balls of a random layout can be laid out: first by their area, then by doing what a trial does, random
 * sequential addition in the order of the project. A layout that works once in a while is refused: trials could not draw it.
 */
export function tryLayout(project: Project): LayoutTrial {
  const region = startRegion(project);
  if (region === undefined) return { fits: true };
  const radii = ballsOf(project).map((kind) => kind.diameterMm / 2);
  const shortage = areaShortage(project, region, radii);
  if (shortage !== undefined) return { fits: false, reason: shortage };
  const random = new RandomStream().open(0, 0, 0);
  let worked = 0;
  let most = 0;
  for (let start = 0; start < STARTS && worked < NEEDED; start++) {
    const placed = layOut(project, region, radii, random);
    most = Math.max(most, placed);
    if (placed === radii.length) worked++;
  }
  if (worked >= NEEDED) return { fits: true };
  const reason = worked === 0 ? t.roomFor(most, radii.length, STARTS) : t.roomSeldom(worked, STARTS);
  return { fits: false, reason };
}

/** Discs that hold half the gap around each ball do not overlap and lie in the zone less its margin; that bounds their area. */
function areaShortage(project: Project, region: StartRegion, radii: readonly number[]): string | undefined {
  const half = region.spacingMm / 2;
  // Where the margin is less than half the gap, the discs may reach beyond the walls.
  const border = half - region.wallMarginMm;
  const width = Math.max(0, project.zone.widthMm + 2 * border);
  const height = Math.max(0, project.zone.heightMm + 2 * border);
  const needed = radii.reduce((sum, radius) => sum + PI * (radius + half) * (radius + half), 0);
  const equal = radii.every((radius) => radius === radii[0]);
  const room = width * height * (equal ? DENSEST : 1);
  if (needed <= room) return undefined;
  return t.area(cm2(needed), cm2(room));
}

function cm2(areaMm2: number): string {
  return `${Math.round(areaMm2 / 100)} cm²`;
}

interface Placed {
  readonly point: PointMm;
  readonly radius: number;
}

/** Number of balls placed before one found no place. */
function layOut(
  project: Project,
  region: StartRegion,
  radii: readonly number[],
  random: RandomStream,
): number {
  const placed: Placed[] = [];
  for (const radius of radii) {
    const point = drawPlace(project, region, radius, placed, random);
    if (point === undefined) return placed.length;
    placed.push({ point, radius });
  }
  return placed.length;
}

function drawPlace(
  { zone }: Project,
  region: StartRegion,
  radius: number,
  placed: readonly Placed[],
  random: RandomStream,
): PointMm | undefined {
  const inset = radius + region.wallMarginMm;
  for (let draw = 0; draw < LAYOUT_DRAWS; draw++) {
    const xMm = inset + random.uniform() * (zone.widthMm - 2 * inset);
    const yMm = inset + random.uniform() * (zone.heightMm - 2 * inset);
    const clear = ({ point, radius: other }: Placed): boolean => {
      const dx = xMm - point.xMm;
      const dy = yMm - point.yMm;
      const apart = radius + other + region.spacingMm;
      return dx * dx + dy * dy >= apart * apart;
    };
    if (region.allows(xMm, yMm, radius) && placed.every(clear)) return { xMm, yMm };
  }
  return undefined;
}
