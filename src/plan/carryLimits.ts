import { cagesBalls, hingedArms } from "../model/arms.ts";
import { ballsOf, type Project } from "../model/project.ts";
import type { Move } from "../model/routine.ts";
import type { PointMm } from "../model/zone.ts";
import { distanceToWedge } from "../model/zoneFrame.ts";
import { nominalCourse } from "../motion/course.ts";
import { setProfile } from "../motion/duration.ts";
import type { Pose } from "../motion/pose.ts";
import { Trapezoid } from "../motion/trapezoid.ts";
import { Walker } from "../motion/walker.ts";
import { cos, sin } from "../num/elementary.ts";
import { brakingSpeed, type Carry, carryOf, curveRate, leastCurveMm, turnsOnSpot } from "./carry.ts";
import { Gathering } from "./gathering.ts";
import { type Reach, reachOf } from "./reach.ts";

/** A move in which a ball in the pusher can be lost. */
export interface CarryLimit {
  /** Index in the routine. */
  readonly move: number;
  /** When the robot brakes at its end, and the ball runs on; or in its turn, outward. */
  readonly why: "brakes" | "turns";
  /** What it reaches, and at what it would keep the ball: mm/s of a way, rad/s of a turn on the spot. 0: at no speed. */
  readonly reached: number;
  readonly safe: number;
}

/**
 * Share of the estimated rate at which a turn on the spot keeps its ball in the engine: starting the turn already sends it outward,
 * which the estimate leaves out (at 0.73 of it the ball ends 13 mm inside the tips of arm-robot.json, at 0.92 it is 35 mm outside).
 */
export const SPOT_SHARE = 0.7;
/** Reached by so small a share more than is safe does not count: rounding of speeds. */
const SHARE = 1e-6;

/**
 * Every move in which a ball in the pusher can be lost, by the estimates of carry.ts (a ball rolls on while the robot brakes; it is
 * thrown outward in a turn; both must stay within 0.7 of the pusher's depth). The pusher may be full once it has been over a place where
 * a ball may lie; a way that goes straight on meets its ball again, and one against a wall is to bring it there; after reversing it
 * is empty; what closed arms cage cannot get out. A V keeps its ball in wide curves only, and a plate in none.
 *
 * @param places where the balls lie, if that is known
 */
export function carryLimits(
  project: Project,
  moves: readonly Move[],
  places?: readonly PointMm[],
): readonly CarryLimit[] {
  const { robot } = project;
  const balls = ballsOf(project);
  const reach = reachOf(robot);
  const carry = carryOf(reach, robot.drive, balls);
  const arms = hingedArms(robot);
  const cages = cagesBalls(robot, balls);
  const { armsRad, ends, gathers } = wayOf(project, reach, moves, places);
  const profile = new Trapezoid();
  const limits: CarryLimit[] = [];
  let holds = false;
  for (const [index, move] of moves.entries()) {
    const caged = cages && armsRad[index] === arms?.closedAngleRad;
    const peak = setProfile(robot.drive, move, profile).peak;
    const forward = isForward(move);
    if (gathers.has(index)) holds = true;
    const limit = holds && !caged ? limitOf(carry, move, peak, goesOn(moves, index)) : null;
    const end = limit?.why === "brakes" ? ends.get(index) : undefined;
    if (end !== undefined && isLetGo(project, reach, end)) continue;
    if (limit !== null && limit.reached > limit.safe * (1 + SHARE)) limits.push({ move: index, ...limit });
    if (!forward && "distanceMm" in move && !caged) holds = false;
  }
  return limits;
}

function limitOf(carry: Carry, move: Move, peak: number, goesOn: boolean): Omit<CarryLimit, "move"> | null {
  const none = { why: "turns", reached: peak, safe: 0 } as const;
  switch (move.kind) {
    case "turn":
      if (peak === 0) return null;
      return turnsOnSpot(carry)
        ? { why: "turns", reached: peak, safe: SPOT_SHARE * curveRate(carry, 0) }
        : none;
    case "arc": {
      if (move.distanceMm <= 0 || move.angleRad === 0) return null;
      const radiusMm = move.distanceMm / Math.abs(move.angleRad);
      if (!carry.holds || radiusMm < leastCurveMm(carry)) return none;
      const turns = { why: "turns", reached: peak, safe: curveRate(carry, radiusMm) * radiusMm } as const;
      const brakes = { why: "brakes", reached: peak, safe: brakingSpeed(carry) } as const;
      return goesOn || turns.safe < brakes.safe ? turns : brakes;
    }
    case "drive":
      if (move.distanceMm <= 0 || goesOn) return null;
      return { why: "brakes", reached: peak, safe: brakingSpeed(carry) };
    case "toWall":
    case "wait":
    case "arms":
      return null;
    default:
      return move satisfies never;
  }
}

/** What a way means for what is carried, whatever its speeds. */
interface Way {
  readonly armsRad: readonly number[];
  /** Where each move that goes any way ends. */
  readonly ends: ReadonlyMap<number, Pose>;
  /** Moves that can have brought a ball into the pusher. */
  readonly gathers: ReadonlySet<number>;
}

function wayOf(
  project: Project,
  reach: Reach,
  moves: readonly Move[],
  places: readonly PointMm[] | undefined,
): Way {
  const { armsRad, pieces } = nominalCourse(project, moves);
  const gathering = new Gathering(project, reach, places);
  const ends = new Map<number, Pose>();
  const gathers = new Set<number>();
  for (const piece of pieces) {
    const move = moves[piece.move];
    ends.set(piece.move, piece.to);
    if (move !== undefined && isForward(move) && gathering.gathers(piece)) gathers.add(piece.move);
  }
  return { armsRad, ends, gathers };
}

/** What runs on from here is meant to: onto the wedge, or against what is right ahead of the robot, and not past it. */
function isLetGo(project: Project, { pusherFrontMm }: Reach, end: Pose): boolean {
  const [c, s] = [cos(end.headingRad), sin(end.headingRad)];
  const tips = { xMm: end.xMm + pusherFrontMm * c, yMm: end.yMm + pusherFrontMm * s };
  if (distanceToWedge(project.zone, tips.xMm, tips.yMm) <= 0) return true;
  const ballMm = ballsOf(project).reduce(
    (least, ball) => Math.min(least, ball.diameterMm),
    Number.POSITIVE_INFINITY,
  );
  return new Walker(project, end).freeWayMm(1) < ballMm;
}

function isForward(move: Move): boolean {
  return "distanceMm" in move && move.distanceMm > 0;
}

/** After standing at most, the next move goes forward: what has run ahead is met again. */
function goesOn(moves: readonly Move[], index: number): boolean {
  const next = moves.slice(index + 1).find(({ kind }) => kind !== "wait");
  return next !== undefined && isForward(next);
}
