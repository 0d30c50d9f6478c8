import type { Project } from "../../model/project.ts";
import type { Sensor, SensorKind } from "../../model/sensor.ts";
import { SENSOR_KINDS } from "../../model/sensor.ts";
import { SENSOR_PRESET_IDS, SENSOR_PRESETS, type SensorPresetId } from "../../model/sensorPresets.ts";
import { sensorEntry } from "../../model/serialiseSensors.ts";
import { usualFloorSensor, usualSensors, usualSideSensor } from "../../plan/usualSensors.ts";
import { type Form, valueAt, withValue } from "../project/form.ts";

/** What a robot can carry, a switch each. */
export const SLOTS = ["bump-front", "bump-back", "ahead", "aside", "gyro", "barrier", "floor"] as const;
export type Slot = (typeof SLOTS)[number];

/** One sensor of the project's form. */
export interface Fitted {
  /** In the form's list. */
  readonly index: number;
  readonly kind: SensorKind;
  /** "own" where every number is written out. */
  readonly preset: SensorPresetId | "own";
  readonly name: string;
  readonly slot: Slot;
}

/** Beyond this a distance sensor looks to the side, degrees. */
const ASIDE_DEG = 45;

/** The sensors of a form, in its order. */
export function fittedSensors(form: Form): readonly Fitted[] {
  const list = valueAt(form, "robot.sensors");
  if (!Array.isArray(list)) return [];
  return list.flatMap((entry: unknown, index): readonly Fitted[] => {
    const text = (key: string) => String(valueAt(entry, key) ?? "");
    const preset = SENSOR_PRESET_IDS.find((id) => id === text("preset")) ?? "own";
    const kind =
      preset === "own" ? SENSOR_KINDS.find((each) => each === text("kind")) : SENSOR_PRESETS[preset].kind;
    if (kind === undefined) return [];
    const name = text("name") || (preset === "own" ? kind : SENSOR_PRESETS[preset].name);
    const heading = Number(valueAt(entry, "headingDeg") ?? 0);
    return [{ index, kind, preset, name, slot: slotOf(kind, text("side"), heading) }];
  });
}

function slotOf(kind: SensorKind, side: string, headingDeg: number): Slot {
  if (kind === "bump") return side === "back" ? "bump-back" : "bump-front";
  if (kind === "distance") return Math.abs(headingDeg) < ASIDE_DEG ? "ahead" : "aside";
  return kind;
}

/** A sensor for a slot, by its usual principle, mounted where such robots carry it. */
export function usualFor(slot: Slot, project: Project): Sensor {
  const usual = usualSensors(project);
  const fits = (sensor: Sensor) => slotOf(sensor.kind, sensor.kind === "bump" ? sensor.side : "", 0) === slot;
  if (slot === "floor") return usualFloorSensor(project);
  if (slot !== "aside") return usual.find(fits) ?? SENSOR_PRESETS["rate-gyro"];
  return usualSideSensor();
}

/** The form with a sensor more. An eye ahead comes before other ones: routines look with the first of its kind. */
export function withSensor(form: Form, slot: Slot, project: Project): Form {
  const list = valueAt(form, "robot.sensors");
  const others: readonly unknown[] = Array.isArray(list) ? list : [];
  const entry = sensorEntry(usualFor(slot, project));
  const eye = slot === "ahead" ? fittedSensors(form).find(({ kind }) => kind === "distance") : undefined;
  const at = eye?.index ?? others.length;
  return withValue(form, "robot.sensors", [...others.slice(0, at), entry, ...others.slice(at)]);
}

/** The form with a sensor that works by another principle; where it sits stays. */
export function withPrinciple(form: Form, index: number, preset: SensorPresetId): Form {
  const path = `robot.sensors[${index}]`;
  const kept = ["alongMm", "acrossMm", "headingDeg", "side"].flatMap((key) => {
    const value = valueAt(form, `${path}.${key}`);
    return value === undefined ? [] : [[key, value]];
  });
  return withValue(form, path, { preset, ...Object.fromEntries(kept) });
}

/** The presets by which a kind of sensor can work. */
export function principlesOf(kind: SensorKind): readonly SensorPresetId[] {
  return SENSOR_PRESET_IDS.filter((id) => SENSOR_PRESETS[id].kind === kind);
}
