import { KNOCK_S } from "../../plan/programWalk.ts";
import { listingTexts as t } from "../../texts/english/listing.ts";

/** A param of a function: its unit is its name; a corner is one of four constants. */
export type Param =
  | "mm"
  | "extra_mm"
  | "deg"
  | "mm_per_s"
  | "deg_per_s"
  | "s"
  | "x_mm"
  | "y_mm"
  | "corner"
  | "sensor"
  | "by_sensor"
  | "keep_mm";

interface TeamFunction {
  readonly params: readonly Param[];
}

/** The handful of functions that move the robot; a team writes those its listing calls. */
export const FUNCTIONS = {
  drive: { params: ["mm", "mm_per_s"] },
  turn: { params: ["deg", "deg_per_s"] },
  curve: { params: ["mm", "deg", "mm_per_s"] },
  drive_to_wall: { params: ["mm", "extra_mm", "mm_per_s"] },
  drive_beside: { params: ["mm", "mm_per_s", "by_sensor", "keep_mm"] },
  drive_to_wall_beside: { params: ["mm", "extra_mm", "mm_per_s", "by_sensor", "keep_mm"] },
  wait: { params: ["s"] },
  open_arms: { params: ["s"] },
  close_arms: { params: ["s"] },
  scan: { params: ["deg", "deg_per_s", "corner"] },
  fetch: { params: ["mm_per_s", "corner"] },
  go_to: { params: ["x_mm", "y_mm", "deg", "mm_per_s", "corner"] },
} as const satisfies Record<string, TeamFunction>;

export type FunctionName = keyof typeof FUNCTIONS;

/** What a function does, in the language spoken now. */
export function functionMeaning(name: FunctionName): string {
  return name === "fetch" ? t.functions.fetch(KNOCK_S) : t.functions[name];
}

/** What a listing asks the robot; a team writes those its listing calls. Numbers, or yes and no. */
export const READINGS = {
  balls_noted: { params: [], gives: "number" },
  ball_in_pusher: { params: [], gives: "truth" },
  over_wedge: { params: [], gives: "truth" },
  front_bumped: { params: [], gives: "truth" },
  back_bumped: { params: [], gives: "truth" },
  distance_mm: { params: ["sensor"], gives: "number" },
  seconds_left: { params: [], gives: "number" },
} as const satisfies Record<
  string,
  TeamFunction & {
    readonly gives: "number" | "truth";
  }
>;

export type ReadingName = keyof typeof READINGS;

/** What the answer to a reading says, in the language spoken now. */
export function readingMeaning(name: ReadingName): string {
  return t.readings[name];
}
