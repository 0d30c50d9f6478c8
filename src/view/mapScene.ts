import { Container, Graphics } from "pixi.js";
import type { PushField } from "../plan/push/pushField.ts";
import { type HeatMap, lostMark } from "../score/heatMap.ts";
import { carryMarks } from "./carryMarks.ts";
import { fieldMarks } from "./fieldMarks.ts";
import { emptyLayer } from "./layer.ts";
import type { Palette } from "./palette.ts";
import { hatchRegion } from "./ringHatch.ts";
import type { Viewport } from "./viewport.ts";
import { HATCHES, type RegionLook, type ZoneMap } from "./zoneMap.ts";

/** A map over the floor: readable by shape alone, colours only help. */
export class MapScene {
  readonly layer = new Container();
  /** What belongs on the way lies over it, and over the robot that stands on it. */
  readonly over = new Container();

  draw(map: ZoneMap | null, viewport: Viewport, palette: Palette): void {
    emptyLayer(this.layer);
    emptyLayer(this.over);
    if (!map) return;
    if (map.kind === "heat") this.layer.addChild(squares(map.map, viewport, palette));
    else if (map.kind === "seconds") this.layer.addChild(...homeSeconds(map.field, viewport, palette));
    else if (map.kind === "carry") this.over.addChild(...carryMarks(map.spots, viewport, palette));
    else
      this.layer.addChild(...map.parts.map(({ look, region }) => hatched(look, region, viewport, palette)));
    if (map.kind === "regions") this.layer.addChild(circles(map, viewport, palette));
  }
}

/** The larger the square, the more of the balls that start there are lost; a dot where none is, nothing where nobody knows. */
function squares(map: HeatMap, viewport: Viewport, palette: Palette): Graphics {
  const drawn = new Graphics();
  for (const cell of map.cells) {
    if (!cell.rate) continue;
    const { xMm, yMm, acrossMm, upMm } = lostMark(map, cell, cell.rate);
    const [width, height] = [acrossMm, upMm].map((mm) => Math.max(1.5, viewport.px(mm) - 1)) as [
      number,
      number,
    ];
    drawn.rect(viewport.x(xMm) - width / 2, viewport.y(yMm) - height / 2, width, height);
  }
  return drawn.fill({ color: palette.lost, alpha: 0.75 });
}

/** The larger the square, the longer the way home; a cross where no clean push is, a full block where the robot cannot reach. */
function homeSeconds(field: PushField, viewport: Viewport, palette: Palette): readonly Graphics[] {
  const ways = new Graphics();
  const crosses = new Graphics();
  const blocks = new Graphics();
  for (const { kind, xMm, yMm, sideMm } of fieldMarks(field, LEAST_CELL_PX / viewport.scalePxPerMm)) {
    const [x, y, half] = [viewport.x(xMm), viewport.y(yMm), viewport.px(sideMm) / 2];
    if (kind === "home") ways.rect(x - half, y - half, 2 * half, 2 * half);
    else if (kind === "dead") blocks.rect(x - half, y - half, 2 * half, 2 * half);
    else
      crosses
        .moveTo(x - half, y - half)
        .lineTo(x + half, y + half)
        .moveTo(x - half, y + half)
        .lineTo(x + half, y - half);
  }
  return [
    ways.fill({ color: palette.inkSoft, alpha: 0.55 }),
    crosses.stroke({ width: 2, color: palette.lost }),
    blocks.fill({ color: palette.ink }),
  ];
}

/** Marks closer than this run together, px. */
const LEAST_CELL_PX = 15;

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
