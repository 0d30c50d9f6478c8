import { Container, Graphics } from "pixi.js";
import type { HeatMap } from "../score/heatMap.ts";
import { emptyLayer } from "./layer.ts";
import type { Palette } from "./palette.ts";
import { hatchRegion } from "./ringHatch.ts";
import type { Viewport } from "./viewport.ts";
import { HATCHES, type RegionLook, type ZoneMap } from "./zoneMap.ts";

/** A map over the floor: readable by shape alone, colours only help. */
export class MapScene {
  readonly layer = new Container();

  draw(map: ZoneMap | null, viewport: Viewport, palette: Palette): void {
    emptyLayer(this.layer);
    if (!map) return;
    if (map.kind === "heat") this.layer.addChild(squares(map.map, viewport, palette));
    else
      this.layer.addChild(...map.parts.map(({ look, region }) => hatched(look, region, viewport, palette)));
    if (map.kind === "regions") this.layer.addChild(circles(map, viewport, palette));
  }
}

/** The larger the square, the more of the balls that start there are lost; a dot where none is, nothing where nobody knows. */
function squares({ cells, cellMm }: HeatMap, viewport: Viewport, palette: Palette): Graphics {
  const drawn = new Graphics();
  for (const { xMm, yMm, rate } of cells) {
    if (!rate) continue;
    const side = Math.max(1.5, viewport.px(cellMm) * Math.sqrt(1 - rate.value) - 1);
    drawn.rect(viewport.x(xMm) - side / 2, viewport.y(yMm) - side / 2, side, side);
  }
  return drawn.fill({ color: palette.lost, alpha: 0.75 });
}

function colourOf(look: RegionLook, palette: Palette): string {
  if (look === "good") return palette.delivered;
  return look === "bad" ? palette.lost : palette.inkSoft;
}

function hatched(
  look: RegionLook,
  region: Parameters<typeof hatchRegion>[0],
  viewport: Viewport,
  palette: Palette,
): Graphics {
  const { directionRad, gapPx, widthPx } = HATCHES[look];
  const drawn = new Graphics();
  for (const { from, to } of hatchRegion(region, viewport, directionRad, gapPx)) {
    drawn.moveTo(from.x, from.y).lineTo(to.x, to.y);
  }
  return drawn.stroke({ width: widthPx, color: colourOf(look, palette), alpha: 0.8 });
}

function circles(map: ZoneMap & { kind: "regions" }, viewport: Viewport, palette: Palette): Graphics {
  const drawn = new Graphics();
  for (const { xMm, yMm, radiusMm } of map.circles) {
    drawn.circle(viewport.x(xMm), viewport.y(yMm), viewport.px(radiusMm));
    drawn.stroke({ width: 2.5, color: palette.ink });
  }
  return drawn;
}
