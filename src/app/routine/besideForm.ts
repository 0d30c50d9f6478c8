import { shownSensorName } from "../../model/presetNames.ts";
import type { Robot } from "../../model/robot.ts";
import type { Move } from "../../model/routine.ts";
import { sideOf } from "../../model/sensor.ts";
import { editMovesTexts as t } from "../../texts/english/editMoves.ts";

/** What a way is to keep from a wall before anybody says so, mm. */
const ANY_MM = 120;

/** Nobody steers: the word of the form where the key is left out. */
const NONE = "";

/** The sensors a way can be steered by beside a wall, counted from 1 as in files; empty for other moves, and where there is none. */
export function besideOptions(
  robot: Robot | null,
  move: Move,
): readonly { readonly value: string; readonly words: string }[] {
  if (move.kind !== "drive" && move.kind !== "toWall") return [];
  const fitting = (robot?.sensors ?? []).flatMap((sensor, i) =>
    sideOf(sensor) === 0 ? [] : [{ value: String(i + 1), words: t.bySensor(i + 1, shownSensorName(sensor)) }],
  );
  return fitting.length === 0 && move.beside === undefined
    ? []
    : [{ value: NONE, words: t.noSensor }, ...fitting];
}

/** What the form says of it once a sensor, or none, is chosen; the reading stays. */
export function besideForm(value: string, readsMm: unknown) {
  if (value === NONE) return undefined;
  return { sensor: Number(value), readsMm: typeof readsMm === "number" ? readsMm : ANY_MM };
}
