import { Container, Graphics } from "pixi.js";
import type { Zone } from "../model/zone.ts";
import { drawingTexts as t } from "../texts/english/drawing.ts";
import { dashes } from "./dashes.ts";
import { label } from "./label.ts";
import { emptyLayer } from "./layer.ts";
import type { Palette } from "./palette.ts";
import type { Viewport } from "./viewport.ts";
import { doorwayEnds, outward, WALL_PX } from "./wallBand.ts";

const LABEL_OUT_PX = 24;

/** The doorway: jambs, a dashed threshold, an arrow that points in, and its name. */
export class DoorwayScene {
  readonly layer = new Container();

  draw(zone: Zone, viewport: Viewport, palette: Palette): void {
    emptyLayer(this.layer);
    const ends = doorwayEnds(zone).map((end) => viewport.point(end));
    const [a, b] = ends;
    if (!a || !b) return;
    const out = outward(zone.doorway.wall);
    const [ox, oy] = [out.xMm, -out.yMm];
    const lines = new Graphics();
    for (const { from, to } of dashes([a, b], 5, 4)) lines.moveTo(from.x, from.y).lineTo(to.x, to.y);
    lines.stroke({ width: 1.5, color: palette.doorway });
    for (const end of [a, b]) {
      lines.moveTo(end.x, end.y).lineTo(end.x + ox * (WALL_PX + 4), end.y + oy * (WALL_PX + 4));
    }
    lines.stroke({ width: 2.5, color: palette.doorway });
    const middle = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
    // The arrow: its tip on the threshold.
    const [tx, ty] = [-oy, ox];
    const at = (outPx: number, sidePx: number) => ({
      x: middle.x + ox * outPx + tx * sidePx,
      y: middle.y + oy * outPx + ty * sidePx,
    });
    lines.poly([at(1, 0), at(11, 7), at(11, -7)]).fill(palette.doorway);
    const text = label(t.label.doorway, { colour: palette.doorway, sizePx: 13, bold: true });
    text.position.set(middle.x + ox * LABEL_OUT_PX, middle.y + oy * LABEL_OUT_PX);
    if (ox !== 0) text.rotation = -Math.PI / 2;
    this.layer.addChild(lines, text);
  }
}
