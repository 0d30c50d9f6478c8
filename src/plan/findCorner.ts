import type { Program, Question } from "../model/program.ts";
import type { Project } from "../model/project.ts";
import { withWedgeIn } from "../model/wedgeCorner.ts";
import type { Corner } from "../model/zone.ts";
import { entryPose } from "../motion/entry.ts";
import type { Pose } from "../motion/pose.ts";
import { Walker } from "../motion/walker.ts";
import { type CornerCheck, cornerCheck } from "./cornerCheck.ts";
import type { FindBy } from "./sensingPlan.ts";
import { wallCheck } from "./wallCheck.ts";

/** All corners in the order in which walls join them. */
const AROUND: readonly Corner[] = ["lower-left", "lower-right", "upper-right", "upper-left"];

/**
 * Goes from corner to corner, looks whether the wedge is there, and does the rest for the corner it has found; the last one needs no
 * look. Null where one of them has no room.
 *
 * @param after what follows once the corner is known, from a pose
 */
export function findProgram(
  project: Project,
  by: FindBy,
  after: (known: Project, from: Pose) => Program | null,
): Program | null {
  const { wedgeCorners } = project.rules;
  const from = entryPose(project.zone, project.robot);
  if (by === "find") return visit(project, wedgeCorners, from, cornerCheck, after);
  const order = quickerRound(project, wedgeCorners, from);
  return order === null ? null : visit(project, order, from, wallCheck, after);
}

type Check = (project: Project, from: Pose) => CornerCheck | null;

function visit(
  project: Project,
  left: readonly Corner[],
  from: Pose,
  look: Check,
  after: (known: Project, from: Pose) => Program | null,
): Program | null {
  const [next, ...others] = left;
  if (next === undefined) return [];
  const known = withWedgeIn(project, next);
  const [other] = others;
  if (other === undefined) return after(known, from);
  const check = look(known, from);
  if (check === null) return null;
  const found = after(known, endOf(known, from, [...check.there, ...check.onFound]));
  const elsewhere = withWedgeIn(project, other);
  const there = endOf(elsewhere, from, [...check.there, ...check.onward]);
  const onward = visit(project, others, there, look, after);
  if (found === null || onward === null) return null;
  const when: Question = { ask: check.ask, not: false };
  return [
    ...check.there,
    { kind: "if", when, yes: [...check.onFound, ...found], no: [...check.onward, ...onward] },
  ];
}

/** Round by round the walls, one way or the other: whichever has looked into all but the last the sooner. */
function quickerRound(project: Project, corners: readonly Corner[], from: Pose): readonly Corner[] | null {
  const around = AROUND.filter((corner) => corners.includes(corner));
  const rounds = [around, [...around].reverse()].flatMap((round) =>
    round.map((_, i) => [...round.slice(i), ...round.slice(0, i)]),
  );
  let best: readonly Corner[] | null = null;
  let least = Number.POSITIVE_INFINITY;
  for (const round of rounds) {
    const timeS = timeOf(project, round, from);
    if (timeS >= least) continue;
    least = timeS;
    best = round;
  }
  return best;
}

function timeOf(project: Project, round: readonly Corner[], from: Pose): number {
  let at = from;
  let timeS = 0;
  for (const corner of round.slice(0, -1)) {
    const known = withWedgeIn(project, corner);
    const check = wallCheck(known, at);
    if (check === null) return Number.POSITIVE_INFINITY;
    timeS += check.timeS;
    at = endOf(known, at, [...check.there, ...check.onward]);
  }
  return timeS;
}

function endOf(project: Project, from: Pose, moves: CornerCheck["there"]): Pose {
  const walker = new Walker(project, from);
  for (const move of moves) walker.advance(move);
  return walker.pose;
}
