import type { Corner, RectMm, Wall, Zone } from "../model/zone.ts";

/**
 * A straight boundary: allowed is nx·x + ny·y ≥ offset, (nx, ny) the unit normal into the free side.
 * `for`: which outline it stops: everything (walls) or only what is on the ground (the wedge's edge).
 */
export interface HalfPlane {
  readonly nx: number;
  readonly ny: number;
  readonly offset: number;
  readonly stops: "outline" | "ground";
}

export interface Box {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

/** Thickness given to the two parts of the doorway wall, mm: far more than any zone, so that they act as half-infinite. */
const WALL_DEPTH_MM = 1e5;

/** The long side of the wedge as a half plane (unit normal away from the corner); points beyond it are over the wedge. */
export function wedgeEdge(zone: Zone): { nx: number; ny: number; offset: number } {
  const { corner, legXMm: a, legYMm: b } = zone.wedge;
  const length = Math.sqrt(a * a + b * b);
  const right = isRight(corner);
  const upper = isUpper(corner);
  const nx = ((right ? -1 : 1) * b) / length;
  const ny = ((upper ? -1 : 1) * a) / length;
  const cornerX = right ? zone.widthMm : 0;
  const cornerY = upper ? zone.heightMm : 0;
  return { nx, ny, offset: nx * cornerX + ny * cornerY + (a * b) / length };
}

export function isRight(corner: Corner): boolean {
  return corner === "lower-right" || corner === "upper-right";
}

export function isUpper(corner: Corner): boolean {
  return corner === "upper-left" || corner === "upper-right";
}

/** The three walls without a doorway. */
export function wholeWalls(zone: Zone): readonly HalfPlane[] {
  const all: Record<Wall, HalfPlane> = {
    left: { nx: 1, ny: 0, offset: 0, stops: "outline" },
    right: { nx: -1, ny: 0, offset: -zone.widthMm, stops: "outline" },
    bottom: { nx: 0, ny: 1, offset: 0, stops: "outline" },
    top: { nx: 0, ny: -1, offset: -zone.heightMm, stops: "outline" },
  };
  return (Object.keys(all) as Wall[]).filter((wall) => wall !== zone.doorway.wall).map((wall) => all[wall]);
}

/** The doorway wall left and right of its gap, as deep boxes outside the zone: their corners are the doorposts. */
export function doorwayParts(zone: Zone): readonly Box[] {
  const { wall, centreMm, widthMm } = zone.doorway;
  const from = centreMm - widthMm / 2;
  const to = centreMm + widthMm / 2;
  const deep = WALL_DEPTH_MM;
  if (wall === "left" || wall === "right") {
    const minX = wall === "left" ? -deep : zone.widthMm;
    const maxX = wall === "left" ? 0 : zone.widthMm + deep;
    return [
      { minX, maxX, minY: -deep, maxY: from },
      { minX, maxX, minY: to, maxY: zone.heightMm + deep },
    ];
  }
  const minY = wall === "bottom" ? -deep : zone.heightMm;
  const maxY = wall === "bottom" ? 0 : zone.heightMm + deep;
  return [
    { minX: -deep, maxX: from, minY, maxY },
    { minX: to, maxX: zone.widthMm + deep, minY, maxY },
  ];
}

export function boxOf(rect: RectMm): Box {
  return {
    minX: rect.xMm,
    minY: rect.yMm,
    maxX: rect.xMm + rect.widthMm,
    maxY: rect.yMm + rect.heightMm,
  };
}
