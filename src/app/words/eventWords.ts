import { playerTexts } from "../../texts/english/player.ts";
import { lengthText } from "../../texts/lengths.ts";
import type { RunEvent } from "../../trial/recording.ts";

/** What happened, without the time. */
export function eventWords(event: RunEvent): string {
  switch (event.kind) {
    case "touched":
      return playerTexts.touches(event.ball + 1);
    case "on-wedge":
      return playerTexts.ontoWedge(event.ball + 1);
    case "off-wedge":
      return playerTexts.offWedge(event.ball + 1);
    case "rolled-out":
      return playerTexts.rolledOut(event.ball + 1);
    case "jam":
      return event.ball < 0 ? playerTexts.robotJams : playerTexts.ballJams(event.ball + 1);
    case "stall":
      return playerTexts.stalled;
    case "end":
      return playerTexts.ends;
    default:
      return event.kind satisfies never;
  }
}

/** Where it happened: from the left and the lower wall. */
export function placeWords(event: Pick<RunEvent, "xMm" | "yMm">): string {
  return playerTexts.place(lengthText(event.xMm), lengthText(event.yMm));
}
