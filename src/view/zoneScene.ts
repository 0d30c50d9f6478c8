import { Container, Graphics } from "pixi.js";
import type { Wall, Zone } from "../model/zone.ts";
import { lengthText } from "../texts/lengths.ts";
import { label } from "./label.ts";
import { emptyLayer } from "./layer.ts";
import type { Palette } from "./palette.ts";
import { scaleBar } from "./scaleBar.ts";
import type { MarginPx, Viewport } from "./viewport.ts";
import { outward, WALL_PX, wallLengthMm, wallPoint, wallRects } from "./wallBand.ts";

/** Finer squares than this would turn grey, pixels. */
const GRID_MIN_PX = 14;
/** Middle of a wall's length label from the wall's inner edge, pixels. */
const LABEL_OUT_PX = 21;

/** Floor with its square grid, walls, their lengths, and the scale bar. Drawn anew only when the zone, the size or the theme changes. */
export class ZoneScene {
  readonly layer = new Container();

  draw(zone: Zone, viewport: Viewport, palette: Palette): void {
    emptyLayer(this.layer);
    const floor = new Graphics();
    floor
      .rect(viewport.x(0), viewport.y(zone.heightMm), viewport.px(zone.widthMm), viewport.px(zone.heightMm))
      .fill(palette.floor);
    this.layer.addChild(floor, grid(zone, viewport, palette), walls(zone, viewport, palette));
    for (const wall of labelledWalls(zone)) this.layer.addChild(lengthLabel(zone, wall, viewport, palette));
    this.layer.addChild(scaleBar(zone, viewport, palette));
  }
}

/** Squares of 100 mm, heavier every 500 mm; only the heavy ones where the zone is big on a small screen. */
function grid(zone: Zone, viewport: Viewport, palette: Palette): Graphics {
  const lines = new Graphics();
  const fine = viewport.px(100) >= GRID_MIN_PX;
  const draw = (stepMm: number, colour: string, skipMm: number) => {
    for (let x = stepMm; x < zone.widthMm; x += stepMm) {
      if (x % skipMm === 0) continue;
      lines.moveTo(viewport.x(x), viewport.y(0)).lineTo(viewport.x(x), viewport.y(zone.heightMm));
    }
    for (let y = stepMm; y < zone.heightMm; y += stepMm) {
      if (y % skipMm === 0) continue;
      lines.moveTo(viewport.x(0), viewport.y(y)).lineTo(viewport.x(zone.widthMm), viewport.y(y));
    }
    lines.stroke({ width: 1, color: colour });
  };
  if (fine) draw(100, palette.grid, 500);
  draw(500, palette.gridStrong, Number.POSITIVE_INFINITY);
  return lines;
}

function walls(zone: Zone, viewport: Viewport, palette: Palette): Graphics {
  const band = new Graphics();
  for (const rect of wallRects(zone, viewport)) band.rect(rect.x, rect.y, rect.width, rect.height);
  return band.fill(palette.wall);
}

/** Space for the walls and for what is written outside them; the scale bar stands below. */
export function marginOf(zone: Zone): MarginPx {
  const [across, along] = labelledWalls(zone);
  const space = (wall: Wall) =>
    wall === zone.doorway.wall || wall === across || wall === along ? 32 : WALL_PX + 12;
  return { left: space("left"), right: space("right"), top: space("top"), bottom: 42 };
}

/** One wall of each direction, away from the doorway's label. */
export function labelledWalls(zone: Zone): readonly [Wall, Wall] {
  return [zone.doorway.wall === "top" ? "bottom" : "top", zone.doorway.wall === "left" ? "right" : "left"];
}

function lengthLabel(zone: Zone, wall: Wall, viewport: Viewport, palette: Palette): Container {
  const lengthMm = wallLengthMm(zone, wall);
  const middle = viewport.point(wallPoint(zone, wall, lengthMm / 2));
  const out = outward(wall);
  const text = label(lengthText(lengthMm), { colour: palette.inkSoft, sizePx: 12 });
  const distance = LABEL_OUT_PX - WALL_PX / 2;
  text.position.set(middle.x + out.xMm * distance, middle.y - out.yMm * distance);
  if (out.xMm !== 0) text.rotation = -Math.PI / 2;
  return text;
}
