import { degFromRad, degPerMinFromRadPerS } from "./degrees.ts";
import type { Sensor } from "./sensor.ts";
import { SENSOR_PRESET_IDS, SENSOR_PRESETS } from "./sensorPresets.ts";

type Entry = Readonly<Record<string, string | number>>;

/** As it stands in a file: a sensor named like a preset is written as that preset and what differs from it. */
export function sensorEntry(sensor: Sensor): Entry {
  const whole = sensorForFile(sensor);
  const id = SENSOR_PRESET_IDS.find((preset) => SENSOR_PRESETS[preset].name === sensor.name);
  if (id === undefined || SENSOR_PRESETS[id].kind !== sensor.kind) return whole;
  const preset = sensorForFile(SENSOR_PRESETS[id]);
  return {
    preset: id,
    ...Object.fromEntries(Object.entries(whole).filter(([key, value]) => preset[key] !== value)),
  };
}

/** Every value written out, angles in degrees. */
export function sensorForFile(sensor: Sensor): Entry {
  switch (sensor.kind) {
    case "bump":
      return { kind: sensor.kind, name: sensor.name, side: sensor.side };
    case "distance": {
      const { kind, name, alongMm, acrossMm, headingRad, beamHalfRad, ...rest } = sensor;
      const { nearestMm, rangeMm, noiseSdMm, noiseSdFrac, missFrac, readsPerS, airC } = rest;
      const place = { alongMm, acrossMm, headingDeg: degFromRad(headingRad) };
      const error = { noiseSdMm, noiseSdFrac, missFrac, readsPerS, airC };
      return { kind, name, ...place, beamHalfDeg: degFromRad(beamHalfRad), nearestMm, rangeMm, ...error };
    }
    case "gyro":
      return {
        kind: sensor.kind,
        name: sensor.name,
        errorSdDeg: degFromRad(sensor.errorSdRad),
        driftSdDegPerMin: degPerMinFromRadPerS(sensor.driftSdRadPerS),
      };
    case "barrier": {
      const { kind, name, alongMm, acrossMm, headingRad, lengthMm, wrongFrac } = sensor;
      return { kind, name, alongMm, acrossMm, headingDeg: degFromRad(headingRad), lengthMm, wrongFrac };
    }
    case "floor": {
      const { kind, name, alongMm, acrossMm, wrongFrac } = sensor;
      return { kind, name, alongMm, acrossMm, wrongFrac };
    }
    default:
      return sensor satisfies never;
  }
}
