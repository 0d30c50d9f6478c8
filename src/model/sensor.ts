import { PI } from "./units.ts";

/**
 * What a robot can sense. Every sensor reads the true world with error; the robot knows nothing else of it but its own
 * commands. Mounting: robot frame, x forward, y left, from the axle's middle; heading from straight ahead.
 */
export interface Mounting {
  readonly alongMm: number;
  readonly acrossMm: number;
  readonly headingRad: number;
}

/** A contact switch behind the bumper of one side: tells at once that the robot has run into something solid. */
export interface BumpSensor {
  readonly kind: "bump";
  readonly name: string;
  readonly side: "front" | "back";
}

/** Distance to the nearest thing, ball or wall, that the beam (a cone seen from above) meets between nearest and range; beyond it: nothing. */
export interface DistanceSensor extends Mounting {
  readonly kind: "distance";
  readonly name: string;
  readonly beamHalfRad: number;
  readonly nearestMm: number;
  readonly rangeMm: number;
  /** Standard deviation of a reading: a length and a share of the distance, added as squares. */
  readonly noiseSdMm: number;
  readonly noiseSdFrac: number;
  /** Share of readings in which the echo is missed and nothing is seen. */
  readonly missFrac: number;
  readonly readsPerS: number;
  /** Air between sensor and things, °C, for one that times a sound as in air of 20 °C; left at 20 for light. */
  readonly airC: number;
}

/** Heading by a gyro: in its place the encoders' turn drift falls away. Each move leaves a bounded error; the rate error, drawn once a run, adds up with time. */
export interface GyroSensor {
  readonly kind: "gyro";
  readonly name: string;
  readonly errorSdRad: number;
  readonly driftSdRadPerS: number;
}

/** A light barrier across the pusher: something breaks the beam between the mounting and its far end, or not. */
export interface BarrierSensor extends Mounting {
  readonly kind: "barrier";
  readonly name: string;
  readonly lengthMm: number;
  /** Share of readings that are wrong. */
  readonly wrongFrac: number;
}

/** Colour or brightness of the floor right below: wedge or plain floor. */
export interface FloorSensor {
  readonly kind: "floor";
  readonly name: string;
  readonly alongMm: number;
  readonly acrossMm: number;
  readonly wrongFrac: number;
}

export type Sensor = BumpSensor | DistanceSensor | GyroSensor | BarrierSensor | FloorSensor;
export type SensorKind = Sensor["kind"];

export const SENSOR_KINDS: readonly SensorKind[] = ["bump", "distance", "gyro", "barrier", "floor"];
export const BUMP_SIDES: readonly BumpSensor["side"][] = ["front", "back"];

/** More than a small robot has ports for. */
export const MAX_SENSORS = 8;

/** The first sensor of a kind, or undefined. */
export function sensorOf<K extends SensorKind>(
  sensors: readonly Sensor[],
  kind: K,
): Extract<Sensor, { readonly kind: K }> | undefined {
  return sensors.find((sensor): sensor is Extract<Sensor, { readonly kind: K }> => sensor.kind === kind);
}

/** A beam this far off square, or within its own half angle, still meets a wall beside the robot where it is nearest, rad. */
const SQUARE_RAD = 0.09;

/** To which side a sensor looks squarely at a wall beside the robot: 1 left, −1 right, 0 neither. */
export function sideOf(sensor: Sensor | undefined): -1 | 0 | 1 {
  if (sensor?.kind !== "distance") return 0;
  const off = Math.max(SQUARE_RAD, sensor.beamHalfRad);
  if (Math.abs(sensor.headingRad - PI / 2) <= off) return 1;
  return Math.abs(sensor.headingRad + PI / 2) <= off ? -1 : 0;
}
