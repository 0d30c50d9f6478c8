import type { Project } from "../../src/model/project.ts";
import type { Robot } from "../../src/model/robot.ts";
import type { PointMm } from "../../src/model/zone.ts";
import { type SceneBall, type SceneOptions, sceneProject } from "./scene.ts";

/** Places the robot anywhere in a scene: worlds in which a routine starts from a given pose. */

export interface Start {
  readonly x: number;
  readonly y: number;
  readonly headingRad: number;
}

/** A scene whose robot starts at `start`; the doorway is in the lower wall, out of the way. */
export function startingAt(start: Start, options: SceneOptions): Project {
  const doorway = { wall: "bottom", centreMm: 130, widthMm: 200, ...options.zone?.doorway } as const;
  const robot: Partial<Robot> = {
    ...options.robot,
    entry: {
      alongMm: start.x - doorway.centreMm,
      insetMm: start.y,
      headingRad: start.headingRad - Math.PI / 2,
    },
  };
  return sceneProject({ ...options, zone: { ...options.zone, doorway }, robot });
}

/** The pose from which a robot that drives `wayMm` straight on has `ball` at (aheadMm, leftMm) in its own frame. */
export function startBefore(
  ball: SceneBall,
  headingRad: number,
  aheadMm: number,
  leftMm: number,
  wayMm: number,
): Start {
  const c = Math.cos(headingRad);
  const s = Math.sin(headingRad);
  return {
    x: ball.x - c * (aheadMm + wayMm) + s * leftMm,
    y: ball.y - s * (aheadMm + wayMm) - c * leftMm,
    headingRad,
  };
}

/** A point in the robot's frame. */
export function inRobot(
  pose: { xMm: number; yMm: number; headingRad: number },
  { xMm, yMm }: PointMm,
): PointMm {
  const c = Math.cos(pose.headingRad);
  const s = Math.sin(pose.headingRad);
  const dx = xMm - pose.xMm;
  const dy = yMm - pose.yMm;
  return { xMm: c * dx + s * dy, yMm: -s * dx + c * dy };
}
