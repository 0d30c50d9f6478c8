import type { LimitTable } from "./limits.ts";
import { MAX_ROUNDS } from "./program.ts";
import { MAX_SENSORS } from "./sensor.ts";

/** What the numbers of a program's lines may be; those of moves are in limits.ts. */
const SPEED = { min: 1, max: 5000, unit: "mm/s" } as const;
const PLACE_MM = { min: -20_000, max: 20_000, unit: "mm" } as const;

export const SCAN_LIMITS = {
  angleDeg: { min: -720, max: 720, unit: "°" },
  rateDegPerS: { min: 1, max: 1440, unit: "°/s" },
} satisfies LimitTable;

export const FETCH_LIMITS = { speedMmPerS: SPEED } satisfies LimitTable;

export const GO_TO_LIMITS = {
  xMm: PLACE_MM,
  yMm: PLACE_MM,
  headingDeg: { min: -360, max: 360, unit: "°" },
  speedMmPerS: SPEED,
} satisfies LimitTable;

export const REPEAT_LIMITS = {
  atMost: { min: 1, max: MAX_ROUNDS, unit: "", whole: true },
} satisfies LimitTable;

export const NEARER_LIMITS = {
  sensor: { min: 1, max: MAX_SENSORS, unit: "", whole: true },
  thanMm: { min: 0, max: 20_000, unit: "mm" },
} satisfies LimitTable;

export const SHORT_LIMITS = { belowS: { min: 0, max: 3600, unit: "s" } } satisfies LimitTable;

/** By what a move steers beside a wall. */
export const BESIDE_LIMITS = {
  sensor: NEARER_LIMITS.sensor,
  readsMm: NEARER_LIMITS.thanMm,
} satisfies LimitTable;
