import { degFromRad } from "../../model/degrees.ts";
import type { Drive } from "../../model/robot.ts";
import type { Move } from "../../model/routine.ts";
import { speedToSet } from "./speed.ts";

/** The handful of functions a team writes for its robot; a listing is made of calls of these. */
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
      "Drive straight for mm + extra_mm. A wall stops the robot on the way: keep pushing for the time the whole way takes.",
  },
  wait: { params: ["s"], meaning: "Stand still." },
  open_arms: { params: ["s"], meaning: "Run the arms' motor outward for s while the robot stands still." },
  close_arms: { params: ["s"], meaning: "Run the arms' motor inward for s while the robot stands still." },
} as const satisfies Record<string, { readonly params: readonly string[]; readonly meaning: string }>;

export type FunctionName = keyof typeof FUNCTIONS;

export interface Call {
  readonly name: FunctionName;
  /** In the order of the function's params. */
  readonly args: readonly number[];
}

/** The call that makes a move, with the speed the drive can really give it. */
export function callOf(drive: Drive, move: Move): Call {
  const speed = speedToSet(drive, move);
  switch (move.kind) {
    case "drive":
      return { name: "drive", args: [move.distanceMm, speed] };
    case "turn":
      return { name: "turn", args: [degFromRad(move.angleRad), degFromRad(speed)] };
    case "arc":
      return { name: "curve", args: [move.distanceMm, degFromRad(move.angleRad), speed] };
    case "toWall":
      return { name: "drive_to_wall", args: [move.distanceMm, move.overrunMm, speed] };
    case "wait":
      return { name: "wait", args: [move.durationS] };
    case "arms":
      return { name: move.to === "open" ? "open_arms" : "close_arms", args: [move.durationS] };
    default:
      return move satisfies never;
  }
}
