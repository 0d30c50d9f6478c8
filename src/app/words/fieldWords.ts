import { shownBallName } from "../../model/presetNames.ts";
import type { Project } from "../../model/project.ts";
import type { Wall } from "../../model/zone.ts";
import { moveTexts } from "../../texts/english/move.ts";
import { playerTexts } from "../../texts/english/player.ts";
import { listed, plain } from "../../texts/numbers.ts";

export function wallWords(wall: Wall): string {
  return playerTexts.walls[wall];
}

/** "3 × Table-tennis ball (40 mm)", group by group. */
export function ballsWords(project: Project): string {
  const groups = project.balls.map(
    ({ count, kind }) =>
      `${count} × ${shownBallName(kind)} (${plain(Math.round(kind.diameterMm * 10) / 10)} mm)`,
  );
  return listed(groups);
}

/** The zone as a text twin of the drawing. */
export function zoneWords(project: Project): string {
  const { zone } = project;
  const { doorway } = zone;
  const corner = moveTexts.corners[zone.wedge.corner];
  return [
    playerTexts.zone(Math.round(zone.widthMm), Math.round(zone.heightMm)),
    playerTexts.doorwayIn[doorway.wall](Math.round(doorway.widthMm), Math.round(doorway.centreMm)),
    playerTexts.wedge(corner, Math.round(zone.wedge.legXMm), Math.round(zone.wedge.legYMm)),
    ...zone.keepOuts.map(({ xMm, yMm, widthMm, heightMm }) =>
      playerTexts.keepOut(Math.round(widthMm), Math.round(heightMm), Math.round(xMm), Math.round(yMm)),
    ),
  ].join(" ");
}
