import type { Project } from "../model/project.ts";
import type { DistanceSensor, FloorSensor, Sensor } from "../model/sensor.ts";
import { SENSOR_PRESETS, USUAL_NAMES } from "../model/sensorPresets.ts";
import { PI } from "../model/units.ts";
import { reachOf } from "./reach.ts";

/** The light barrier's beam runs this far ahead of the pusher's back, mm: any ball there breaks it. */
const BEAM_MM = 15;

/**
 * Sensors a team could fit to a robot that has none, one of each sort, where such robots carry them (common practice, no
 * source): eye and floor sensor in the middle of the pusher, the barrier across it, an eye to the left, bumpers front and back.
 */
export function usualSensors({ robot, rules }: Project): readonly Sensor[] {
  const { pusherBackMm, pusherLeftMm, pusherRightMm } = reachOf(robot);
  const barrier = {
    ...SENSOR_PRESETS["light-barrier"],
    alongMm: pusherBackMm + BEAM_MM,
    acrossMm: 0 - pusherRightMm,
    headingRad: PI / 2,
    lengthMm: pusherLeftMm + pusherRightMm,
  };
  return [
    { ...SENSOR_PRESETS["light-time-of-flight"], alongMm: pusherBackMm },
    usualSideSensor(),
    barrier,
    SENSOR_PRESETS["rate-gyro"],
    SENSOR_PRESETS["contact-switch"],
    { kind: "bump", name: USUAL_NAMES.back, side: "back" },
    ...(rules.wedgeCorners.length > 1 ? [usualFloorSensor({ robot })] : []),
  ];
}

/** In the middle, looking out over the left side: at the side itself a wall that is close by would be nearer than it can read. */
export function usualSideSensor(): DistanceSensor {
  return { ...SENSOR_PRESETS["light-time-of-flight"], name: USUAL_NAMES.left, headingRad: PI / 2 };
}

/** Close behind the pusher's tips: over the wedge before the tracks are. */
export function usualFloorSensor({ robot }: Pick<Project, "robot">): FloorSensor {
  return { ...SENSOR_PRESETS["reflected-light"], alongMm: reachOf(robot).pusherFrontMm - BEAM_MM };
}
