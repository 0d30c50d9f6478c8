import { Container, Graphics } from "pixi.js";
import { robotOutline } from "../model/outline.ts";
import type { Robot } from "../model/robot.ts";
import { pusherChains } from "../score/pusher.ts";
import type { Recording } from "../trial/recording.ts";
import { emptyLayer } from "./layer.ts";
import type { Palette } from "./palette.ts";
import { type Stripe, sweptFloor } from "./sweptFloor.ts";
import type { Viewport } from "./viewport.ts";

/** Stripes in a part that is drawn once and from then on shown or hidden. */
const PART_STRIPES = 120;

/** The floor that the pusher has passed over so far in a run. One even tone: stripes that lie over each other do not show. */
export class SweptScene {
  readonly layer = new Container();
  #stripes: readonly Stripe[] = [];
  #parts: Graphics[] = [];
  #tail = new Graphics();
  #viewport: Viewport | null = null;
  #colour = "";

  draw(robot: Robot, recording: Recording, viewport: Viewport, palette: Palette): void {
    this.clear();
    this.#stripes = sweptFloor(recording, pusherChains(robotOutline(robot)));
    this.#viewport = viewport;
    this.#colour = palette.grid;
    this.#tail = new Graphics();
    this.layer.addChild(this.#tail);
  }

  showUntil(timeS: number): void {
    if (!this.#viewport) return;
    const count = countUntil(this.#stripes, timeS);
    const whole = Math.floor(count / PART_STRIPES);
    while (this.#parts.length < whole) {
      const part = new Graphics();
      const from = this.#parts.length * PART_STRIPES;
      this.#fill(part, from, from + PART_STRIPES);
      this.#parts.push(part);
      this.layer.addChild(part);
    }
    for (const [index, part] of this.#parts.entries()) part.visible = index < whole;
    this.#fill(this.#tail.clear(), whole * PART_STRIPES, count);
  }

  clear(): void {
    emptyLayer(this.layer);
    this.#parts = [];
    this.#stripes = [];
    this.#viewport = null;
  }

  #fill(part: Graphics, from: number, to: number): void {
    const viewport = this.#viewport;
    if (!viewport) return;
    for (let i = from; i < to; i++) {
      const corners = this.#stripes[i]?.corners ?? [];
      part
        .poly(corners.map((mm, k) => (k % 2 === 0 ? viewport.x(mm) : viewport.y(mm))))
        .fill({ color: this.#colour });
    }
  }
}

function countUntil(stripes: readonly Stripe[], timeS: number): number {
  let low = 0;
  let high = stripes.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((stripes[middle]?.timeS ?? Number.POSITIVE_INFINITY) <= timeS) low = middle + 1;
    else high = middle;
  }
  return low;
}
