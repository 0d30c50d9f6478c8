import { Container, Graphics } from "pixi.js";
import { ballsOf, type Project } from "../model/project.ts";
import type { PointMm } from "../model/zone.ts";
import { emptyLayer } from "./layer.ts";
import { ballColour, type Palette } from "./palette.ts";
import { ballRadiiMm, regionRuns } from "./regionLayout.ts";
import type { Viewport } from "./viewport.ts";

/**
 * Where the laying-out rule lets a ball's middle lie, shaded, and a few placements it gives as rings. With balls of several
 * sizes there is a shade for each size, one over the other: darkest is where all of them may lie.
 */
export class RegionScene {
  readonly layer = new Container();

  draw(
    project: Project,
    placements: readonly (readonly PointMm[])[],
    viewport: Viewport,
    palette: Palette,
  ): void {
    this.clear();
    for (const radiusMm of ballRadiiMm(project)) {
      const drawn = new Graphics();
      for (const run of regionRuns(project, radiusMm)) {
        drawn.rect(
          viewport.x(run.fromMm),
          viewport.y(run.yMm + run.stepMm),
          viewport.px(run.toMm - run.fromMm),
          viewport.px(run.stepMm),
        );
      }
      drawn.fill({ color: palette.pathNow, alpha: 0.13 });
      this.layer.addChild(drawn);
    }
    const rings = new Graphics();
    const kinds = ballsOf(project);
    for (const placement of placements) {
      for (const [ball, at] of placement.entries()) {
        const radius = viewport.px((kinds[ball]?.diameterMm ?? 40) / 2);
        rings.circle(viewport.x(at.xMm), viewport.y(at.yMm), radius);
        rings.stroke({ width: 2, color: ballColour(palette, ball), alpha: 0.9 });
        rings.circle(viewport.x(at.xMm), viewport.y(at.yMm), 1.5).fill(palette.inkSoft);
      }
    }
    this.layer.addChild(rings);
  }

  clear(): void {
    emptyLayer(this.layer);
  }
}
