import { ballsOf, type Project } from "./project.ts";
import { type StartRegion, startRegion } from "./startRegion.ts";
import { PI } from "./units.ts";
import type { PointMm } from "./zone.ts";

/** Places looked at per size of ball: a region of a thousandth of the zone is still hit four times. */
const PLACES = 4096;

/** Layouts begun before giving up; if none of them works, drawing layouts would be hopeless too. */
const RESTARTS = 40;

/** Places tried for one ball in one layout. */
const DRAWS = 200;

/** No equal discs lie denser in the plane: π/√12 (Fejes Tóth, Math. Z. 48, 1943). Larger balls among smaller ones can, hence the cap of 1 for mixtures. */
const DENSEST = PI / Math.sqrt(12);

/** Steps of the evenly spread sequence, 1/φ₂ and 1/φ₂² with φ₂³ = φ₂ + 1 (M. Roberts, "The unreasonable effectiveness of quasirandom sequences"; from memory). */
const STEP_X = 0.7548776662466927;
const STEP_Y = 0.5698402909980532;

export type LayoutTrial = { readonly fits: true } | { readonly fits: false; readonly reason: string };

/** Whether the balls of a random layout can be placed: first by their area, then by trying. */
export function tryLayout(project: Project): LayoutTrial {
  const region = startRegion(project);
  if (region === undefined) return { fits: true };
  const radii = ballsOf(project)
    .map((kind) => kind.diameterMm / 2)
    .sort((a, b) => b - a);
  const shortage = areaShortage(project, region, radii);
  if (shortage !== undefined) return { fits: false, reason: shortage };
  const places = new Map<number, readonly PointMm[]>();
  for (const radius of radii) {
    if (places.has(radius)) continue;
    const allowed = allowedPlaces(project, region, radius);
    if (allowed.length === 0) return { fits: false, reason: `no place for a ball of ${2 * radius} mm` };
    places.set(radius, allowed);
  }
  let most = 0;
  const random = indexSource();
  for (let i = 0; i < RESTARTS; i++) {
    const placed = layOut(radii, places, region.spacingMm, random);
    if (placed === radii.length) return { fits: true };
    most = Math.max(most, placed);
  }
  return { fits: false, reason: `room for ${most} of ${radii.length} balls in ${RESTARTS} attempts` };
}

/** Discs that hold half the gap around each ball do not overlap and lie in the zone less its margin; that bounds their area. */
function areaShortage(project: Project, region: StartRegion, radii: readonly number[]): string | undefined {
  const half = region.spacingMm / 2;
  const inset = Math.max(0, region.wallMarginMm - half);
  const border = Math.max(0, half - region.wallMarginMm);
  const width = project.zone.widthMm - 2 * inset + 2 * border;
  const height = project.zone.heightMm - 2 * inset + 2 * border;
  const needed = radii.reduce((sum, radius) => sum + PI * (radius + half) * (radius + half), 0);
  const equal = radii.every((radius) => radius === radii[0]);
  const room = Math.max(0, width) * Math.max(0, height) * (equal ? DENSEST : 1);
  if (needed <= room) return undefined;
  return `the balls and their gaps take ${cm2(needed)}, the zone has room for ${cm2(room)}`;
}

function cm2(areaMm2: number): string {
  return `${Math.round(areaMm2 / 100)} cm²`;
}

function allowedPlaces(project: Project, region: StartRegion, radius: number): readonly PointMm[] {
  const inset = radius + region.wallMarginMm;
  const width = project.zone.widthMm - 2 * inset;
  const height = project.zone.heightMm - 2 * inset;
  if (width < 0 || height < 0) return [];
  const places: PointMm[] = [];
  for (let i = 0; i < PLACES; i++) {
    const xMm = inset + width * fraction(0.5 + i * STEP_X);
    const yMm = inset + height * fraction(0.5 + i * STEP_Y);
    if (region.allows(xMm, yMm, radius)) places.push({ xMm, yMm });
  }
  return places;
}

/** Number of balls placed, largest first, before one found no place. */
function layOut(
  radii: readonly number[],
  places: ReadonlyMap<number, readonly PointMm[]>,
  spacingMm: number,
  random: (below: number) => number,
): number {
  const placed: { readonly point: PointMm; readonly radius: number }[] = [];
  for (const radius of radii) {
    const allowed = places.get(radius) ?? [];
    const found = drawFree(allowed, random, (point) =>
      placed.every((other) => {
        const dx = point.xMm - other.point.xMm;
        const dy = point.yMm - other.point.yMm;
        const apart = radius + other.radius + spacingMm;
        return dx * dx + dy * dy >= apart * apart;
      }),
    );
    if (found === undefined) return placed.length;
    placed.push({ point: found, radius });
  }
  return placed.length;
}

function drawFree(
  places: readonly PointMm[],
  random: (below: number) => number,
  free: (point: PointMm) => boolean,
): PointMm | undefined {
  for (let i = 0; i < DRAWS; i++) {
    const point = places[random(places.length)];
    if (point !== undefined && free(point)) return point;
  }
  return undefined;
}

/** Indices from a 32-bit linear congruence (Numerical Recipes, 2nd ed., ch. 7.1; from memory): enough to shuffle places, always the same. */
function indexSource(): (below: number) => number {
  let state = 1;
  return (below) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return Math.floor((state / 4294967296) * below);
  };
}

function fraction(x: number): number {
  return x - Math.floor(x);
}
