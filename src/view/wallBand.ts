import type { Doorway, PointMm, Wall, Zone } from "../model/zone.ts";
import type { Viewport } from "./viewport.ts";

/** How thick walls are drawn, outside the zone's inner edge, CSS pixels. */
export const WALL_PX = 7;

/** A rectangle on the screen, (x, y) its upper left corner. */
export interface RectPx {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A unit vector in the zone frame pointing out of the zone through a wall. */
export function outward(wall: Wall): PointMm {
  switch (wall) {
    case "left":
      return { xMm: -1, yMm: 0 };
    case "right":
      return { xMm: 1, yMm: 0 };
    case "bottom":
      return { xMm: 0, yMm: -1 };
    case "top":
      return { xMm: 0, yMm: 1 };
    default:
      return wall satisfies never;
  }
}

/** The place on a wall's inner edge, `alongMm` from its left or lower end. */
export function wallPoint(zone: Zone, wall: Wall, alongMm: number): PointMm {
  switch (wall) {
    case "left":
      return { xMm: 0, yMm: alongMm };
    case "right":
      return { xMm: zone.widthMm, yMm: alongMm };
    case "bottom":
      return { xMm: alongMm, yMm: 0 };
    case "top":
      return { xMm: alongMm, yMm: zone.heightMm };
    default:
      return wall satisfies never;
  }
}

export function wallLengthMm(zone: Zone, wall: Wall): number {
  return wall === "left" || wall === "right" ? zone.heightMm : zone.widthMm;
}

/** Both ends of the doorway on the wall's inner edge. */
export function doorwayEnds(zone: Zone): readonly [PointMm, PointMm] {
  const { wall, centreMm, widthMm } = zone.doorway;
  return [wallPoint(zone, wall, centreMm - widthMm / 2), wallPoint(zone, wall, centreMm + widthMm / 2)];
}

/** The walls as rectangles on the screen, corners closed, the doorway left open. */
export function wallRects(zone: Zone, viewport: Viewport): readonly RectPx[] {
  return (["bottom", "top", "left", "right"] as const).flatMap((wall) => {
    const solid = solidParts(zone.doorway, wall, wallLengthMm(zone, wall));
    return solid.map(({ fromMm, toMm, closesStart, closesEnd }) => {
      const a = viewport.point(wallPoint(zone, wall, fromMm));
      const b = viewport.point(wallPoint(zone, wall, toMm));
      const out = outward(wall);
      // Horizontal walls carry the corners.
      const horizontal = wall === "bottom" || wall === "top";
      const start = horizontal && closesStart ? WALL_PX : 0;
      const end = horizontal && closesEnd ? WALL_PX : 0;
      const far = { x: a.x + out.xMm * WALL_PX, y: a.y - out.yMm * WALL_PX };
      const left = Math.min(a.x, b.x, far.x) - start;
      const top = Math.min(a.y, b.y, far.y);
      return {
        x: left,
        y: top,
        width: Math.max(a.x, b.x, far.x) + end - left,
        height: Math.max(a.y, b.y, far.y) - top,
      };
    });
  });
}

function solidParts(doorway: Doorway, wall: Wall, lengthMm: number) {
  const whole = { fromMm: 0, toMm: lengthMm, closesStart: true, closesEnd: true };
  if (doorway.wall !== wall) return [whole];
  const from = doorway.centreMm - doorway.widthMm / 2;
  const to = doorway.centreMm + doorway.widthMm / 2;
  return [
    { ...whole, toMm: Math.max(0, from), closesEnd: false },
    { ...whole, fromMm: Math.min(lengthMm, to), closesStart: false },
  ];
}
