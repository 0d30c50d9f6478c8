import { robotOutline } from "../model/outline.ts";
import type { Project } from "../model/project.ts";
import type { Move, Routine } from "../model/routine.ts";
import { reachMm } from "../model/turningRoom.ts";
import { distanceToRect, distanceToWedge } from "../model/zoneFrame.ts";
import { nominalCourse } from "../motion/course.ts";
import { moveDurationS } from "../motion/duration.ts";
import { entryPose } from "../motion/entry.ts";
import type { Pose } from "../motion/pose.ts";
import { Walker } from "../motion/walker.ts";
import { atan2, wrapAngle } from "../num/elementary.ts";

/** Moves `from` to `to` − 1, which can be left out together. */
export interface RoutinePart {
  readonly from: number;
  readonly to: number;
  readonly durationS: number;
}

/** A routine cut into parts at places where the robot can turn all round, so that it can go from any to any other without them. */
export interface RoutineParts {
  /** The way in is before the first part, and always driven. */
  readonly parts: readonly RoutinePart[];
  /** Nominal pose at the start of each part, and one more for the end. */
  readonly poses: readonly Pose[];
}

const SPARE_MM = 1;

/**
 * Cuts a routine into at most `most` parts, the shorter ones joined with their neighbours. Less than two parts come back where there is no room to
 * turn, or in a zone with keep-outs on the straight ways between the cuts.
 */
export function routineParts(project: Project, routine: Routine, most: number): RoutineParts {
  // What a program drives is made on the way: there is nothing to leave out beforehand.
  if (routine.program !== undefined) return { parts: [], poses: [entryPose(project.zone, project.robot)] };
  const { drive } = project.robot;
  const walker = new Walker(project);
  const room = new RoomToTurn(project);
  const cuts: { readonly at: number; readonly pose: Pose }[] = [];
  for (const [index, move] of routine.moves.entries()) {
    if (room.around(walker.pose)) cuts.push({ at: index, pose: walker.pose });
    walker.advance(move);
  }
  const end = { at: routine.moves.length, pose: walker.pose };
  let kept = cuts.filter(({ pose }, i) => cuts.slice(0, i).every((other) => room.between(other.pose, pose)));
  const durationOf = (from: number, to: number): number =>
    routine.moves.slice(from, to).reduce((sum, move) => sum + moveDurationS(drive, move), 0);
  const lengths = (): number[] => kept.map((cut, i) => durationOf(cut.at, kept[i + 1]?.at ?? end.at));
  while (kept.length > most) {
    // The cut before the shortest part goes; the first stays, since the way in ends there.
    const seconds = lengths();
    let shortest = 1;
    for (let i = 1; i < seconds.length; i++) if ((seconds[i] ?? 0) < (seconds[shortest] ?? 0)) shortest = i;
    kept = kept.filter((_, i) => i !== shortest);
  }
  const parts = kept.map((cut, i) => {
    const to = kept[i + 1]?.at ?? end.at;
    return { from: cut.at, to, durationS: durationOf(cut.at, to) };
  });
  return { parts, poses: [...kept.map(({ pose }) => pose), end.pose] };
}

class RoomToTurn {
  private readonly project: Project;
  private readonly reach: number;
  private readonly groundReach: number;

  constructor(project: Project) {
    this.project = project;
    const outline = robotOutline(project.robot);
    this.reach = reachMm([...outline.footprint, ...outline.ground]) + SPARE_MM;
    this.groundReach = reachMm(outline.ground) + SPARE_MM;
  }

  around({ xMm, yMm }: Pose): boolean {
    const { zone, robot } = this.project;
    const walls = Math.min(xMm, yMm, zone.widthMm - xMm, zone.heightMm - yMm);
    const wedge = robot.climbsWedge ? Number.POSITIVE_INFINITY : distanceToWedge(zone, xMm, yMm);
    const blocks = zone.keepOuts.map((rect) => distanceToRect(rect, xMm, yMm));
    return Math.min(walls, ...blocks) >= this.reach && wedge >= this.groundReach;
  }

  /** Whether a straight way is clear: walls and wedge leave a convex room, only keep-outs can be in between. */
  between(a: Pose, b: Pose): boolean {
    const steps = this.project.zone.keepOuts.length === 0 ? 1 : 20;
    return Array.from({ length: steps }, (_, i) => i / steps).every((share) =>
      this.around({
        xMm: a.xMm + share * (b.xMm - a.xMm),
        yMm: a.yMm + share * (b.yMm - a.yMm),
        headingRad: 0,
      }),
    );
  }
}

/**
 * The routine with some of its parts left out. In their place the robot turns, drives straight and turns to where the next part
 * begins; after the last part that is kept it stops.
 *
 * @param mask bit i set: part i is kept
 */
export function withParts(
  project: Project,
  routine: Routine,
  { parts, poses }: RoutineParts,
  mask: number,
): Routine {
  const first = parts[0]?.from ?? routine.moves.length;
  const moves: Move[] = [...routine.moves.slice(0, first)];
  let at = 0;
  for (const [i, part] of parts.entries()) {
    if ((mask & (1 << i)) === 0) continue;
    const [from, to] = [poses[at], poses[i]];
    if (at !== i && from !== undefined && to !== undefined) moves.push(...straightWay(project, from, to));
    moves.push(...routine.moves.slice(part.from, part.to));
    at = i + 1;
  }
  return { ...routine, moves };
}

/** The routine's parts, and the routine with every combination of them: bit i of the index says whether part i is kept. */
export function partVariants(
  project: Project,
  routine: Routine,
  most: number,
): { readonly parts: readonly RoutinePart[]; readonly variants: readonly Routine[] } {
  const cut = routineParts(project, routine, most);
  const variants = Array.from({ length: 1 << cut.parts.length }, (_, mask) =>
    withParts(project, routine, cut, mask),
  );
  return { parts: cut.parts, variants };
}

const NO_TURN_RAD = 1e-6;
const NO_WAY_MM = 1e-3;

function straightWay(project: Project, from: Pose, to: Pose): readonly Move[] {
  const { topSpeedMmPerS, turnRateRadPerS } = project.robot.drive;
  const dx = to.xMm - from.xMm;
  const dy = to.yMm - from.yMm;
  const distanceMm = Math.sqrt(dx * dx + dy * dy);
  const moves: Move[] = [];
  let headingRad = from.headingRad;
  const face = (aim: number): void => {
    const angleRad = wrapAngle(aim - headingRad);
    if (Math.abs(angleRad) > NO_TURN_RAD)
      moves.push({ kind: "turn", angleRad, rateRadPerS: turnRateRadPerS });
    headingRad = aim;
  };
  if (distanceMm > NO_WAY_MM) {
    face(atan2(dy, dx));
    moves.push({ kind: "drive", distanceMm, speedMmPerS: topSpeedMmPerS });
  }
  face(to.headingRad);
  return moves;
}

/** Moves that touch something without meaning to; 0 for every set of parts in a zone without keep-outs. */
export function strayTouchCount(project: Project, routine: Routine): number {
  return nominalCourse(project, routine.moves).blockedMoves.length;
}
