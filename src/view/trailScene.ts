import { Container } from "pixi.js";
import { ballColour, type Palette } from "./palette.ts";
import type { RunTrace } from "./runTrace.ts";
import { Strand } from "./strand.ts";
import type { Viewport } from "./viewport.ts";

/** The ways really driven and rolled so far in a run: the robot's in the robot's colour, each ball's in its own. */
export class TrailScene {
  readonly layer = new Container();
  #strands: readonly Strand[] = [];

  draw(trace: RunTrace, viewport: Viewport, palette: Palette): void {
    this.clear();
    const robot = new Strand(trace.robot, viewport, { width: 2, color: palette.robotLine, alpha: 0.55 });
    const balls = trace.balls.map(
      (trail, ball) => new Strand(trail, viewport, { width: 2.5, color: ballColour(palette, ball) }),
    );
    this.#strands = [robot, ...balls];
    this.layer.addChild(...this.#strands.map((strand) => strand.layer));
  }

  showUntil(timeS: number): void {
    for (const strand of this.#strands) strand.showUntil(timeS);
  }

  clear(): void {
    this.layer.removeChildren();
    for (const strand of this.#strands) strand.destroy();
    this.#strands = [];
  }
}
