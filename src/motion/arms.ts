import { endAngleRad, hingedArms, withArmsAt } from "../model/arms.ts";
import type { HingedShape, Robot } from "../model/robot.ts";
import type { Move } from "../model/routine.ts";
import type { PointMm, Zone } from "../model/zone.ts";
import { cos, sin } from "../num/elementary.ts";
import type { Box } from "./obstacles.ts";
import { PathTracer } from "./path.kernel.ts";
import type { Pose } from "./pose.ts";
import { type ConvexOutline, convexOutline, type Surroundings, surroundingsOf } from "./surroundings.ts";
import { TOUCH_MM } from "./touch.kernel.ts";

/** Halvings of the swing in search of where the hull comes clear of a post: down to a hundred thousandth of it. */
const HALVINGS = 17;

/** How far an "arms" move brings the arms. */
export interface Swing {
  readonly toRad: number;
  /** A wall or a keep-out stopped them before they got there. */
  readonly blocked: boolean;
}

/**
 * Arms that swing on a robot that stands: where walls and keep-outs stop them, and what can stop the robot while they are
 * at an angle. Each arm turns about its hinge as a robot turns on the spot, so the same search for the first touch serves.
 * One motor moves both: what stops one stops the other.
 */
export class ArmSwing {
  readonly arms: HingedShape;
  private readonly zone: Zone;
  private readonly robot: Robot;
  private readonly left: PathTracer;
  private readonly right: PathTracer;
  private readonly known = new Map<number, Surroundings>();

  constructor(zone: Zone, robot: Robot, arms: HingedShape) {
    this.zone = zone;
    this.robot = robot;
    this.arms = arms;
    const around = surroundingsOf(zone, robot);
    const tracer = (side: 1 | -1) => {
      const whole = convexOutline(armOutline(arms, side));
      const planes = around.planes.filter((plane) => plane.stops !== "ground");
      return new PathTracer({ whole, ground: whole, planes, boxes: around.boxes }, robot.drive);
    };
    this.left = tracer(1);
    this.right = tracer(-1);
  }

  /** What can stop the robot while its arms are at the angle. */
  surroundings(angleRad: number): Surroundings {
    const known = this.known.get(angleRad);
    if (known !== undefined) return known;
    const made = surroundingsOf(this.zone, withArmsAt(this.robot, angleRad));
    // Ends of the swing come again and again; angles in between, where something stopped the arms, hardly ever.
    if (this.isEnd(angleRad)) this.known.set(angleRad, made);
    return made;
  }

  /** Where the arms, now at `fromRad`, are once the move is over. */
  after(move: Extract<Move, { readonly kind: "arms" }>, pose: Pose, fromRad: number): Swing {
    const wanted = endAngleRad(this.arms, move.to);
    const way = Math.min(Math.abs(wanted - fromRad), move.durationS * this.arms.swingRateRadPerS);
    if (way === 0) return { toRad: fromRad, blocked: false };
    const sign = wanted < fromRad ? -1 : 1;
    const free = Math.min(
      this.freeAngle(this.left, 1, pose, fromRad, sign, way),
      this.freeAngle(this.right, -1, pose, fromRad, sign, way),
    );
    const toRad = free === Math.abs(wanted - fromRad) ? wanted : fromRad + sign * free;
    if (this.hullIsClear(pose, toRad)) return { toRad, blocked: free < way };
    return { toRad: this.lastClear(pose, fromRad, toRad), blocked: true };
  }

  /**
   * A post may stand between the arms, but not in their hull, which is what stops the robot. (Straight walls that touch no arm
   * do not touch the hull.)
   */
  private hullIsClear(pose: Pose, angleRad: number): boolean {
    const { whole, boxes } = this.surroundings(angleRad);
    return boxes.every((box) => !overlapsBox(whole, pose, box));
  }

  private lastClear(pose: Pose, fromRad: number, toRad: number): number {
    let clear = fromRad;
    let blocked = toRad;
    for (let step = 0; step < HALVINGS; step++) {
      const middle = (clear + blocked) / 2;
      if (this.hullIsClear(pose, middle)) clear = middle;
      else blocked = middle;
    }
    return clear;
  }

  private isEnd(angleRad: number): boolean {
    return angleRad === this.arms.openAngleRad || angleRad === this.arms.closedAngleRad;
  }

  private freeAngle(
    tracer: PathTracer,
    side: 1 | -1,
    { xMm, yMm, headingRad }: Pose,
    fromRad: number,
    sign: number,
    wayRad: number,
  ): number {
    const { bodyLengthMm, axleFromRearMm, hingeAsideMm } = this.arms;
    const front = bodyLengthMm - axleFromRearMm;
    const aside = side * hingeAsideMm;
    const [c, s] = [cos(headingRad), sin(headingRad)];
    const x = xMm + c * front - s * aside;
    const y = yMm + s * front + c * aside;
    const armRad = headingRad + side * fromRad;
    return tracer.freeLength(x, y, cos(armRad), sin(armRad), 0, side * sign, wayRad);
  }
}

export function armSwingOf(zone: Zone, robot: Robot): ArmSwing | null {
  const arms = hingedArms(robot);
  return arms === null ? null : new ArmSwing(zone, robot, arms);
}

/** An arm in the frame of its hinge, x along its outer side; `side` 1: the left one. */
function armOutline({ armLengthMm, armThicknessMm }: HingedShape, side: 1 | -1): readonly PointMm[] {
  const inner = -side * armThicknessMm;
  return [
    { xMm: 0, yMm: 0 },
    { xMm: 0, yMm: inner },
    { xMm: armLengthMm, yMm: inner },
    { xMm: armLengthMm, yMm: 0 },
  ];
}

/** A convex outline at a pose and a rectangle share more than their boundary (by what counts as touching): no edge direction of either keeps them apart. */
function overlapsBox(outline: ConvexOutline, { xMm, yMm, headingRad }: Pose, box: Box): boolean {
  const [c, s] = [cos(headingRad), sin(headingRad)];
  const { count, x, y, normalX, normalY } = outline;
  let [minX, minY, maxX, maxY] = [1, 1, -1, -1].map((sign) => sign * Number.POSITIVE_INFINITY) as Extent;
  for (let i = 0; i < count; i++) {
    const px = xMm + c * (x[i] ?? 0) - s * (y[i] ?? 0);
    const py = yMm + s * (x[i] ?? 0) + c * (y[i] ?? 0);
    [minX, minY, maxX, maxY] = [
      Math.min(minX, px),
      Math.min(minY, py),
      Math.max(maxX, px),
      Math.max(maxY, py),
    ];
  }
  if (minX >= box.maxX - TOUCH_MM || maxX <= box.minX + TOUCH_MM) return false;
  if (minY >= box.maxY - TOUCH_MM || maxY <= box.minY + TOUCH_MM) return false;
  for (let i = 0; i < count; i++) {
    const nx = c * (normalX[i] ?? 0) - s * (normalY[i] ?? 0);
    const ny = s * (normalX[i] ?? 0) + c * (normalY[i] ?? 0);
    const face = nx * xMm + ny * yMm + (normalX[i] ?? 0) * (x[i] ?? 0) + (normalY[i] ?? 0) * (y[i] ?? 0);
    if (nx * (nx > 0 ? box.minX : box.maxX) + ny * (ny > 0 ? box.minY : box.maxY) >= face - TOUCH_MM)
      return false;
  }
  return true;
}

type Extent = [number, number, number, number];
