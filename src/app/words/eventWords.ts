import type { RunEvent } from "../../trial/recording.ts";

/** What happened, without the time. */
export function eventWords(event: RunEvent): string {
  const ball = `ball ${event.ball + 1}`;
  switch (event.kind) {
    case "touched":
      return `The robot touches ${ball}`;
    case "on-wedge":
      return `Ball ${event.ball + 1} comes onto the wedge`;
    case "off-wedge":
      return `Ball ${event.ball + 1} leaves the wedge`;
    case "rolled-out":
      return `Ball ${event.ball + 1} rolls out of the doorway`;
    case "jam":
      return event.ball < 0 ? "The robot jams" : `Ball ${event.ball + 1} jams between robot and wall`;
    case "stall":
      return "The robot is stopped by a wall and its tracks slip";
    case "end":
      return "The routine ends";
    default:
      return event.kind satisfies never;
  }
}

/** Where it happened: from the left and the lower wall. */
export function placeWords(event: Pick<RunEvent, "xMm" | "yMm">): string {
  return `${Math.round(event.xMm)} mm from the left, ${Math.round(event.yMm)} mm up`;
}
