import { Container, Graphics } from "pixi.js";
import type { Zone } from "../model/zone.ts";
import { drawingTexts as t } from "../texts/english/drawing.ts";
import { hatch } from "./hatch.ts";
import { label } from "./label.ts";
import { emptyLayer } from "./layer.ts";
import type { Palette } from "./palette.ts";
import type { Viewport } from "./viewport.ts";

/** Solid blocks: hatched, outlined, named where the name fits. */
export class KeepOutScene {
  readonly layer = new Container();

  draw(zone: Zone, viewport: Viewport, palette: Palette): void {
    emptyLayer(this.layer);
    for (const block of zone.keepOuts) {
      const { xMm, yMm, widthMm, heightMm } = block;
      const corners = [
        viewport.point({ xMm, yMm }),
        viewport.point({ xMm: xMm + widthMm, yMm }),
        viewport.point({ xMm: xMm + widthMm, yMm: yMm + heightMm }),
        viewport.point({ xMm, yMm: yMm + heightMm }),
      ];
      const drawn = new Graphics();
      drawn.poly(corners).fill({ color: palette.keepOut, alpha: 0.25 });
      for (const { from, to } of hatch(corners, Math.PI / 4, 9))
        drawn.moveTo(from.x, from.y).lineTo(to.x, to.y);
      drawn.stroke({ width: 1.5, color: palette.keepOut });
      drawn.poly(corners).stroke({ width: 2, color: palette.keepOut, alignment: 1 });
      this.layer.addChild(drawn);
      const text = label(t.label.keepOut, { colour: palette.ink, sizePx: 11, halo: palette.floor });
      text.position.set(viewport.x(xMm + widthMm / 2), viewport.y(yMm + heightMm / 2));
      if (text.width > viewport.px(widthMm) && heightMm > widthMm) text.rotation = -Math.PI / 2;
      const roomPx = viewport.px(Math.max(widthMm, heightMm));
      if (roomPx >= text.width) this.layer.addChild(text);
      else text.destroy();
    }
  }
}
