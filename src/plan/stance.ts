import { convexHull } from "../geometry/polygon.ts";
import { hingedArms, withArmsAt } from "../model/arms.ts";
import { robotOutline } from "../model/outline.ts";
import type { PointMm } from "../model/zone.ts";
import type { Pose } from "../motion/pose.ts";
import { cos, sin } from "../num/elementary.ts";
import type { Scene } from "./scene.ts";

/** Two corners within this of one wall: the robot lies flat on it, mm. */
const FLAT_MM = 0.5;

/** How the robot's outline stands to the four walls of a scene. */
export class Stance {
  private readonly scene: Scene;
  private readonly hull: readonly PointMm[];

  constructor(scene: Scene) {
    this.scene = scene;
    const { robot } = scene.project;
    const { footprint, ground } = robotOutline(robot);
    const arms = hingedArms(robot);
    const closed = arms === null ? [] : robotOutline(withArmsAt(robot, arms.closedAngleRad)).footprint;
    this.hull = convexHull([...footprint, ...ground, ...closed]);
  }

  /** How far the outline sticks out of the rectangle, mm: only in the doorway can it. */
  outsideMm(pose: Pose): number {
    const { xMm, yMm } = pose;
    const { widthMm, heightMm, reach } = this.scene;
    const inner = Math.min(xMm, yMm, widthMm - xMm, heightMm - yMm);
    if (inner > reach.tipRadiusMm) return 0;
    return this.corners(pose).reduce(
      (most, p) => Math.max(most, -p.xMm, -p.yMm, p.xMm - widthMm, p.yMm - heightMm),
      0,
    );
  }

  /** Two corners of the outline at one wall. */
  liesFlat(pose: Pose): boolean {
    const { widthMm, heightMm } = this.scene;
    const corners = this.corners(pose);
    const at = (gap: (p: PointMm) => number) => corners.filter((p) => gap(p) < FLAT_MM).length >= 2;
    return at((p) => p.xMm) || at((p) => p.yMm) || at((p) => widthMm - p.xMm) || at((p) => heightMm - p.yMm);
  }

  private corners({ xMm, yMm, headingRad }: Pose): readonly PointMm[] {
    const c = cos(headingRad);
    const s = sin(headingRad);
    return this.hull.map((p) => ({
      xMm: xMm + c * p.xMm - s * p.yMm,
      yMm: yMm + s * p.xMm + c * p.yMm,
    }));
  }
}
