import { Container, Graphics } from "pixi.js";
import { withArmsAt } from "../model/arms.ts";
import { robotOutline } from "../model/outline.ts";
import type { Robot } from "../model/robot.ts";
import type { PointMm } from "../model/zone.ts";
import type { Pose } from "../motion/pose.ts";
import { dashes } from "./dashes.ts";
import { emptyLayer } from "./layer.ts";
import type { Palette } from "./palette.ts";
import type { Viewport } from "./viewport.ts";

/** Narrowest track that can be seen, mm: the file gives the gauge, not the width of a track. */
const TRACK_WIDTH_SHARE = 0.16;

/** The robot from above: footprint, tracks, ground outline where it differs, the pusher as a thick edge, an arrow ahead. */
export class RobotScene {
  readonly layer = new Container();
  #armsRad: number | null = null;

  /** @param armsRad angle of hinged arms; null: open, or none to swing */
  draw(robot: Robot, viewport: Viewport, palette: Palette, armsRad: number | null = null): void {
    emptyLayer(this.layer);
    this.#armsRad = armsRad;
    const outline = robotOutline(armsRad === null ? robot : withArmsAt(robot, armsRad));
    const footprint = outline.footprint.map((point) => viewport.local(point));
    const drawn = new Graphics();
    drawn.poly(footprint).fill({ color: palette.robot, alpha: 0.9 });
    for (const side of [1, -1]) drawn.poly(trackRect(robot, side).map((point) => viewport.local(point)));
    drawn.fill({ color: palette.track, alpha: 0.75 });
    if (robot.ground.kind === "polygon") {
      const ring = outline.ground.map((point) => viewport.local(point));
      for (const { from, to } of dashes([...ring, ...ring.slice(0, 1)], 4, 3)) {
        drawn.moveTo(from.x, from.y).lineTo(to.x, to.y);
      }
      drawn.stroke({ width: 1, color: palette.robotLine });
    }
    drawn.poly(footprint).stroke({ width: 1.5, color: palette.robotLine, join: "round" });
    for (const edge of outline.pusherEdges) {
      const from = footprint[edge];
      const to = footprint[(edge + 1) % footprint.length];
      if (from && to) drawn.moveTo(from.x, from.y).lineTo(to.x, to.y);
    }
    drawn.stroke({ width: 4, color: palette.pusher, cap: "round" });
    headingArrow(drawn, robot, viewport, palette);
    this.layer.addChild(drawn);
  }

  /** Draws the robot anew where its arms have swung. */
  swing(robot: Robot, viewport: Viewport, palette: Palette, armsRad: number | null): void {
    if (armsRad !== this.#armsRad) this.draw(robot, viewport, palette, armsRad);
  }

  place(pose: Pose, viewport: Viewport): void {
    this.layer.position.set(viewport.x(pose.xMm), viewport.y(pose.yMm));
    this.layer.rotation = viewport.rotation(pose.headingRad);
  }
}

/** A track's place under the body; for two wheels, a wheel. */
function trackRect(robot: Robot, side: number): readonly PointMm[] {
  const { gaugeMm, trackContactMm, wheelDiameterMm } = robot.drive;
  const half = Math.max(trackContactMm, wheelDiameterMm) / 2;
  const middle = (side * gaugeMm) / 2;
  const halfWidth = (gaugeMm * TRACK_WIDTH_SHARE) / 2;
  return [
    { xMm: -half, yMm: middle - halfWidth },
    { xMm: half, yMm: middle - halfWidth },
    { xMm: half, yMm: middle + halfWidth },
    { xMm: -half, yMm: middle + halfWidth },
  ];
}

function headingArrow(drawn: Graphics, robot: Robot, viewport: Viewport, palette: Palette): void {
  const size = robot.drive.gaugeMm * 0.22;
  const tip = viewport.local({ xMm: size * 1.3, yMm: 0 });
  const left = viewport.local({ xMm: -size * 0.6, yMm: size });
  const notch = viewport.local({ xMm: -size * 0.15, yMm: 0 });
  const right = viewport.local({ xMm: -size * 0.6, yMm: -size });
  drawn.poly([tip, left, notch, right]).fill(palette.robotLine);
}
