import { Graphics } from "pixi.js";
import type { CarrySpot } from "./carrySpots.ts";
import type { Palette } from "./palette.ts";
import type { PointPx, Viewport } from "./viewport.ts";

/** Half the length of a bar, and from the middle to the corner of a diamond, px. */
const BAR_PX = 12;
const DIAMOND_PX = 9;

/**
 * Carrying limits on the way: a thick line where a ball can be lost, with a bar across its end where the robot brakes, a diamond in
 * the middle of a turn; a full one where no speed would help.
 */
export function carryMarks(
  spots: readonly CarrySpot[],
  viewport: Viewport,
  palette: Palette,
): readonly Graphics[] {
  const lines = new Graphics();
  const bars = new Graphics();
  const rims = new Graphics();
  const full = new Graphics();
  for (const { why, way, safe } of spots) {
    const points = way.map((point) => viewport.point(point));
    for (const [i, { x, y }] of points.entries()) {
      if (i === 0) lines.moveTo(x, y);
      else lines.lineTo(x, y);
    }
    if (why === "brakes") bar(bars, points);
    else diamond(safe > 0 ? rims : full, points[Math.floor(points.length / 2)] ?? { x: 0, y: 0 });
  }
  const stroke = { color: palette.lost, width: 2.5 };
  return [
    lines.stroke({ ...stroke, width: 4, alpha: 0.75 }),
    bars.stroke({ ...stroke, width: 4 }),
    rims.fill(palette.floor).stroke(stroke),
    full.fill(palette.lost).stroke(stroke),
  ];
}

/** Across the last stretch, at its end. */
function bar(bars: Graphics, points: readonly PointPx[]): void {
  const end = points.at(-1);
  const before = points.findLast(({ x, y }) => end !== undefined && (x !== end.x || y !== end.y));
  if (!end || !before) return;
  const [dx, dy] = [end.x - before.x, end.y - before.y];
  const length = Math.sqrt(dx * dx + dy * dy);
  const [sx, sy] = [(-dy / length) * BAR_PX, (dx / length) * BAR_PX];
  bars.moveTo(end.x - sx, end.y - sy).lineTo(end.x + sx, end.y + sy);
}

function diamond(drawn: Graphics, { x, y }: PointPx): void {
  drawn.poly([x, y - DIAMOND_PX, x + DIAMOND_PX, y, x, y + DIAMOND_PX, x - DIAMOND_PX, y]);
}
