import { Container, Graphics, type StrokeInput } from "pixi.js";
import { pointsUntil, type Trail } from "./runTrace.ts";
import type { Viewport } from "./viewport.ts";

/** Points a part of a trail has: a part that is complete is built once and from then on shown or hidden. */
const PART_POINTS = 48;

/** One trail, drawn up to any second at the cost of its last few points. */
export class Strand {
  readonly layer = new Container();
  readonly #trail: Trail;
  readonly #viewport: Viewport;
  readonly #style: StrokeInput;
  readonly #parts: Graphics[] = [];
  readonly #tail = new Graphics();

  constructor(trail: Trail, viewport: Viewport, style: StrokeInput) {
    this.#trail = trail;
    this.#viewport = viewport;
    this.#style = style;
    this.layer.addChild(this.#tail);
  }

  showUntil(timeS: number): void {
    const count = pointsUntil(this.#trail, timeS);
    const whole = Math.max(0, Math.floor((count - 1) / PART_POINTS));
    while (this.#parts.length < whole) {
      const part = new Graphics();
      this.#line(part, this.#parts.length * PART_POINTS, (this.#parts.length + 1) * PART_POINTS + 1);
      this.#parts.push(part);
      this.layer.addChild(part);
    }
    for (const [index, part] of this.#parts.entries()) part.visible = index < whole;
    this.#line(this.#tail.clear(), whole * PART_POINTS, count);
  }

  destroy(): void {
    this.layer.destroy({ children: true });
  }

  /** @param from, to points of the trail, `to` excluded; neighbouring parts share one */
  #line(lines: Graphics, from: number, to: number): void {
    if (to - from < 2) return;
    const { xMm, yMm } = this.#trail;
    for (let i = from; i < to; i++) {
      const x = this.#viewport.x(xMm[i] ?? 0);
      const y = this.#viewport.y(yMm[i] ?? 0);
      if (i === from) lines.moveTo(x, y);
      else lines.lineTo(x, y);
    }
    lines.stroke(this.#style);
  }
}
