import type { LimitTable, NumberLimits } from "../../model/limits.ts";
import {
  BARRIER_LIMITS,
  DISTANCE_LIMITS,
  FLOOR_LIMITS,
  GYRO_LIMITS,
  LIGHT_LIMITS,
} from "../../model/sensorLimits.ts";
import { isByLight, SENSOR_PRESETS } from "../../model/sensorPresets.ts";
import { sensorForFile } from "../../model/serialiseSensors.ts";
import { sensorsTexts as t } from "../../texts/english/sensors.ts";
import { type QuantityRow, rowsOf } from "../inputs/quantityRow.ts";
import type { QuantityKind } from "../words/quantity.ts";
import type { Fitted } from "./slots.ts";

type NumberKey = keyof typeof t.number;

/** What a unit of the limits is typed as; a share where it is none. */
const KIND_OF: Readonly<Record<string, QuantityKind>> = {
  mm: "length",
  "°": "angle",
  "°/min": "angle",
  "/s": "plain",
  "°C": "temperature",
  "": "share",
};

/** The numbers of a sensor; what its entry leaves out is shown as its preset has it. */
export function sensorRows({ index, kind, preset }: Fitted): readonly QuantityRow[] {
  const known = preset === "own" ? {} : sensorForFile(SENSOR_PRESETS[preset]);
  switch (kind) {
    case "distance":
      return rows(isByLight(preset) ? LIGHT_LIMITS : DISTANCE_LIMITS, index, known);
    case "gyro":
      return rows(GYRO_LIMITS, index, known);
    case "barrier":
      return rows(BARRIER_LIMITS, index, known);
    case "floor":
      return rows(FLOOR_LIMITS, index, known);
    case "bump":
      return [];
    default:
      return kind satisfies never;
  }
}

function rows<T extends LimitTable>(
  limits: T & Readonly<Record<Exclude<keyof T & string, NumberKey>, never>>,
  index: number,
  known: Readonly<Record<string, unknown>>,
): readonly QuantityRow[] {
  const keys = Object.keys(limits) as (keyof T & NumberKey)[];
  return keys.flatMap((key) => {
    const each: NumberLimits = limits[key] as NumberLimits;
    const fallback = known[key];
    const table: LimitTable = { [key]: typeof fallback === "number" ? { ...each, fallback } : each };
    return rowsOf(`robot.sensors[${index}]`, table, [[key, KIND_OF[each.unit] ?? "plain", t.number[key]]]);
  });
}
