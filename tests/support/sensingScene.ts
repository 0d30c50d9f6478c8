import type { Project } from "../../src/model/project.ts";
import type { DistanceSensor, Sensor } from "../../src/model/sensor.ts";
import { SENSOR_PRESETS } from "../../src/model/sensorPresets.ts";
import type { PointMm } from "../../src/model/zone.ts";
import { PLAIN_BALL, sceneProject } from "./scene.ts";

/** Errs never: what is left is geometry. */
export const SHARP_EYE: DistanceSensor = {
  ...SENSOR_PRESETS["light-time-of-flight"],
  kind: "distance",
  name: "sharp",
  alongMm: 60,
  acrossMm: 0,
  headingRad: 0,
  beamHalfRad: 0.03,
  nearestMm: 10,
  rangeMm: 3000,
  noiseSdMm: 0,
  noiseSdFrac: 0,
  missFrac: 0,
  readsPerS: 50,
  airC: 20,
};

/** A drift-free plate robot in a zone of 1200 × 900 mm with balls at fixed places, and these sensors. */
export function sensingProject(sensors: readonly Sensor[], places: readonly PointMm[]): Project {
  const plain = sceneProject({ balls: places.map(({ xMm, yMm }) => ({ x: xMm, y: yMm })) });
  return {
    ...plain,
    zone: { ...plain.zone, walls: { restitution: 0.3, frictionCoeff: 0.2 } },
    balls: [{ kind: PLAIN_BALL, count: places.length, points: 1 }],
    robot: { ...plain.robot, sensors },
  };
}
