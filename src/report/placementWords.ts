import { shownBallName } from "../model/presetNames.ts";
import { ballsOf, type Project } from "../model/project.ts";
import type { PointMm } from "../model/zone.ts";
import { lengthText } from "../texts/lengths.ts";

/** Of each ball of a placement, what kind it is: "Tennis ball (67 mm)"; none where all are of one kind. */
export function kindWords(project: Project): readonly string[] {
  const names = ballsOf(project).map((kind) => `${shownBallName(kind)} (${lengthText(kind.diameterMm, 1)})`);
  return new Set(names).size > 1 ? names : [];
}

/** Where the balls lie, mm from the left and the lower wall: "450, 850 · 510, 90", kind by kind where there are several. */
export function placesWords(project: Project, placement: readonly PointMm[]): string {
  const kinds = kindWords(project);
  const groups = new Map<string, string[]>();
  for (const [ball, { xMm, yMm }] of placement.entries()) {
    const kind = kinds[ball] ?? "";
    groups.set(kind, [...(groups.get(kind) ?? []), `${Math.round(xMm)}, ${Math.round(yMm)}`]);
  }
  return [...groups]
    .map(([kind, places]) => `${kind === "" ? "" : `${kind}: `}${places.join(" · ")}`)
    .join("; ");
}
