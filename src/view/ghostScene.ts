import { Container, Graphics, GraphicsContext } from "pixi.js";
import { hingedArms, withArmsAt } from "../model/arms.ts";
import { robotOutline } from "../model/outline.ts";
import { ballsOf, type Project } from "../model/project.ts";
import type { Robot } from "../model/robot.ts";
import { armsAt, ballAt, robotAt } from "../trial/playback.ts";
import type { Recording } from "../trial/recording.ts";
import { emptyLayer, retire } from "./layer.ts";
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
  /** Outlines of a robot whose arms swing: open, and closed, shown below an angle between the two. */
  #closed: { open: GraphicsContext; shape: GraphicsContext; belowRad: number } | null = null;

  setRuns(runs: readonly Recording[]): void {
    this.#runs = runs;
  }

  draw(project: Project, viewport: Viewport, palette: Palette): void {
    emptyLayer(this.layer);
    retire(this.#shapes);
    this.#shapes = [];
    this.#ghosts = [];
    if (this.#runs.length === 0) return;
    // The more runs, the fainter each: together they stay a cloud that one can see through.
    const alpha = Math.max(0.06, Math.min(0.4, 6 / this.#runs.length));
    const outlineOf = (robot: Robot) => {
      const shape = new GraphicsContext();
      shape.poly(robotOutline(robot).footprint.map((point) => viewport.local(point)));
      return shape.stroke({ width: 1, color: palette.robotLine, alpha: Math.min(1, 1.6 * alpha) });
    };
    const arms = hingedArms(project.robot);
    const robot = outlineOf(project.robot);
    this.#closed = null;
    if (arms !== null) {
      const shape = outlineOf(withArmsAt(project.robot, arms.closedAngleRad));
      this.#closed = { open: robot, shape, belowRad: (arms.openAngleRad + arms.closedAngleRad) / 2 };
    }
    const balls = ballsOf(project).map((kind, ball) => {
      const shape = new GraphicsContext();
      shape.circle(0, 0, Math.max(2, viewport.px(kind.diameterMm / 2)));
      return shape.fill({ color: ballColour(palette, ball), alpha: Math.min(1, 2 * alpha) });
    });
    this.#shapes = [robot, ...(this.#closed === null ? [] : [this.#closed.shape]), ...balls];
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
      const armsRad = this.#closed === null ? null : armsAt(run, at);
      if (this.#closed !== null && armsRad !== null) {
        const { open, shape, belowRad } = this.#closed;
        ghost.robot.context = armsRad < belowRad ? shape : open;
      }
      ghost.robot.position.set(viewport.x(pose.xMm), viewport.y(pose.yMm));
      ghost.robot.rotation = viewport.rotation(pose.headingRad);
      for (const [ball, drawn] of ghost.balls.entries()) {
        const place = ballAt(run, ball, at);
        drawn.position.set(viewport.x(place.xMm), viewport.y(place.yMm));
      }
    }
  }
}
