import { presetTexts as t } from "../texts/english/preset.ts";
import { BALL_PRESETS, PRESET_IDS } from "./presets.ts";
import { SENSOR_PRESET_IDS, SENSOR_PRESETS, USUAL_NAMES } from "./sensorPresets.ts";

interface Named {
  /** As it stands in files, in every language the same. */
  readonly name: string;
}

/** A ball's name as people read it: a preset's in their language, any other as the file has it. */
export function shownBallName({ name }: Named): string {
  const id = PRESET_IDS.find((each) => BALL_PRESETS[each].name === name);
  return id === undefined ? name : t.balls[id];
}

/** The same for a sensor. */
export function shownSensorName({ name }: Named): string {
  if (name === USUAL_NAMES.back) return t.usual.back;
  if (name === USUAL_NAMES.left) return t.usual.left;
  const id = SENSOR_PRESET_IDS.find((each) => SENSOR_PRESETS[each].name === name);
  return id === undefined ? name : t.sensors[id];
}
