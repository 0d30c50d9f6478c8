import type { LimitTable } from "./limits.ts";
import { ECHO_SET_FOR_C } from "./sensorPresets.ts";

/** What the numbers of a sensor may be; the presets give what stands for those left out (sensorPresets.ts). */

const WRONG = { min: 0, max: 0.9, unit: "" } as const;
const PLACE_MM = { min: -2000, max: 2000, unit: "mm" } as const;

export const POINT_LIMITS = { alongMm: PLACE_MM, acrossMm: PLACE_MM } satisfies LimitTable;

export const MOUNTING_LIMITS = {
  ...POINT_LIMITS,
  headingDeg: { min: -180, max: 180, unit: "°" },
} satisfies LimitTable;

/** Of a sensor that works by light. */
export const LIGHT_LIMITS = {
  ...MOUNTING_LIMITS,
  beamHalfDeg: { min: 0, max: 45, unit: "°" },
  nearestMm: { min: 0, max: 2000, unit: "mm" },
  rangeMm: { min: 20, max: 20_000, unit: "mm" },
  noiseSdMm: { min: 0, max: 200, unit: "mm" },
  noiseSdFrac: { min: 0, max: 0.5, unit: "" },
  missFrac: WRONG,
  readsPerS: { min: 1, max: 200, unit: "/s" },
} satisfies LimitTable;

/** Of one that may work by sound: one of a team's own is not asked. */
export const DISTANCE_LIMITS = {
  ...LIGHT_LIMITS,
  airC: { min: -30, max: 60, unit: "°C", fallback: ECHO_SET_FOR_C },
} satisfies LimitTable;

export const GYRO_LIMITS = {
  errorSdDeg: { min: 0, max: 20, unit: "°" },
  driftSdDegPerMin: { min: 0, max: 360, unit: "°/min" },
} satisfies LimitTable;

export const BARRIER_LIMITS = {
  ...MOUNTING_LIMITS,
  lengthMm: { min: 5, max: 2000, unit: "mm" },
  wrongFrac: WRONG,
} satisfies LimitTable;

export const FLOOR_LIMITS = { ...POINT_LIMITS, wrongFrac: WRONG } satisfies LimitTable;
