import { Container, Graphics, type Text } from "pixi.js";
import type { PointMm, Zone } from "../model/zone.ts";
import { isRight, isUpper } from "../motion/obstacles.ts";
import { drawingTexts as t } from "../texts/english/drawing.ts";
import { chord, hatch } from "./hatch.ts";
import { label } from "./label.ts";
import { emptyLayer } from "./layer.ts";
import type { Palette } from "./palette.ts";
import type { PointPx, Viewport } from "./viewport.ts";
import { heightLinesMm, type WedgePlace, wedgePlace, wedgeWords } from "./wedgePlace.ts";

const HEIGHT_LINES = 5;
/** Gap between the wedge's text and the walls, pixels. */
const LABEL_IN_PX = 4;

/**
 * The wedge, read like a map: lines along the long side at equal steps of height (close lines: steep; none: level),
 * an arrow that points uphill, a double edge where there is a lip. A flat mark is hatched across.
 */
export class WedgeScene {
  readonly layer = new Container();

  draw(zone: Zone, viewport: Viewport, palette: Palette): void {
    emptyLayer(this.layer);
    const place = wedgePlace(zone);
    const outline = [place.corner, place.onX, place.onY].map((point) => viewport.point(point));
    const drawn = new Graphics();
    drawn.poly(outline).fill(palette.wedge);
    if (zone.wedge.profile === "flat") {
      for (const { from, to } of hatch(outline, Math.PI / 4, 11))
        drawn.moveTo(from.x, from.y).lineTo(to.x, to.y);
      drawn.stroke({ width: 1, color: palette.wedgeLine, alpha: 0.6 });
    } else {
      heightLines(drawn, zone, place, viewport, outline, palette);
      slopeArrow(drawn, zone, place, viewport, palette);
    }
    edge(drawn, zone, place, viewport, palette);
    this.layer.addChild(drawn);
    this.#text(zone, place, viewport, palette);
  }

  /** Set against the corner, where the triangle is widest; without room for all of it, the name alone, or nothing. */
  #text(zone: Zone, place: WedgePlace, viewport: Viewport, palette: Palette): void {
    const style = { colour: palette.ink, halo: palette.wedge };
    const small = viewport.px(zone.wedge.legXMm) < 90;
    const name = label(t.label.wedge, { ...style, sizePx: small ? 11.5 : 14, bold: true });
    const details = wedgeWords(zone.wedge)
      .split(/(?<=,) /)
      .map((words) => label(words, { ...style, sizePx: 11.5 }));
    const all = stack([name, ...details], zone, place, viewport);
    const chosen = all ?? stack([name], zone, place, viewport) ?? [];
    // The name last: the halo of the line under it must not cut its descenders.
    if (chosen.length > 0) this.layer.addChild(...[...chosen].reverse());
    for (const line of [name, ...details]) if (!chosen.includes(line)) line.destroy();
  }
}

/** Puts lines under each other from the wall inward; null where one of them is wider than the triangle there. */
function stack(
  lines: readonly Text[],
  zone: Zone,
  place: WedgePlace,
  viewport: Viewport,
): readonly Text[] | null {
  const { corner, legXMm, legYMm } = zone.wedge;
  const at = viewport.point(place.corner);
  const [inX, inY] = [isRight(corner) ? -1 : 1, isUpper(corner) ? 1 : -1];
  let depth = LABEL_IN_PX;
  for (const line of isUpper(corner) ? lines : [...lines].reverse()) {
    const height = line.height - 2 * line.style.padding;
    const room = viewport.px(legXMm) * (1 - (depth + height) / viewport.px(legYMm));
    if (line.width - 2 * line.style.padding > room - LABEL_IN_PX) return null;
    line.position.set(at.x + inX * (LABEL_IN_PX + line.width / 2), at.y + inY * (depth + height / 2));
    depth += height + 1;
  }
  return lines;
}

/** How far along the long side the slope's arrow stands, from its end on the left or right wall: clear of the text. */
const ARROW_ALONG = 0.3;

/** The point `depthMm` inside the long side, at the arrow's place along it. */
function inside({ corner, onX, onY }: WedgePlace, depthMm: number): PointMm {
  const [dx, dy] = [onX.xMm - onY.xMm, onX.yMm - onY.yMm];
  const length = Math.sqrt(dx * dx + dy * dy);
  // Of the two normals, the one that points to the corner.
  const side = (corner.xMm - onY.xMm) * -dy + (corner.yMm - onY.yMm) * dx < 0 ? -1 : 1;
  return {
    xMm: onY.xMm + ARROW_ALONG * dx - (side * depthMm * dy) / length,
    yMm: onY.yMm + ARROW_ALONG * dy + (side * depthMm * dx) / length,
  };
}

function heightLines(
  drawn: Graphics,
  zone: Zone,
  place: WedgePlace,
  viewport: Viewport,
  outline: readonly PointPx[],
  palette: Palette,
): void {
  const a = viewport.point(place.onX);
  const b = viewport.point(place.onY);
  const corner = viewport.point(place.corner);
  const length = Math.sqrt((b.x - a.x) ** 2 + (b.y - a.y) ** 2);
  let normal = { x: -(b.y - a.y) / length, y: (b.x - a.x) / length };
  const side = (corner.x - a.x) * normal.x + (corner.y - a.y) * normal.y;
  if (side < 0) normal = { x: -normal.x, y: -normal.y };
  const base = a.x * normal.x + a.y * normal.y;
  for (const distanceMm of heightLinesMm(zone.wedge, place.depthMm, HEIGHT_LINES)) {
    const line = chord(outline, normal, base + viewport.px(distanceMm));
    if (line) drawn.moveTo(line.from.x, line.from.y).lineTo(line.to.x, line.to.y);
  }
  drawn.stroke({ width: 1, color: palette.wedgeLine, alpha: 0.7 });
}

/** Points uphill from the long side: toward the corner, for a tray away from it. */
function slopeArrow(
  drawn: Graphics,
  zone: Zone,
  place: WedgePlace,
  viewport: Viewport,
  palette: Palette,
): void {
  const low = viewport.point(inside(place, 0.1 * place.depthMm));
  const high = viewport.point(inside(place, 0.42 * place.depthMm));
  const [tail, tip] = zone.wedge.riseMm >= zone.wedge.lipMm ? [low, high] : [high, low];
  const length = Math.sqrt((tip.x - tail.x) ** 2 + (tip.y - tail.y) ** 2);
  if (length < 14) return;
  const [ux, uy] = [(tip.x - tail.x) / length, (tip.y - tail.y) / length];
  drawn.moveTo(tail.x, tail.y).lineTo(tip.x - 6 * ux, tip.y - 6 * uy);
  drawn.stroke({ width: 2, color: palette.wedgeLine });
  drawn
    .poly([
      tip,
      { x: tip.x - 8 * ux - 5 * uy, y: tip.y - 8 * uy + 5 * ux },
      { x: tip.x - 8 * ux + 5 * uy, y: tip.y - 8 * uy - 5 * ux },
    ])
    .fill(palette.wedgeLine);
}

/** The long side; a lip shows as a thick edge. */
function edge(drawn: Graphics, zone: Zone, place: WedgePlace, viewport: Viewport, palette: Palette): void {
  const a = viewport.point(place.onX);
  const b = viewport.point(place.onY);
  const lip = zone.wedge.profile !== "flat" && zone.wedge.lipMm > 0;
  drawn
    .moveTo(a.x, a.y)
    .lineTo(b.x, b.y)
    .stroke({ width: lip ? 4 : 2, color: palette.wedgeLine });
}
