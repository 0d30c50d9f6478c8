import { Container, Graphics } from "pixi.js";
import type { Zone } from "../model/zone.ts";
import { lengthText } from "../texts/lengths.ts";
import { label } from "./label.ts";
import type { Palette } from "./palette.ts";
import type { Viewport } from "./viewport.ts";
import { WALL_PX } from "./wallBand.ts";

/** Bar lengths, mm: the first that is long enough to read off. */
const LENGTHS_MM = [100, 200, 500, 1000] as const;
const SHORTEST_PX = 24;

/** The shortest of the lengths that is at least 30 pixels long at this scale. */
export function scaleBarMm(viewport: Viewport): number {
  return LENGTHS_MM.find((mm) => viewport.px(mm) >= SHORTEST_PX) ?? 1000;
}

/** A two-part bar with its length under the zone, on the side away from a doorway in the lower wall. */
export function scaleBar(zone: Zone, viewport: Viewport, palette: Palette): Container {
  const bar = new Container();
  const lengthMm = scaleBarMm(viewport);
  const lengthPx = viewport.px(lengthMm);
  const { wall, centreMm } = zone.doorway;
  const rightSide = wall === "bottom" && centreMm < zone.widthMm / 2;
  const x = rightSide ? viewport.x(zone.widthMm) - lengthPx - 1 : viewport.x(0) + 1;
  const y = viewport.y(0) + WALL_PX + 9;
  const lines = new Graphics();
  lines.rect(x, y, lengthPx / 2, 5).fill(palette.inkSoft);
  lines.rect(x, y, lengthPx, 5).stroke({ width: 1, color: palette.inkSoft });
  const text = label(lengthText(lengthMm), { colour: palette.inkSoft, sizePx: 12 });
  text.position.set(x + lengthPx / 2, y + 16);
  bar.addChild(lines, text);
  return bar;
}
