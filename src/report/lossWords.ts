import type { LossReason } from "../trial/outcome.ts";

/** Why a ball was lost, as the end of "ball 2 …". */
export function lossWords(reason: LossReason): string {
  switch (reason) {
    case "rolled-out":
      return "rolled out of the doorway";
    case "out-of-time":
      return "was not home when time ran out";
    case "left-wedge":
      return "was on the wedge but left it again";
    case "jammed":
      return "jammed between robot and wall";
    case "left-pusher":
      return "was touched but slipped off the pusher";
    case "never-touched":
      return "was never touched";
    default:
      return reason satisfies never;
  }
}

/** The same as a heading for a count. */
export function lossTitle(reason: LossReason): string {
  switch (reason) {
    case "rolled-out":
      return "rolled out of the doorway";
    case "out-of-time":
      return "out of time";
    case "left-wedge":
      return "left the wedge again";
    case "jammed":
      return "jammed against a wall";
    case "left-pusher":
      return "slipped off the pusher";
    case "never-touched":
      return "never touched";
    default:
      return reason satisfies never;
  }
}
