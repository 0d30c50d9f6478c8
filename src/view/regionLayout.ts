import { ballsOf, type Project } from "../model/project.ts";
import { startRegion } from "../model/startRegion.ts";

/** Finest and coarsest step of the shading, mm: the region's edge is shown to half of it. */
const STEP_MM = { least: 6, most: 60 };
/** Cells along the longer side: enough for an edge that looks smooth. */
const CELLS = 150;

/** A stretch of one row of cells. */
export interface RegionRun {
  readonly fromMm: number;
  readonly toMm: number;
  readonly yMm: number;
  readonly stepMm: number;
}

/** Radii of the balls, each once, the smallest first: a larger ball lies within a smaller region, mostly. */
export function ballRadiiMm(project: Project): readonly number[] {
  const radii = new Set(ballsOf(project).map((kind) => kind.diameterMm / 2));
  return [...radii].sort((a, b) => a - b);
}

/** The region of a random layout for balls of one radius, row by row; empty for fixed spots. */
export function regionRuns(project: Project, radiusMm: number): readonly RegionRun[] {
  const region = startRegion(project);
  if (!region) return [];
  const { widthMm, heightMm } = project.zone;
  const step = Math.min(STEP_MM.most, Math.max(STEP_MM.least, Math.max(widthMm, heightMm) / CELLS));
  const runs: RegionRun[] = [];
  for (let y = 0; y < heightMm; y += step) {
    let from = -1;
    for (let x = 0; x <= widthMm + step; x += step) {
      const inside = x <= widthMm && region.allows(x + step / 2, y + step / 2, radiusMm);
      if (inside && from < 0) from = x;
      if (inside || from < 0) continue;
      runs.push({ fromMm: from, toMm: x, yMm: y, stepMm: step });
      from = -1;
    }
  }
  return runs;
}
