import { shownBallName } from "../../model/presetNames.ts";
import type { Project } from "../../model/project.ts";
import type { Wall } from "../../model/zone.ts";
import { moveTexts } from "../../texts/english/move.ts";
import { playerTexts } from "../../texts/english/player.ts";
import { lengthText, sizeText } from "../../texts/lengths.ts";
import { listed } from "../../texts/numbers.ts";

export function wallWords(wall: Wall): string {
  return playerTexts.walls[wall];
}

/** "3 × Table-tennis ball (40 mm)", group by group. */
export function ballsWords(project: Project): string {
  const groups = project.balls.map(
    ({ count, kind }) => `${count} × ${shownBallName(kind)} (${lengthText(kind.diameterMm, 1)})`,
  );
  return listed(groups);
}

/** The zone as a text twin of the drawing. */
export function zoneWords(project: Project): string {
  const { zone } = project;
  const { doorway } = zone;
  const corner = moveTexts.corners[zone.wedge.corner];
  return [
    playerTexts.zone(lengthText(zone.widthMm), lengthText(zone.heightMm)),
    playerTexts.doorwayIn[doorway.wall](lengthText(doorway.widthMm), lengthText(doorway.centreMm)),
    playerTexts.wedge(corner, lengthText(zone.wedge.legXMm), lengthText(zone.wedge.legYMm)),
    ...zone.keepOuts.map(({ xMm, yMm, widthMm, heightMm }) =>
      playerTexts.keepOut(sizeText(widthMm, heightMm), lengthText(xMm), lengthText(yMm)),
    ),
  ].join(" ");
}
