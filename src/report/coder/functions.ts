import { KNOCK_S } from "../../plan/programWalk.ts";

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
  | "sensor";

interface TeamFunction {
  readonly params: readonly Param[];
  readonly meaning: string;
}

/** The handful of functions that move the robot; a team writes those its listing calls. */
export const FUNCTIONS = {
  drive: {
    params: ["mm", "mm_per_s"],
    meaning: "Drive straight; negative: backward. Stop at the end.",
  },
  turn: {
    params: ["deg", "deg_per_s"],
    meaning: "Turn on the spot, one wheel forward, one back; positive: left. Stop at the end.",
  },
  curve: {
    params: ["mm", "deg", "mm_per_s"],
    meaning: "Drive a curve of this length (negative: backward) that turns the robot by deg; positive: left.",
  },
  drive_to_wall: {
    params: ["mm", "extra_mm", "mm_per_s"],
    meaning:
      "Drive straight for mm + extra_mm. A wall stops the robot on the way: keep pushing for the time the whole way takes; with a bumper on that side, stop as soon as it is pressed.",
  },
  wait: { params: ["s"], meaning: "Stand still." },
  open_arms: { params: ["s"], meaning: "Run the arms' motor outward for s while the robot stands still." },
  close_arms: { params: ["s"], meaning: "Run the arms' motor inward for s while the robot stands still." },
  scan: {
    params: ["deg", "deg_per_s", "corner"],
    meaning:
      "Turn on the spot by deg (positive: left) while the distance sensor reads; then forget the old notes and note the place of every ball made out: nearer than the walls are, and not on the wedge in this corner.",
  },
  fetch: {
    params: ["mm_per_s", "corner"],
    meaning: `Of the noted balls take the one that takes least time (${KNOCK_S} s more for each other noted ball touched on the way) and strike it off; drive behind it, push it onto the wedge in this corner, back off. With a light barrier: give up as soon as the ball is not in the pusher. If none can be fetched, forget all notes.`,
  },
  go_to: {
    params: ["x_mm", "y_mm", "deg", "mm_per_s", "corner"],
    meaning:
      "Drive to a place of the zone (mm from its lower left inside corner, x right, y up) and face deg there (0: along x; positive: left). Touch no wall, and not the wedge in this corner. Where there is no way, stay.",
  },
} as const satisfies Record<string, TeamFunction>;

export type FunctionName = keyof typeof FUNCTIONS;

/** What a listing asks the robot; a team writes those its listing calls. Numbers, or yes and no. */
export const READINGS = {
  balls_noted: {
    params: [],
    gives: "number",
    meaning: "How many balls are on the notes: left there by scan, not struck off by fetch.",
  },
  ball_in_pusher: {
    params: [],
    gives: "truth",
    meaning: "Whether the light barrier was broken at any time during the last move.",
  },
  over_wedge: {
    params: [],
    gives: "truth",
    meaning: "Whether the floor sensor reads the wedge below it now.",
  },
  front_bumped: {
    params: [],
    gives: "truth",
    meaning: "Whether the last move ran into something with its front bumper.",
  },
  back_bumped: {
    params: [],
    gives: "truth",
    meaning: "Whether the last move ran into something with its back bumper.",
  },
  distance_mm: {
    params: ["sensor"],
    gives: "number",
    meaning:
      "What this sensor reads now, mm; 100000 where no echo comes back. Sensors are counted from 1, in the order of the project file.",
  },
  seconds_left: { params: [], gives: "number", meaning: "Seconds until the time limit." },
} as const satisfies Record<
  string,
  TeamFunction & {
    readonly gives: "number" | "truth";
  }
>;

export type ReadingName = keyof typeof READINGS;
