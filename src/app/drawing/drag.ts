import type { PointMm } from "../../model/zone.ts";
import { alongAxis, type Grip, snap } from "./handle.ts";

/** What a drag asks of the drawing it happens on. */
interface Drawing<G extends Grip> {
  find(id: string): G | undefined;
  /** Pixels to a millimetre, as the drag begins. */
  readonly scale: number;
  readonly snapMm: number;
  /** Takes a grip as near to a place as it can go; whether it moved at all. */
  move(grip: G, to: PointMm, gesture: string): boolean;
}

/** Way of the pointer below which a press is no drag, px: a hand is never quite still. */
const STILL_PX = 3;

let gestures = 0;

/** A grip being dragged by a pointer, moved once a frame: every place is checked like a file. */
export class Drag<G extends Grip> {
  readonly #drawing: Drawing<G>;
  readonly #startPx: PointMm;
  readonly #startMm: PointMm;
  readonly #gesture: string;
  #id: string;
  #wanted: PointMm | null = null;
  #frame = 0;

  constructor(drawing: Drawing<G>, grip: G, event: PointerEvent) {
    gestures += 1;
    this.#gesture = `drag-${gestures}`;
    this.#drawing = drawing;
    this.#id = grip.id;
    this.#startPx = { xMm: event.clientX, yMm: event.clientY };
    this.#startMm = grip.at;
  }

  /** Id of the grip in hand. */
  get id(): string {
    return this.#id;
  }

  get moved(): boolean {
    return this.#wanted !== null;
  }

  follow(event: PointerEvent): void {
    const dx = event.clientX - this.#startPx.xMm;
    const dy = event.clientY - this.#startPx.yMm;
    if (this.#wanted === null && Math.hypot(dx, dy) < STILL_PX) return;
    const to = (start: number, shiftPx: number) =>
      snap(start + shiftPx / this.#drawing.scale, this.#drawing.snapMm);
    this.#wanted = { xMm: to(this.#startMm.xMm, dx), yMm: to(this.#startMm.yMm, -dy) };
    if (this.#frame === 0) this.#frame = requestAnimationFrame(() => this.#move());
  }

  /** Where it was let go. */
  end(): void {
    if (this.#frame === 0) return;
    cancelAnimationFrame(this.#frame);
    this.#move();
  }

  #move(): void {
    this.#frame = 0;
    const grip = this.#drawing.find(this.#id);
    if (!grip || !this.#wanted) return;
    const moved = this.#drawing.move(grip, alongAxis(grip, this.#wanted), this.#gesture);
    if (moved && grip.becomes !== undefined) this.#id = grip.becomes;
  }
}
