import { type Rate, wilson } from "../num/interval.ts";
import type { FateBatch } from "../trial/fates.ts";

/** A square cell of the map. */
export interface HeatCell {
  /** Its middle, mm. */
  readonly xMm: number;
  readonly yMm: number;
  /** Balls that started in the cell itself, and how many of them were delivered. */
  readonly balls: number;
  readonly delivered: number;
  /** As many balls as the smoothed share rests on: (Σw)²/Σw², rounded down. */
  readonly effectiveBalls: number;
  /** Share delivered of the balls that started around here, with its interval; null: not enough runs. */
  readonly rate: Rate | null;
}

/** Share of balls delivered by where they started. Cells row by row from the lower left, `columns` to a row. */
export interface HeatMap {
  readonly cellMm: number;
  /** Of the zone: the last cells of a row and of a column may reach over it. */
  readonly widthMm: number;
  readonly heightMm: number;
  readonly columns: number;
  readonly rows: number;
  /** A ball counts with weight (1 − (d/bandwidth)²)² at distance d from a cell's middle, and not at all beyond. */
  readonly bandwidthMm: number;
  readonly cells: readonly HeatCell[];
}

export interface HeatOptions {
  /** Side of a cell; default: 24 along the longer side. */
  readonly cellMm?: number;
  /** Default: as wide as it takes for TARGET_BALLS effective balls where balls start evenly. */
  readonly bandwidthMm?: number;
  /** Count this ball only, by its place in the project; default: all. */
  readonly ball?: number;
}

/** A cell resting on fewer effective balls shows no share: its interval would span half of all shares. Common practice, no source. */
export const FEWEST_BALLS = 12;

/** Effective balls aimed at: a share of a half is then known to ± 12 points. */
const TARGET_BALLS = 64;
const CELLS_ALONG = 24;
/** (∫w)²/∫w² over the kernel's disc, as a share of its area: (1/3)²/(1/5) for the weight (1 − u²)². */
const KERNEL_FRAC = 5 / 9;

/**
 * Share delivered by start position, smoothed by a kernel (Nadaraya–Watson with the biweight kernel): the share at a cell is the
 * mean over the balls that started within the bandwidth, nearer ones counting more. Its interval is Wilson's with the
 * effective number of balls, so a cell near which few balls started says so.
 *
 * Source: Silverman, Density Estimation (1986), ch. 3; effective sample size of Kish, Survey Sampling (1965); both from
 * memory. Checked in tests/unit/score/heatMap against closed forms.
 */
export function heatMap(
  fates: FateBatch,
  zone: { readonly widthMm: number; readonly heightMm: number },
  options: HeatOptions = {},
): HeatMap {
  const cellMm = options.cellMm ?? Math.max(zone.widthMm, zone.heightMm) / CELLS_ALONG;
  const columns = Math.max(1, Math.ceil(zone.widthMm / cellMm - 1e-9));
  const rows = Math.max(1, Math.ceil(zone.heightMm / cellMm - 1e-9));
  const starts = startsOf(fates, options.ball);
  const bandwidthMm = options.bandwidthMm ?? defaultBandwidth(starts.length, zone, cellMm);
  const sums = Array.from({ length: columns * rows }, () => ({
    balls: 0,
    delivered: 0,
    w: 0,
    ww: 0,
    home: 0,
  }));
  for (const start of starts) spread(start, sums, { cellMm, columns, rows, bandwidthMm });
  const cells = sums.map(({ balls, delivered, w, ww, home }, i): HeatCell => {
    // A hair more, so that equal weights count whole.
    const effectiveBalls = ww > 0 ? Math.floor((w * w) / ww + 1e-9) : 0;
    return {
      xMm: ((i % columns) + 0.5) * cellMm,
      yMm: (Math.floor(i / columns) + 0.5) * cellMm,
      balls,
      delivered,
      effectiveBalls,
      rate: effectiveBalls < FEWEST_BALLS ? null : smoothedRate(home / w, effectiveBalls),
    };
  });
  return { cellMm, widthMm: zone.widthMm, heightMm: zone.heightMm, columns, rows, bandwidthMm, cells };
}

interface Start {
  readonly xMm: number;
  readonly yMm: number;
  readonly isHome: boolean;
}

function startsOf(
  { balls, loss, startXMm, startYMm }: FateBatch,
  ball: number | undefined,
): readonly Start[] {
  const starts: Start[] = [];
  for (const [at, code] of loss.entries()) {
    if (ball !== undefined && at % balls !== ball) continue;
    starts.push({ xMm: startXMm[at] ?? 0, yMm: startYMm[at] ?? 0, isHome: code === 0 });
  }
  return starts;
}

function defaultBandwidth(
  starts: number,
  { widthMm, heightMm }: { readonly widthMm: number; readonly heightMm: number },
  cellMm: number,
): number {
  const perMm2 = Math.max(1, starts) / (widthMm * heightMm);
  const wanted = Math.sqrt(TARGET_BALLS / (KERNEL_FRAC * Math.PI * perMm2));
  return Math.min(Math.max(wanted, cellMm), Math.min(widthMm, heightMm) / 4);
}

interface Grid {
  readonly cellMm: number;
  readonly columns: number;
  readonly rows: number;
  readonly bandwidthMm: number;
}

interface Sums {
  balls: number;
  delivered: number;
  w: number;
  ww: number;
  home: number;
}

/** Adds one ball to its own cell and, with its weight, to all cells within the bandwidth. */
function spread({ xMm, yMm, isHome }: Start, sums: readonly Sums[], grid: Grid): void {
  const { cellMm, columns, rows, bandwidthMm } = grid;
  const home = isHome ? 1 : 0;
  const inside = (value: number, count: number): number =>
    Math.min(count - 1, Math.max(0, Math.floor(value / cellMm)));
  const own = sums[inside(yMm, rows) * columns + inside(xMm, columns)];
  if (own) {
    own.balls++;
    own.delivered += home;
  }
  for (let j = inside(yMm - bandwidthMm, rows); j <= inside(yMm + bandwidthMm, rows); j++) {
    for (let i = inside(xMm - bandwidthMm, columns); i <= inside(xMm + bandwidthMm, columns); i++) {
      const dx = (i + 0.5) * cellMm - xMm;
      const dy = (j + 0.5) * cellMm - yMm;
      const left = 1 - (dx * dx + dy * dy) / (bandwidthMm * bandwidthMm);
      const cell = sums[j * columns + i];
      if (left <= 0 || cell === undefined) continue;
      const weight = left * left;
      cell.w += weight;
      cell.ww += weight * weight;
      cell.home += weight * home;
    }
  }
}

/** The share as it is, with Wilson's interval of the nearest whole count around it. */
function smoothedRate(shareFrac: number, effectiveBalls: number): Rate {
  const value = Math.min(1, Math.max(0, shareFrac));
  const below = wilson(Math.floor(value * effectiveBalls + 1e-9), effectiveBalls);
  const above = wilson(Math.ceil(value * effectiveBalls - 1e-9), effectiveBalls);
  return { value, low: below.low, high: above.high, trials: effectiveBalls };
}

/**
 * The mark that stands for a cell's losses, its middle and sides, mm: its share of what the cell covers of the zone is the share
 * lost. Drawn so by the page and by the sheets.
 */
export function lostMark(
  { cellMm, widthMm, heightMm }: HeatMap,
  { xMm, yMm }: HeatCell,
  rate: Rate,
): { readonly xMm: number; readonly yMm: number; readonly acrossMm: number; readonly upMm: number } {
  const [left, low] = [xMm - cellMm / 2, yMm - cellMm / 2];
  const [across, up] = [Math.min(cellMm, widthMm - left), Math.min(cellMm, heightMm - low)];
  const side = Math.sqrt(1 - rate.value);
  return { xMm: left + across / 2, yMm: low + up / 2, acrossMm: across * side, upMm: up * side };
}

/** A part of the zone with whole counts. */
export interface HeatPart {
  readonly balls: number;
  readonly delivered: number;
}

/** The map's own counts by a few parts of the zone, laid out as it is: the upper row first, four along its longer side, three along the other. */
export function heatParts(map: HeatMap): readonly (readonly HeatPart[])[] {
  const [across, up] = map.columns >= map.rows ? [4, 3] : [3, 4];
  return Array.from({ length: up }, (_, row) =>
    Array.from({ length: across }, (__, column) => {
      const inside = map.cells.filter(
        (___, i) =>
          Math.floor(((i % map.columns) * across) / map.columns) === column &&
          Math.floor((Math.floor(i / map.columns) * up) / map.rows) === up - 1 - row,
      );
      return {
        balls: inside.reduce((sum, { balls }) => sum + balls, 0),
        delivered: inside.reduce((sum, { delivered }) => sum + delivered, 0),
      };
    }),
  );
}
