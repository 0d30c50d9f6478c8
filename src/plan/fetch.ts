import { distanceToPolygon } from "../geometry/polygon.ts";
import { robotOutline } from "../model/outline.ts";
import { ballsOf, type Project } from "../model/project.ts";
import type { Move } from "../model/routine.ts";
import { PI, RAD_PER_DEG } from "../model/units.ts";
import type { PointMm } from "../model/zone.ts";
import type { Pose } from "../motion/pose.ts";
import { Walker } from "../motion/walker.ts";
import { atan2, cos, sin, wrapAngle } from "../num/elementary.ts";
import { RoutineBuilder } from "./builder.ts";
import { TripFetcher } from "./fetchTrip.ts";
import { type Frame, movesFromFrame, poseInFrame, targetFrame } from "./frame.ts";
import { beforeWedge, curveMm, turnInsMm } from "./place.ts";
import { followAndRetreat, type PushRun } from "./pushRun.ts";
import type { Waypoint } from "./rounding.ts";
import { type Scene, sceneOf } from "./scene.ts";
import { Stance } from "./stance.ts";
import { beforeWedgeMm } from "./target.ts";
import { arriveAt, reachPoint } from "./transfer.ts";

/** The way to a ball and home with it. */
export interface Fetch {
  readonly moves: readonly Move[];
  readonly durationS: number;
  /** From the end of this move on the ball is in the pusher, if it was where it was taken to be. */
  readonly heldFrom: number;
  /** The move at whose end the ball is on the wedge. */
  readonly homeAt: number;
  /** Other noted balls that are touched on the way to it. */
  readonly knocks: number;
}

/** Clear way before the ball is met, mm: what believed place and noted place may be off together. */
const RUN_UP_MM = 40;
/** Radius of curves with a ball in the pusher, in tip radii. */
const CURVE = 0.6;
/** Driven straight on once the ball has reached the back of the pusher, mm. */
const SEATED_MM = 30;
/** Half of the sharpest turn for which a curve is laid out, rad; sharper ones have no room anyway. */
const WIDEST_HALF_RAD = 60 * RAD_PER_DEG;
/** More than this is not turned with a ball, rad. */
const MOST_TURN_RAD = 200 * RAD_PER_DEG;
/** Angles off the straight way home at which a ball is taken, and headings along walls (in the frame). */
const ASIDE_DEG = [0, 25, -25, 50, -50, 80, -80, 115, -115];
const ALONG_WALLS_RAD = [0, PI / 2, PI, -PI / 2];
/** How far beside the pusher's middle a ball is taken, as a share of the room it has there. */
const SIDE_SHARE = 0.8;
/** A ball beside the middle is worth a detour of this angle, rad. */
const SIDE_COST_RAD = 0.3;
/** Square beside the push line the tips come nearer to the walls than on it: taken where the way round would turn more than this, rad. */
const SQUARE_COST_RAD = 0.5;

/** Ways that touch another ball which are made before the best of them is taken. */
const MOST_FOUND = 3;
/** Places along a move at which it is looked whether a ball is touched. */
const LOOKS_PER_MOVE = 12;
/** Gap that counts as touching, mm: what places may be off. */
const KNOCK_MM = 10;

const RUN: PushRun = { ways: [], backUp: false, squareUps: [], end: "wall", retreat: "off" };

/**
 * Plans from where the robot believes it stands: to a ball and home with it, or to a place. In one frame for all corners
 * (frame.ts); nothing is touched on the way but the ball and, at the end, the wedge. Balls that lie on the way are not avoided.
 */
export class FetchPlanner {
  private readonly project: Project;
  private readonly frame: Frame;
  private readonly scene: Scene;
  private readonly builders = new Map<number, RoutineBuilder>();
  private readonly trips: TripFetcher;
  private readonly walker: Walker;
  private readonly stance: Stance;
  private readonly radiusMm: number;
  private readonly footprint: readonly PointMm[];
  /** Where pushes turn onto the push line. */
  private readonly turnIns: readonly PointMm[];

  /** @param project with the wedge where the robot takes it to be */
  constructor(project: Project) {
    this.project = project;
    this.frame = targetFrame(project, true);
    this.scene = sceneOf(this.frame);
    this.walker = new Walker(this.scene.project);
    this.stance = new Stance(this.scene);
    this.footprint = robotOutline(this.scene.project.robot).footprint;
    this.turnIns = turnInsMm(this.scene)
      .filter((_, i) => i % 2 === 0)
      .map((mm) => beforeWedge(this.scene, mm));
    this.radiusMm = Math.max(...ballsOf(project).map((ball) => ball.diameterMm / 2));
    this.trips = new TripFetcher(this.frame, this.scene, this.radiusMm);
  }

  /** As a trip of a push sequence, and where none has room by the first way that has; null where there is none. */
  wayTo(from: Pose, ball: PointMm, others: readonly PointMm[], speedMmPerS: number): Fetch | null {
    const place = this.seen({ ...ball, headingRad: 0 });
    const rest = others.map((other) => this.seen({ ...other, headingRad: 0 }));
    const trip = this.byTrip(from, place, rest, speedMmPerS);
    if (trip !== null) return trip;
    let rough: Fetch | null = null;
    let found = 0;
    for (const one of this.tries(place)) {
      const builder = this.builderAt(from, speedMmPerS);
      if (!this.take(builder, one)) continue;
      const homeAt = this.homeAt(builder.moves, from);
      if (homeAt < 0) continue;
      const heldFrom = this.heldFrom(builder.moves, from, place);
      const moves = movesFromFrame(this.frame, [...builder.moves]);
      const knocks = this.knocks(builder.moves.slice(0, heldFrom), from, rest);
      const way = { moves, durationS: builder.timeS, heldFrom, homeAt, knocks };
      if (knocks === 0) return way;
      if (rough === null || knocks < rough.knocks) rough = way;
      if (++found === MOST_FOUND) break;
    }
    return rough;
  }

  private byTrip(from: Pose, place: PointMm, others: readonly PointMm[], speedMmPerS: number): Fetch | null {
    const found = this.trips.movesTo(this.seen(from), place, others, speedMmPerS);
    const homeAt = found === null ? -1 : this.homeAt(found.moves, from);
    if (found === null || homeAt < 0) return null;
    const moves = movesFromFrame(this.frame, found.moves);
    const heldFrom = this.heldFrom(found.moves, from, place);
    return { moves, durationS: found.durationS, heldFrom, homeAt, knocks: 0 };
  }

  /** The move that brings the back of the pusher farthest over the wedge's edge with a ball in it; −1: none does. */
  private homeAt(moves: readonly Move[], from: Pose): number {
    const { target, carry } = this.scene;
    const walker = this.walkerAt(from);
    let best = -1;
    let least = 0;
    for (const [i, move] of moves.entries()) {
      walker.advance(move);
      const { xMm, yMm, headingRad } = walker.pose;
      const seat = { xMm: xMm + carry.seatMm * cos(headingRad), yMm: yMm + carry.seatMm * sin(headingRad) };
      if (seat.xMm < 0 || seat.yMm < 0 || beforeWedgeMm(target, seat) >= least) continue;
      least = beforeWedgeMm(target, seat);
      best = i;
    }
    return best;
  }

  /** Balls that the robot would touch on its way before it has the one it goes for. */
  private knocks(moves: readonly Move[], from: Pose, others: readonly PointMm[]): number {
    const walker = this.walkerAt(from);
    const hit = new Set<PointMm>();
    for (const move of moves) {
      const start = walker.pose;
      walker.advance(move);
      const end = walker.pose;
      for (let k = 1; k <= LOOKS_PER_MOVE; k++) {
        const pose = between(start, end, k / LOOKS_PER_MOVE);
        for (const ball of others) {
          if (hit.has(ball)) continue;
          if (distanceToPolygon(inRobot(pose, ball), this.footprint) < this.radiusMm + KNOCK_MM)
            hit.add(ball);
        }
      }
    }
    return hit.size;
  }

  /** Ways to take a ball, the straightest first: in the middle of the pusher, or to one side of it (for balls beside a wall). */
  private tries(ball: PointMm): readonly Try[] {
    const aside = SIDE_SHARE * this.scene.carry.halfWidthMm;
    const square = [0, aside, -aside].map((offsetMm) => this.squareTry(ball, offsetMm));
    const round = this.turnIns
      .flatMap((turnIn) => {
        const homeRad = atan2(turnIn.yMm - ball.yMm, turnIn.xMm - ball.xMm);
        const headings = [...ASIDE_DEG.map((deg) => homeRad + deg * RAD_PER_DEG), ...ALONG_WALLS_RAD];
        return headings.flatMap((headingRad) =>
          [0, aside, -aside].map((offsetMm) => this.tryOf(ball, turnIn, headingRad, offsetMm)),
        );
      })
      .filter(({ costRad }) => costRad < MOST_TURN_RAD);
    return [...square, ...round].sort((a, b) => a.costRad - b.costRad);
  }

  /** Straight onto the wedge, square to it, beside the push line: for balls in front of it. */
  private squareTry(ball: PointMm, offsetMm: number): Try {
    const { target } = this.scene;
    const { headingRad } = target;
    const [ux, uy] = [cos(headingRad), sin(headingRad)];
    const middle = { xMm: ball.xMm - offsetMm * uy, yMm: ball.yMm + offsetMm * ux };
    const before = beforeWedgeMm(target, middle);
    const end = { xMm: middle.xMm + before * ux, yMm: middle.yMm + before * uy, radiusMm: 0 };
    const costRad = SQUARE_COST_RAD + (offsetMm === 0 ? 0 : SIDE_COST_RAD);
    return { start: this.before(middle, ux, uy), headingRad, way: [end], costRad };
  }

  /** The ball is first driven straight into the back of the pusher, then carried round to the push line. */
  private tryOf(ball: PointMm, turnIn: PointMm, headingRad: number, offsetMm: number): Try {
    const [ux, uy] = [cos(headingRad), sin(headingRad)];
    const middle = { xMm: ball.xMm - offsetMm * uy, yMm: ball.yMm + offsetMm * ux };
    const radiusMm = curveMm(this.scene, CURVE);
    let corner = middle;
    let turnRad = 0;
    for (let round = 0; round < 3; round++) {
      const toward = atan2(turnIn.yMm - corner.yMm, turnIn.xMm - corner.xMm);
      turnRad = wrapAngle(toward - headingRad);
      const half = Math.min(Math.abs(turnRad) / 2, WIDEST_HALF_RAD);
      const along = SEATED_MM - this.scene.carry.seatMm + (radiusMm * sin(half)) / cos(half);
      corner = { xMm: middle.xMm + along * ux, yMm: middle.yMm + along * uy };
    }
    const lastRad = wrapAngle(this.scene.target.headingRad - headingRad - turnRad);
    const costRad = Math.abs(turnRad) + Math.abs(lastRad) + (offsetMm === 0 ? 0 : SIDE_COST_RAD);
    const start = this.before(middle, ux, uy);
    const way = [{ ...corner, radiusMm }, { ...turnIn, radiusMm }, beforeWedge(this.scene, 0)];
    return { start, headingRad, way, costRad };
  }

  /** Whether there is room before the ball, on the way there and home; then it is done. */
  private take(builder: RoutineBuilder, { start, headingRad, way }: Try): boolean {
    if (this.stance.outsideMm({ ...start, headingRad }) > 0) return false;
    if (!reachPoint(builder, start) || !builder.face(headingRad)) return false;
    return followAndRetreat(builder, RUN, [start, ...way]);
  }

  /** Moves to a pose; null where there is no way. */
  goTo(from: Pose, to: Pose, speedMmPerS: number): readonly Move[] | null {
    const builder = this.builderAt(from, speedMmPerS);
    return arriveAt(builder, this.seen(to)) ? movesFromFrame(this.frame, [...builder.moves]) : null;
  }

  /** One builder for each speed: making one measures the zone anew, which costs more than a plan. */
  private builderAt(from: Pose, speedMmPerS: number): RoutineBuilder {
    const builder = this.builders.get(speedMmPerS) ?? new RoutineBuilder(this.scene, speedMmPerS);
    this.builders.set(speedMmPerS, builder);
    builder.rewind({ pose: this.seen(from), timeS: 0, moveCount: 0, armsRad: builder.mark().armsRad });
    return builder;
  }

  private walkerAt(from: Pose): Walker {
    this.walker.pose = this.seen(from);
    return this.walker;
  }

  private seen(pose: Pose): Pose {
    return poseInFrame(this.frame, this.project.zone, pose);
  }

  /** Where the axle stands before the ball is met, in this direction. */
  private before(ball: PointMm, ux: number, uy: number): Waypoint {
    const back = this.scene.reach.pusherFrontMm + this.radiusMm + RUN_UP_MM;
    return { xMm: ball.xMm - back * ux, yMm: ball.yMm - back * uy, radiusMm: 0 };
  }

  /** The first move after which the axle's cross line is within the pusher's reach of the ball's place, or beyond it. */
  private heldFrom(moves: readonly Move[], from: Pose, ball: PointMm): number {
    const walker = this.walkerAt(from);
    const { pusherBackMm, pusherLeftMm, pusherRightMm, pusherFrontMm } = this.scene.reach;
    for (const [i, move] of moves.entries()) {
      const before = inRobot(walker.pose, ball);
      walker.advance(move);
      const after = inRobot(walker.pose, ball);
      const inWidth = after.yMm < pusherLeftMm && after.yMm > -pusherRightMm;
      const drives = move.kind === "drive" || move.kind === "toWall";
      if (drives && inWidth && before.xMm > pusherFrontMm && after.xMm < pusherBackMm + this.radiusMm)
        return i;
    }
    return moves.length;
  }
}

interface Try {
  readonly start: Waypoint;
  readonly headingRad: number;
  readonly way: readonly Waypoint[];
  /** Turned with the ball, and what taking it off the middle is worth. */
  readonly costRad: number;
}

/** Along a move from pose to pose; a curve is cut short, which the gap allows for. */
function between(a: Pose, b: Pose, share: number): Pose {
  return {
    xMm: a.xMm + share * (b.xMm - a.xMm),
    yMm: a.yMm + share * (b.yMm - a.yMm),
    headingRad: a.headingRad + share * (b.headingRad - a.headingRad),
  };
}

/** A point of the zone in the robot's frame. */
function inRobot({ xMm, yMm, headingRad }: Pose, point: PointMm): PointMm {
  const [c, s] = [cos(headingRad), sin(headingRad)];
  const [dx, dy] = [point.xMm - xMm, point.yMm - yMm];
  return { xMm: c * dx + s * dy, yMm: c * dy - s * dx };
}
