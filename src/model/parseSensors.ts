import { radFromDeg, radPerSFromDegPerMin } from "./degrees.ts";
import type { Findings } from "./findings.ts";
import type { LimitTable } from "./limits.ts";
import { MAX_NAME_LENGTH } from "./parseRobot.ts";
import { type Fields, fieldsOf } from "./reader.ts";
import { BUMP_SIDES, MAX_SENSORS, SENSOR_KINDS, type Sensor, type SensorKind } from "./sensor.ts";
import { BARRIER_LIMITS, DISTANCE_LIMITS, FLOOR_LIMITS, GYRO_LIMITS, LIGHT_LIMITS } from "./sensorLimits.ts";
import {
  ECHO_SET_FOR_C,
  isByLight,
  SENSOR_PRESET_IDS,
  SENSOR_PRESETS,
  type SensorPresetId,
} from "./sensorPresets.ts";
import { sensorForFile } from "./serialiseSensors.ts";

/** An entry names a preset, whose values stand for every key that is left out, or its kind and every value. */
export function parseSensors(fields: Fields, findings: Findings): readonly Sensor[] {
  const path = fields.pathOf("sensors");
  return fields
    .list("sensors", { max: MAX_SENSORS })
    .flatMap((value, i) => parseSensor(fieldsOf(value, `${path}[${i}]`, findings)));
}

function parseSensor(fields: Fields): readonly Sensor[] {
  const id = fields.has("preset") ? fields.choice("preset", SENSOR_PRESET_IDS) : undefined;
  if (fields.has("preset") && id === undefined) return [];
  const preset = id === undefined ? undefined : SENSOR_PRESETS[id];
  const kind = preset === undefined ? fields.choice("kind", SENSOR_KINDS) : preset.kind;
  // Without a known kind nobody can say which keys belong here.
  if (kind === undefined) return [];
  if (preset !== undefined && fields.has("kind")) fields.choice("kind", [kind]);
  const sensor = sensorOfKind(kind, fields, id);
  fields.done();
  return [sensor];
}

function sensorOfKind(kind: SensorKind, fields: Fields, id: SensorPresetId | undefined): Sensor {
  const preset = id === undefined ? undefined : SENSOR_PRESETS[id];
  const known: Readonly<Record<string, unknown>> = preset === undefined ? {} : sensorForFile(preset);
  const name = fields.text("name", {
    maxLength: MAX_NAME_LENGTH,
    ...(preset === undefined ? {} : { fallback: preset.name }),
  });
  const numbers = <T extends LimitTable>(table: T) => fields.numbers(withFallbacks(table, known));
  switch (kind) {
    case "bump":
      return { kind, name, side: fields.choice("side", BUMP_SIDES, "front") ?? "front" };
    case "distance": {
      const { headingDeg, beamHalfDeg, ...rest } = numbers(isByLight(id) ? LIGHT_LIMITS : DISTANCE_LIMITS);
      return {
        kind,
        name,
        airC: ECHO_SET_FOR_C,
        ...rest,
        headingRad: radFromDeg(headingDeg),
        beamHalfRad: radFromDeg(beamHalfDeg),
      };
    }
    case "gyro": {
      const { errorSdDeg, driftSdDegPerMin } = numbers(GYRO_LIMITS);
      return {
        kind,
        name,
        errorSdRad: radFromDeg(errorSdDeg),
        driftSdRadPerS: radPerSFromDegPerMin(driftSdDegPerMin),
      };
    }
    case "barrier": {
      const { headingDeg, ...rest } = numbers(BARRIER_LIMITS);
      return { kind, name, ...rest, headingRad: radFromDeg(headingDeg) };
    }
    case "floor":
      return { kind, name, ...numbers(FLOOR_LIMITS) };
    default:
      return kind satisfies never;
  }
}

function withFallbacks<T extends LimitTable>(table: T, known: Readonly<Record<string, unknown>>): T {
  const rows = Object.entries(table).map(([key, limits]) => {
    const fallback = known[key];
    return [key, typeof fallback === "number" ? { ...limits, fallback } : limits];
  });
  return Object.fromEntries(rows) as T;
}
