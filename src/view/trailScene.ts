import { Container, Graphics } from "pixi.js";
import { ballColour, type Palette } from "./palette.ts";
import { pointsUntil, type RunTrace, type Trail } from "./runTrace.ts";
import type { Viewport } from "./viewport.ts";

/** The ways really driven and rolled so far in a run: the robot's solid, each ball's in its own colour. */
export class TrailScene {
  readonly layer = new Container();
  readonly #lines = new Graphics();

  constructor() {
    this.layer.addChild(this.#lines);
  }

  draw(trace: RunTrace, timeS: number, viewport: Viewport, palette: Palette): void {
    const lines = this.#lines.clear();
    if (strand(lines, trace.robot, timeS, viewport)) {
      lines.stroke({ width: 2, color: palette.robotLine, alpha: 0.55, join: "round" });
    }
    for (const [ball, trail] of trace.balls.entries()) {
      if (strand(lines, trail, timeS, viewport)) {
        lines.stroke({ width: 2.5, color: ballColour(palette, ball), alpha: 0.85, join: "round" });
      }
    }
  }

  clear(): void {
    this.#lines.clear();
  }
}

function strand(lines: Graphics, trail: Trail, timeS: number, viewport: Viewport): boolean {
  const count = pointsUntil(trail, timeS);
  for (let i = 0; i < count; i++) {
    const x = viewport.x(trail.xMm[i] ?? 0);
    const y = viewport.y(trail.yMm[i] ?? 0);
    if (i === 0) lines.moveTo(x, y);
    else lines.lineTo(x, y);
  }
  return count > 1;
}
