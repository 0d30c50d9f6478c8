import { radFromDeg } from "./degrees.ts";
import type { Sensor } from "./sensor.ts";
import { RAD_PER_DEG } from "./units.ts";

/** By physical principle, not by product. */
export const SENSOR_PRESET_IDS = [
  "contact-switch",
  "ultrasonic-echo",
  "infrared-triangulation",
  "light-time-of-flight",
  "rate-gyro",
  "light-barrier",
  "reflected-light",
] as const;
export type SensorPresetId = (typeof SENSOR_PRESET_IDS)[number];

const MOUNTED = { alongMm: 0, acrossMm: 0, headingRad: 0 } as const;
const DEG_PER_MIN = RAD_PER_DEG / 60;

/** What timers of echoes take the air for, °C: common practice, no source. */
export const ECHO_SET_FOR_C = 20;

/**
 * What such sensors usually do. Every value: common practice, no source; measure your own. Ultrasonic echoes have a wide
 * beam and are now and then lost on round or slanting things; triangulation has a thin beam, a dead stretch close by, and
 * an error that grows with distance; time of flight lies between. The mounting is always the robot's own.
 */
export const SENSOR_PRESETS = {
  "contact-switch": { kind: "bump", name: "Contact switch", side: "front" },
  "ultrasonic-echo": {
    kind: "distance",
    name: "Ultrasonic echo",
    ...MOUNTED,
    beamHalfRad: radFromDeg(12),
    nearestMm: 30,
    rangeMm: 1500,
    noiseSdMm: 4,
    noiseSdFrac: 0.005,
    missFrac: 0.05,
    readsPerS: 20,
    airC: ECHO_SET_FOR_C,
  },
  "infrared-triangulation": {
    kind: "distance",
    name: "Infrared triangulation",
    ...MOUNTED,
    beamHalfRad: radFromDeg(1.5),
    nearestMm: 60,
    rangeMm: 700,
    noiseSdMm: 3,
    noiseSdFrac: 0.03,
    missFrac: 0.01,
    readsPerS: 25,
    airC: ECHO_SET_FOR_C,
  },
  "light-time-of-flight": {
    kind: "distance",
    name: "Time of flight of light",
    ...MOUNTED,
    beamHalfRad: radFromDeg(5),
    nearestMm: 20,
    rangeMm: 1200,
    noiseSdMm: 5,
    noiseSdFrac: 0.01,
    missFrac: 0.02,
    readsPerS: 30,
    airC: ECHO_SET_FOR_C,
  },
  "rate-gyro": {
    kind: "gyro",
    name: "Heading gyro",
    errorSdRad: radFromDeg(0.5),
    driftSdRadPerS: DEG_PER_MIN,
  },
  "light-barrier": { kind: "barrier", name: "Light barrier", ...MOUNTED, lengthMm: 100, wrongFrac: 0.005 },
  "reflected-light": { kind: "floor", name: "Reflected light", alongMm: 0, acrossMm: 0, wrongFrac: 0.005 },
} as const satisfies Readonly<Record<SensorPresetId, Sensor>>;

/** Whether a sensor measures a distance by light, for which the air does not matter. */
export function isByLight(id: SensorPresetId | "own" | undefined): boolean {
  return id === "infrared-triangulation" || id === "light-time-of-flight";
}

/** Names of usual sensors that sit elsewhere than their preset says. */
export const USUAL_NAMES = { back: "Contact switch at the back", left: "Distance to the left" } as const;

/** What every value of the presets rests on, in one place, as shown beside them. */
export const SENSOR_PRESET_SOURCE = "common practice, no source";
