import { boundingBox, distanceToPolygon } from "../geometry/polygon.ts";
import type { Project } from "./project.ts";
import { distanceToRect, distanceToWedge, entryOutlines } from "./zoneFrame.ts";

/** Where a ball of the random layout may lie at the start. */
export interface StartRegion {
  /** Whether a ball's centre may lie here; the gaps to other balls are not looked at. */
  allows(xMm: number, yMm: number, radiusMm: number): boolean;
  /** Gap between the surfaces of any two balls, mm. */
  readonly spacingMm: number;
  /** Least distance of a ball's surface from the walls, mm. */
  readonly wallMarginMm: number;
}

/** The region in words is at `Layout` (rules.ts). Keep-outs count as walls; forbidden rectangles hold their boundary. Without a random layout: undefined. */
export function startRegion(project: Pick<Project, "zone" | "robot" | "rules">): StartRegion | undefined {
  const { zone, robot, rules } = project;
  const { layout } = rules;
  if (layout.kind !== "random") return undefined;
  const { footprint, ground } = entryOutlines(zone, robot);
  const box = boundingBox([...footprint, ...ground]);
  const { wallMarginMm, wedgeMarginMm, robotMarginMm, spacingMm, forbidden } = layout;
  const allows = (xMm: number, yMm: number, radiusMm: number): boolean => {
    const wall = radiusMm + wallMarginMm;
    if (xMm < wall || yMm < wall || xMm > zone.widthMm - wall || yMm > zone.heightMm - wall) return false;
    if (distanceToWedge(zone, xMm, yMm) < radiusMm + wedgeMarginMm) return false;
    if (zone.keepOuts.some((rect) => distanceToRect(rect, xMm, yMm) < wall)) return false;
    if (forbidden.some((rect) => distanceToRect(rect, xMm, yMm) === 0)) return false;
    const gap = radiusMm + robotMarginMm;
    // Outside the stretched box the distance is larger than the gap: the exact distance need not be known.
    if (xMm < box.minXMm - gap || xMm > box.maxXMm + gap) return true;
    if (yMm < box.minYMm - gap || yMm > box.maxYMm + gap) return true;
    const point = { xMm, yMm };
    return distanceToPolygon(point, footprint) >= gap && distanceToPolygon(point, ground) >= gap;
  };
  return { allows, spacingMm, wallMarginMm };
}
