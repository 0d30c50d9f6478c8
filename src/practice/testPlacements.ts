import { evenPoints, nearestPoint } from "../geometry/evenPoints.ts";
import { ballsOf, type Project } from "../model/project.ts";
import { type StartRegion, startRegion } from "../model/startRegion.ts";
import type { PointMm } from "../model/zone.ts";
import { RandomStream } from "../num/stream.ts";
import { drawPlacement } from "../trial/placement.ts";

/** Places a team can set with a tape measure: multiples of this. */
const TAPE_MM = 5;
/** Enough to tell apart where a ball lies, few enough for a hundred placements in a tenth of a second. */
const MOST_SAMPLES = 4000;
const ROUNDS = 40;
/** Ways to deal the places out that are tried; the one whose balls lie farthest apart is taken. */
const DEALS = 200;
/** A stream of its own, away from those of the trials. */
const STREAM = 0x70726163;

/** One layout of all balls, in the order of the project. */
export type Placement = readonly PointMm[];

/**
 * Placements for practice that together fill the zone evenly: the places of all balls of one size over all placements are spread by
 * Lloyd's iteration, on multiples of 5 mm, then dealt out so that balls of one placement keep apart. A fixed layout is its own only
 * placement.
 *
 * @param count whole, positive
 * @param seed chooses among equally good sets
 */
export function testPlacements(project: Project, count: number, seed: number): readonly Placement[] {
  const { layout } = project.rules;
  const region = startRegion(project);
  if (layout.kind === "fixed" || region === undefined) {
    return Array.from({ length: count }, () => drawPlacement(project, seed, 0));
  }
  const random = new RandomStream().open(seed, 0, STREAM);
  const radii = ballsOf(project).map(({ diameterMm }) => diameterMm / 2);
  const places = new Map(
    [...new Set(radii)].map((radius) => {
      const balls = radii.filter((each) => each === radius).length;
      return [radius, evenPlaces(project, region, radius, balls * count, random)] as const;
    }),
  );
  let best: readonly Placement[] = [];
  let bestGap = Number.NEGATIVE_INFINITY;
  for (let deal = 0; deal < DEALS; deal++) {
    const dealt = dealOut(places, radii, count, random);
    const gap = Math.min(...dealt.map((placement) => leastGapMm(placement, radii)));
    if (gap > bestGap) {
      best = dealt;
      bestGap = gap;
    }
  }
  return best.map((placement, i) =>
    leastGapMm(placement, radii) >= region.spacingMm ? placement : drawPlacement(project, seed, i),
  );
}

/** Places of a ball's centre, on the tape's marks, spread evenly over where it may lie. */
function evenPlaces(
  { zone }: Project,
  region: StartRegion,
  radius: number,
  count: number,
  random: RandomStream,
): PointMm[] {
  const inset = radius + region.wallMarginMm;
  const samples = samplesOf(zone.widthMm, zone.heightMm, inset, (x, y) => region.allows(x, y, radius));
  const total = samples.length / 2;
  const start = Array.from({ length: count }, () => random.below(total)).flatMap((i) => [
    samples[2 * i] ?? 0,
    samples[2 * i + 1] ?? 0,
  ]);
  const points = evenPoints(samples, start, ROUNDS);
  return Array.from({ length: count }, (_, k) => {
    const i = nearestPoint(samples, points[2 * k] ?? 0, points[2 * k + 1] ?? 0);
    return { xMm: samples[2 * i] ?? 0, yMm: samples[2 * i + 1] ?? 0 };
  });
}

function samplesOf(
  widthMm: number,
  heightMm: number,
  insetMm: number,
  allows: (xMm: number, yMm: number) => boolean,
): Float64Array {
  let step = 2 * TAPE_MM;
  while ((widthMm / step) * (heightMm / step) > MOST_SAMPLES) step += TAPE_MM;
  const found: number[] = [];
  const first = Math.ceil(insetMm / TAPE_MM) * TAPE_MM;
  for (let y = first; y <= heightMm - insetMm; y += step) {
    for (let x = first; x <= widthMm - insetMm; x += step) if (allows(x, y)) found.push(x, y);
  }
  return Float64Array.from(found);
}

function dealOut(
  places: ReadonlyMap<number, readonly PointMm[]>,
  radii: readonly number[],
  count: number,
  random: RandomStream,
): readonly Placement[] {
  const stacks = new Map([...places].map(([radius, points]) => [radius, shuffled(points, random)]));
  return Array.from({ length: count }, () =>
    radii.map((radius) => stacks.get(radius)?.pop() ?? { xMm: 0, yMm: 0 }),
  );
}

/** Fisher and Yates. */
function shuffled<T>(items: readonly T[], random: RandomStream): T[] {
  const list = [...items];
  for (let i = list.length - 1; i > 0; i--) {
    const k = random.below(i + 1);
    const [one, two] = [list[i], list[k]];
    if (one !== undefined && two !== undefined) {
      list[i] = two;
      list[k] = one;
    }
  }
  return list;
}

/** Smallest gap between two balls of a placement, mm; Infinity for a single ball. */
function leastGapMm(placement: Placement, radii: readonly number[]): number {
  let least = Number.POSITIVE_INFINITY;
  for (const [i, a] of placement.entries()) {
    for (let j = 0; j < i; j++) {
      const b = placement[j];
      if (b === undefined) continue;
      const [dx, dy] = [a.xMm - b.xMm, a.yMm - b.yMm];
      least = Math.min(least, Math.sqrt(dx * dx + dy * dy) - (radii[i] ?? 0) - (radii[j] ?? 0));
    }
  }
  return least;
}
