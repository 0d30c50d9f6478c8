import { Container, Graphics } from "pixi.js";
import type { Recording, RunEvent } from "../trial/recording.ts";
import { emptyLayer } from "./layer.ts";
import type { Palette } from "./palette.ts";
import { isStop, isTrouble } from "./trouble.ts";
import type { Viewport } from "./viewport.ts";

/** Half the size of a mark, CSS pixels. */
const HALF_PX = 8;

/** Where a run has jammed (a triangle with a bar) and where balls have left the wedge or the zone (a cross), up to any second. */
export class TroubleScene {
  readonly layer = new Container();
  #marks: readonly { readonly timeS: number; readonly mark: Graphics }[] = [];

  draw(recording: Recording, viewport: Viewport, palette: Palette): void {
    this.clear();
    this.#marks = recording.events.filter(isTrouble).map((event) => {
      const mark = markOf(event, palette);
      mark.position.set(viewport.x(event.xMm), viewport.y(event.yMm));
      this.layer.addChild(mark);
      return { timeS: event.timeS, mark };
    });
  }

  showUntil(timeS: number): void {
    for (const each of this.#marks) each.mark.visible = each.timeS <= timeS;
  }

  clear(): void {
    emptyLayer(this.layer);
    this.#marks = [];
  }
}

function markOf(event: RunEvent, palette: Palette): Graphics {
  const mark = new Graphics();
  if (isStop(event)) {
    mark.poly([0, -HALF_PX, HALF_PX, HALF_PX, -HALF_PX, HALF_PX]);
    mark.fill({ color: palette.paper }).stroke({ width: 2, color: palette.lost, join: "round" });
    mark.moveTo(0, -2).lineTo(0, 5).stroke({ width: 2, color: palette.lost });
    return mark;
  }
  mark.moveTo(-HALF_PX, -HALF_PX).lineTo(HALF_PX, HALF_PX);
  mark.moveTo(-HALF_PX, HALF_PX).lineTo(HALF_PX, -HALF_PX);
  // A rim first, so that the cross can be seen on lines as well.
  mark.stroke({ width: 6, color: palette.paper, cap: "round" });
  mark.moveTo(-HALF_PX, -HALF_PX).lineTo(HALF_PX, HALF_PX);
  mark.moveTo(-HALF_PX, HALF_PX).lineTo(HALF_PX, -HALF_PX);
  return mark.stroke({ width: 3, color: palette.lost, cap: "round" });
}
