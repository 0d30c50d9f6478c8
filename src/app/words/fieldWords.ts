import type { Project } from "../../model/project.ts";
import type { Wall } from "../../model/zone.ts";
import { countWords } from "../../report/lengthWords.ts";
import { listed } from "../../texts/numbers.ts";

export function wallWords(wall: Wall): string {
  switch (wall) {
    case "left":
      return "left wall";
    case "right":
      return "right wall";
    case "bottom":
      return "lower wall";
    case "top":
      return "upper wall";
    default:
      return wall satisfies never;
  }
}

/** "3 × Table-tennis ball (40 mm)", group by group. */
export function ballsWords(project: Project): string {
  const groups = project.balls.map(
    ({ count, kind }) => `${count} × ${kind.name} (${Math.round(kind.diameterMm * 10) / 10} mm)`,
  );
  return listed(groups);
}

/** The zone as a text twin of the drawing. */
export function zoneWords(project: Project): string {
  const { zone } = project;
  const corner = zone.wedge.corner.replace("-", " ");
  const blocks = zone.keepOuts.length;
  return [
    `Zone ${Math.round(zone.widthMm)} mm wide and ${Math.round(zone.heightMm)} mm high, seen from above.`,
    `Doorway ${Math.round(zone.doorway.widthMm)} mm wide in the ${wallWords(zone.doorway.wall)}.`,
    `Wedge in the ${corner} corner, legs ${Math.round(zone.wedge.legXMm)} mm and ${Math.round(zone.wedge.legYMm)} mm.`,
    ...(blocks > 0 ? [`${countWords(blocks, "keep-out block")}.`] : []),
  ].join(" ");
}
