import { patternTexts } from "../texts/english/pattern.ts";
import { combinations, type Family, type Variant } from "./family.ts";
import { type LaneChoice, laneVariant } from "./laneVariant.ts";
import { besideMm, evenly, homeOf, pusherWidthMm, roomyMm } from "./place.ts";
import type { PushRun } from "./pushRun.ts";
import type { Waypoint } from "./rounding.ts";
import type { Scene } from "./scene.ts";

/** To and fro in parallel lanes from the far wall to the closing wall without ever going back; then closing wall runs. */
export const TO_AND_FRO: Family = {
  id: "mow",
  get pattern() {
    return patternTexts.names.toAndFro;
  },
  variants: combinations({
    longFirst: [true, false],
    spacing: [0.75],
    closing: [2],
    squareUps: [false, true],
  }).map(variant),
};

function variant(choice: LaneChoice): Variant {
  return laneVariant(
    choice,
    () => patternTexts.squaresStart,
    (scene, spacing) => [mow(scene, spacing, choice.squareUps)],
  );
}

/** One long run: the lanes from the far wall y = height downward, as far as the robot can still turn, the last toward the closing wall x = 0. */
export function mow(scene: Scene, spacing: number, squareUps: boolean): PushRun {
  const { target, widthMm } = scene;
  const room = roomyMm(scene);
  const rows = evenly(homeOf(scene).yMm, room, spacing * pusherWidthMm(scene));
  const points = rows.flatMap((yMm, i): readonly Waypoint[] => {
    const homeward = (rows.length - 1 - i) % 2 === 0;
    // The wedge shortens the lanes beside it.
    const near = yMm < target.legYMm + besideMm(scene, "x") ? target.legXMm + room / 2 : room;
    const right: Waypoint = { xMm: widthMm - room, yMm };
    const left: Waypoint = { xMm: near, yMm };
    const start = homeward ? right : left;
    return [{ ...start, squareUp: squareUps && i > 0 }, homeward ? left : right];
  });
  return { ways: [points], backUp: true, squareUps: [], end: "stop", retreat: "off" };
}
