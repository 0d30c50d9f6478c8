import { Container, Graphics, GraphicsContext } from "pixi.js";
import { robotOutline } from "../model/outline.ts";
import { ballsOf, type Project } from "../model/project.ts";
import { ballAt, robotAt } from "../trial/playback.ts";
import type { Recording } from "../trial/recording.ts";
import { emptyLayer } from "./layer.ts";
import { ballColour, type Palette } from "./palette.ts";
import type { Viewport } from "./viewport.ts";

interface Ghost {
  readonly robot: Graphics;
  readonly balls: readonly Graphics[];
}

/** Many runs at the same second: faint outlines and balls. All share one shape each, so that 200 runs cost 200 positions. */
export class GhostScene {
  readonly layer = new Container();
  #runs: readonly Recording[] = [];
  #ghosts: readonly Ghost[] = [];
  #shapes: readonly GraphicsContext[] = [];

  setRuns(runs: readonly Recording[]): void {
    this.#runs = runs;
  }

  draw(project: Project, viewport: Viewport, palette: Palette): void {
    emptyLayer(this.layer);
    for (const shape of this.#shapes) shape.destroy();
    this.#shapes = [];
    this.#ghosts = [];
    if (this.#runs.length === 0) return;
    // The more runs, the fainter each: together they stay a cloud that one can see through.
    const alpha = Math.max(0.06, Math.min(0.4, 6 / this.#runs.length));
    const robot = new GraphicsContext();
    robot.poly(robotOutline(project.robot).footprint.map((point) => viewport.local(point)));
    robot.stroke({ width: 1, color: palette.robotLine, alpha: Math.min(1, 1.6 * alpha) });
    const balls = ballsOf(project).map((kind, ball) => {
      const shape = new GraphicsContext();
      shape.circle(0, 0, Math.max(2, viewport.px(kind.diameterMm / 2)));
      return shape.fill({ color: ballColour(palette, ball), alpha: Math.min(1, 2 * alpha) });
    });
    this.#shapes = [robot, ...balls];
    this.#ghosts = this.#runs.map(() => ({
      robot: new Graphics(robot),
      balls: balls.map((shape) => new Graphics(shape)),
    }));
    for (const ghost of this.#ghosts) this.layer.addChild(...ghost.balls, ghost.robot);
  }

  /** @param timeS held inside each run's duration */
  place(timeS: number, viewport: Viewport): void {
    for (const [index, ghost] of this.#ghosts.entries()) {
      const run = this.#runs[index];
      if (!run) continue;
      const at = Math.min(Math.max(0, timeS), run.durationS);
      const pose = robotAt(run, at);
      ghost.robot.position.set(viewport.x(pose.xMm), viewport.y(pose.yMm));
      ghost.robot.rotation = viewport.rotation(pose.headingRad);
      for (const [ball, drawn] of ghost.balls.entries()) {
        const place = ballAt(run, ball, at);
        drawn.position.set(viewport.x(place.xMm), viewport.y(place.yMm));
      }
    }
  }
}
