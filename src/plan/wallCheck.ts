import type { Project } from "../model/project.ts";
import { sensorOf } from "../model/sensor.ts";
import { PI } from "../model/units.ts";
import type { Pose } from "../motion/pose.ts";
import { besideMoves } from "./beside.ts";
import { RoutineBuilder } from "./builder.ts";
import type { CornerCheck } from "./cornerCheck.ts";
import { type Frame, movesFromFrame, poseInFrame, targetFrame } from "./frame.ts";
import { behindMm, besideMm, lengthMm, onSide, roomyMm, type Side } from "./place.ts";
import { type Scene, sceneOf } from "./scene.ts";
import { arriveAt, leaveWedge } from "./transfer.ts";

/** How far over the edge that the wedge would have beside the wall the floor sensor is brought, as shares of the way to the corner. */
const OVER_SHARES = [0.5, 0.35, 0.2];
/** Room beside the wall on top of the berth, mm: a heading that is off by 1° comes this much nearer in two metres. */
const EXTRA_MM = 35;
/** With a bumper the wall itself must be this much farther than the wedge, mm. */
const SURELY_MM = 40;
/** Walls farther behind than this are not backed into, in tip radii. */
const BEHIND_REACH = 2.5;
/** Starts of the way along the wall that are tried, mm nearer to the corner or farther off than the robot is. */
const SHIFTS_MM = [0, 150, -150, 300];

/**
 * The way along a wall to a corner, and how to tell there whether it holds the wedge: by the floor below, or because a bumper meets
 * something where there is no wall yet. The robot squares up on the wall behind it first where one is near, keeps beside the wall,
 * and has what it meets on the way in its pusher: where the wedge is, that is pushed onto it.
 *
 * @param project with the wedge in the corner that is looked at
 * @returns null where there is no room, or nothing to tell it by
 */
export function wallCheck(project: Project, from: Pose): CornerCheck | null {
  const frame = targetFrame(project, true);
  const scene = sceneOf(frame);
  const sides: readonly Side[] = ["x", "y"];
  return sides.reduce<CornerCheck | null>((best, side) => {
    const found = alongSide(frame, scene, side, poseInFrame(frame, project.zone, from));
    return found !== null && (best === null || found.timeS < best.timeS) ? found : best;
  }, null);
}

function alongSide(frame: Frame, scene: Scene, side: Side, from: Pose): CornerCheck | null {
  const builder = new RoutineBuilder(scene, scene.topSpeedMmPerS, from);
  if (!ontoLane(builder, side, from)) return null;
  const ask = readAt(builder, side);
  if (ask === null) return null;
  const { timeS } = builder;
  const there = movesFromFrame(frame, besideMoves(scene.project, [...builder.moves], from));
  const since = (move: number) => movesFromFrame(frame, builder.moves.slice(move));
  const at = builder.mark();
  const room = leftMm(builder.pose, side);
  builder.drive(Math.min(0, room - roomyMm(scene)));
  const onward = since(at.moveCount);
  builder.rewind(at);
  if (ask.kind === "overWedge") builder.toWall(1);
  leaveWedge(builder);
  return { there, ask, onFound: since(at.moveCount), onward, timeS };
}

/** Beside the wall, heading for the corner, squared up on what is right behind. */
function ontoLane(builder: RoutineBuilder, side: Side, from: Pose): boolean {
  const { scene } = builder;
  const aside = besideMm(scene, side) + EXTRA_MM;
  const headingRad = side === "x" ? PI : -PI / 2;
  const along = side === "x" ? from.xMm : from.yMm;
  const most = lengthMm(scene, side) - behindMm(scene);
  return SHIFTS_MM.some((shift) => {
    const start = onSide(side, Math.min(most, along + shift), aside);
    return builder.attempt(() => {
      if (!arriveAt(builder, { ...start, headingRad })) return false;
      builder.squareUp(BEHIND_REACH * scene.reach.tipRadiusMm);
      return true;
    });
  });
}

/** Drives to where the answer can be had; null where there is none. */
function readAt(builder: RoutineBuilder, side: Side): CornerCheck["ask"] | null {
  const { scene } = builder;
  const { sensors } = scene.project.robot;
  const { legXMm, legYMm } = scene.target;
  const [leg, otherLeg] = side === "x" ? [legXMm, legYMm] : [legYMm, legXMm];
  const aside = side === "x" ? builder.pose.yMm : builder.pose.xMm;
  const edgeMm = leg * (1 - aside / otherLeg);
  const floor = sensorOf(sensors, "floor");
  if (floor !== undefined && edgeMm > 0) {
    const left = leftMm(builder.pose, side) - floor.alongMm;
    if (OVER_SHARES.some((share) => builder.drive(left - (1 - share) * edgeMm))) return { kind: "overWedge" };
  }
  const bumps = sensors.some((sensor) => sensor.kind === "bump" && sensor.side === "front");
  if (!bumps || !scene.wedgeStops) return null;
  const beforeMm = leftMm(builder.pose, side) - scene.reach.frontMm;
  const { overrunMm } = scene.project.settings;
  if (builder.freeWayMm(1) + overrunMm + SURELY_MM > beforeMm || !builder.toWall(1)) return null;
  return { kind: "bumped", side: "front" };
}

/** From the axle to the wall that the corner is at the end of. */
function leftMm(pose: Pose, side: Side): number {
  return side === "x" ? pose.xMm : pose.yMm;
}
