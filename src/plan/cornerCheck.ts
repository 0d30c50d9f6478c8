import type { Condition } from "../model/program.ts";
import type { Project } from "../model/project.ts";
import type { Move } from "../model/routine.ts";
import { sensorOf } from "../model/sensor.ts";
import type { Pose } from "../motion/pose.ts";
import { RoutineBuilder } from "./builder.ts";
import { movesFromFrame, poseInFrame, targetFrame } from "./frame.ts";
import { beforeWedge } from "./place.ts";
import { sceneOf } from "./scene.ts";
import { arriveAt } from "./transfer.ts";

/** How far over the edge that the wedge would have the floor sensor is brought, as shares of its depth, the first that has room: what places may be off on either side. */
const OVER_SHARES = [0.4, 0.3, 0.2, 0.1];

export interface CornerCheck {
  /** To where the floor sensor reads. */
  readonly there: readonly Move[];
  /** What tells that the wedge is there. */
  readonly ask: Condition;
  /** If it is, and if it is not: then the robot can turn. */
  readonly onFound: readonly Move[];
  readonly onward: readonly Move[];
  /** Of the way there. */
  readonly timeS: number;
}

/** The way to look whether the wedge is where the project has it, from a pose; null where there is no room or no sensor. */
export function cornerCheck(project: Project, from: Pose): CornerCheck | null {
  const floor = sensorOf(project.robot.sensors, "floor");
  if (floor === undefined) return null;
  const frame = targetFrame(project, true);
  const scene = sceneOf(frame);
  const { legXMm: a, legYMm: b } = scene.target;
  const depth = (a * b) / Math.sqrt(a * a + b * b);
  const builder = new RoutineBuilder(scene, scene.topSpeedMmPerS, poseInFrame(frame, project.zone, from));
  const { headingRad } = scene.target;
  const clearMm = scene.reach.tipRadiusMm + scene.ballDiameterMm;
  const before = beforeWedge(scene, clearMm);
  if (!arriveAt(builder, { ...before, headingRad })) return null;
  const ways = OVER_SHARES.map((share) => clearMm - floor.alongMm + share * depth);
  const inMm = ways.find((way) => builder.drive(way));
  if (inMm === undefined) return null;
  const there = movesFromFrame(frame, [...builder.moves]);
  const back: readonly Move[] = [{ kind: "drive", distanceMm: -inMm, speedMmPerS: builder.speedMmPerS }];
  return { there, ask: { kind: "overWedge" }, onFound: back, onward: back, timeS: builder.timeS };
}
