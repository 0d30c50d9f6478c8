import { Container, Graphics } from "pixi.js";
import type { BallKind } from "../model/ball.ts";
import type { PointMm } from "../model/zone.ts";
import { dashes } from "./dashes.ts";
import { emptyLayer } from "./layer.ts";
import type { Palette } from "./palette.ts";
import type { Viewport } from "./viewport.ts";

const SIDES = 28;

/** Where every ball lay at the start of the run: dashed rings, a little smaller than the balls, which hide them at first. */
export class StartScene {
  readonly layer = new Container();

  draw(
    balls: readonly BallKind[],
    placement: readonly PointMm[],
    viewport: Viewport,
    palette: Palette,
  ): void {
    emptyLayer(this.layer);
    const rings = new Graphics();
    for (const [index, place] of placement.entries()) {
      const radius = Math.max(2, viewport.px((balls[index]?.diameterMm ?? 0) / 2) - 2);
      const middle = viewport.point(place);
      const circle = Array.from({ length: SIDES + 1 }, (_, k) => ({
        x: middle.x + radius * Math.cos((2 * Math.PI * k) / SIDES),
        y: middle.y + radius * Math.sin((2 * Math.PI * k) / SIDES),
      }));
      for (const { from, to } of dashes(circle, 4, 3)) rings.moveTo(from.x, from.y).lineTo(to.x, to.y);
    }
    rings.stroke({ width: 1.25, color: palette.inkSoft });
    this.layer.addChild(rings);
  }

  clear(): void {
    emptyLayer(this.layer);
  }
}
