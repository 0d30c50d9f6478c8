import { cagesBalls } from "../../model/arms.ts";
import { robotOutline } from "../../model/outline.ts";
import { ballsOf, type Project } from "../../model/project.ts";
import type { Move, Routine } from "../../model/routine.ts";
import type { PointMm } from "../../model/zone.ts";
import { entryPose } from "../../motion/entry.ts";
import type { Pose } from "../../motion/pose.ts";
import { wedgeStopsRobot } from "../../motion/surroundings.ts";
import { atan2, cos, sin } from "../../num/elementary.ts";
import { patternTexts } from "../../texts/english/pattern.ts";
import { RoutineBuilder } from "../builder.ts";
import { type Frame, movesFromFrame, targetFrame } from "../frame.ts";
import { type Scene, sceneOf } from "../scene.ts";
import { beforeWedgeMm } from "../target.ts";
import { BallGuard, type LyingBall } from "./ballGuard.ts";
import { profileOf } from "./profile.ts";
import { type Seat, seatsOf } from "./seats.ts";
import { SequenceSearch } from "./sequenceSearch.ts";
import type { TripMaker } from "./tripMaker.ts";

/** A ball whose place is known; `index` is its number in the project's list of balls. */
export interface KnownBall extends PointMm {
  readonly index: number;
}

export interface SequenceOptions {
  /** Where the robot stands; left out: at its entry pose. */
  readonly from?: Pose;
  /** Balls count only if they are home by then, s; left out: the project's time limit. */
  readonly timeLeftS?: number;
  /**
   * Tells which balls (by number) are home after some moves: what loses one of its balls is not taken. Left out: the plan's own
   * rules decide alone.
   */
  readonly homeAfter?: (moves: readonly Move[]) => readonly boolean[];
}

/** One trip of a push sequence: which balls, met where, and when they are home. */
export interface SequenceTrip {
  readonly balls: readonly number[];
  readonly startS: number;
  readonly homeS: number;
  /** The trip's share of the moves: from … to − 1. */
  readonly fromMove: number;
  readonly toMove: number;
}

export interface PushSequence {
  readonly moves: readonly Move[];
  readonly trips: readonly SequenceTrip[];
  readonly timeS: number;
  /** Numbers of the balls for which there is no way, or no time. */
  readonly leftOut: readonly number[];
  /** Whether no better sequence of the same building blocks exists; false where the search was cut short. */
  readonly exact: boolean;
}

/** Room kept to balls that are not to be touched, mm. */
const BALL_GAP_MM = 8;
/** A point this far ahead carries a heading through the frame's reflections, mm. */
const POINTER_MM = 1000;

/**
 * The quickest way to bring known balls home: order, groups carried together, sides from which they are met, ways between.
 * A pure function of its arguments; it runs no trial but those of `homeAfter`, so that it may be called from inside one.
 */
export function planPushSequence(
  project: Project,
  balls: readonly KnownBall[],
  options: SequenceOptions = {},
): PushSequence {
  const kinds = ballsOf(project);
  const from = options.from ?? entryPose(project.zone, project.robot);
  const pointer = {
    xMm: from.xMm + POINTER_MM * cos(from.headingRad),
    yMm: from.yMm + POINTER_MM * sin(from.headingRad),
  };
  // Points of a fixed layout are reflected with everything else.
  const positions = [from, pointer, ...balls].map(({ xMm, yMm }) => ({ xMm, yMm }));
  const frame = targetFrame(
    { ...project, rules: { ...project.rules, layout: { kind: "fixed", positions } } },
    true,
  );
  const { layout } = frame.project.rules;
  const [start, ahead, ...places] = layout.kind === "fixed" ? layout.positions : [];
  if (start === undefined || ahead === undefined) throw new Error("the frame lost its points");
  const lying: readonly LyingBall[] = places.flatMap((place, i) => {
    const index = balls[i]?.index ?? i;
    return [{ ...place, index, radiusMm: (kinds[index]?.diameterMm ?? 0) / 2 }];
  });
  const pose = { ...start, headingRad: atan2(ahead.yMm - start.yMm, ahead.xMm - start.xMm) };
  // Without the engine's verdict more caged balls would be lost than others: see NOTES.md.
  const cages = options.homeAfter !== undefined && cagesBalls(project.robot, kinds);
  const maker = { ...makerFor(frame, lying), cages };
  const limitS = options.timeLeftS ?? project.rules.timeLimitS;
  const { homeAfter } = options;
  const isHome = homeAfter && ((moves: readonly Move[]) => homeAfter(movesFromFrame(frame, moves)));
  const found = new SequenceSearch(maker, lying, limitS, isHome).run(pose);
  let at = 0;
  const trips = found.legs.map(({ trip, approach, startS, homeS }) => {
    const fromMove = at;
    at += approach.moves.length + trip.moves.length;
    return { balls: trip.balls, startS, homeS, fromMove, toMove: at };
  });
  const fetched = trips.flatMap((trip) => trip.balls);
  return {
    moves: movesFromFrame(frame, found.moves),
    trips,
    timeS: found.timeS,
    leftOut: balls.map(({ index }) => index).filter((index) => !fetched.includes(index)),
    exact: found.exact,
  };
}

/** What trips in a frame are made with. */
export function makerFor(frame: Frame, balls: readonly LyingBall[]): TripMaker {
  const scene = sceneOf(frame);
  return {
    builder: new RoutineBuilder(scene, scene.topSpeedMmPerS),
    guard: new BallGuard(frame.project.robot, BALL_GAP_MM),
    seatMm: scene.carry.seatMm,
    catchMm: catchHalfWidth(frame.project, balls),
    cages: false,
    stands: standsIn(scene),
  };
}

/** How far to the side of its line a robot takes in the largest of some balls, mm: its narrower side, a bit inside. */
function catchHalfWidth({ robot }: Project, balls: readonly LyingBall[]): number {
  const radius = balls.reduce((most, ball) => Math.max(most, ball.radiusMm), 0);
  const { footprint } = robotOutline(robot);
  const seats = seatsOf(profileOf(footprint, Math.max(radius, 1)));
  const deepest = seats.reduce<Seat | null>(
    (best, seat) => (best === null || seat.depthMm > best.depthMm ? seat : best),
    null,
  );
  if (deepest === null) return 0;
  return Math.max(0, Math.min(deepest.catchLeftMm, -deepest.catchRightMm) - CATCH_MARGIN_MM);
}

/** Kept from the ends of the catching width, mm. */
const CATCH_MARGIN_MM = 8;

/** Tells whether the robot, grown by the clearance, is inside the walls and before the wedge at a pose. */
function standsIn(scene: Scene): (pose: Pose) => boolean {
  const { zone, robot } = scene.grown;
  const outline = robotOutline(robot);
  const stops = wedgeStopsRobot(zone, scene.project.robot);
  return ({ xMm, yMm, headingRad }) => {
    const c = cos(headingRad);
    const s = sin(headingRad);
    const place = (p: PointMm): PointMm => ({
      xMm: xMm + c * p.xMm - s * p.yMm,
      yMm: yMm + s * p.xMm + c * p.yMm,
    });
    const inside = outline.footprint.map(place).every((p) => {
      return p.xMm >= 0 && p.yMm >= 0 && p.xMm <= zone.widthMm && p.yMm <= zone.heightMm;
    });
    if (!inside) return false;
    if (!stops) return true;
    return outline.ground.map(place).every((p) => beforeWedgeMm(scene.target, p) >= 0);
  };
}

/** A sequence as a routine, for trials and step sheets. */
export function sequenceRoutine(sequence: PushSequence): Routine {
  const count = sequence.trips.reduce((sum, trip) => sum + trip.balls.length, 0);
  return {
    id: "known-balls",
    pattern: patternTexts.allKnown,
    label: patternTexts.trips(count, sequence.trips.length),
    params: { balls: count, trips: sequence.trips.length },
    moves: sequence.moves,
  };
}
