import { RandomStream } from "../num/stream.ts";
import { STREAMS } from "./streams.ts";

/** What nobody measured, as each trial draws it: how far from the stated value, −1 … 1 of the project's spread. */
export const SPREAD_FACTORS = ["faceFriction", "floorFriction", "rollingResistance", "restitution"] as const;
export type SpreadFactor = (typeof SPREAD_FACTORS)[number];

const stream = new RandomStream();

/** Draws the spread of one trial into `out`, one number per SPREAD_FACTORS, uniform in (−1, 1). */
export function drawSpread(seed: number, trial: number, out: Float64Array): void {
  stream.open(seed, trial, STREAMS.spread);
  for (let i = 0; i < SPREAD_FACTORS.length; i++) out[i] = 2 * stream.uniform() - 1;
}
