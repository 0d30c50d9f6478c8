import type { Condition, Program } from "../model/program.ts";
import type { Project } from "../model/project.ts";
import type { Move } from "../model/routine.ts";
import { sensorOf } from "../model/sensor.ts";
import { withWedgeIn } from "../model/wedgeCorner.ts";
import type { Corner, PointMm } from "../model/zone.ts";
import { distanceToWedge } from "../model/zoneFrame.ts";
import type { Pose } from "../motion/pose.ts";
import { Walker } from "../motion/walker.ts";
import { cos, sin } from "../num/elementary.ts";
import { FetchPlanner } from "./fetch.ts";
import { ProgramWalk, type ProgramWorld } from "./programWalk.ts";

/** The moves of a program for a robot that sees no ball and meets nothing, with the wedge where the zone has it. */
export function nominalMoves(project: Project, program: Program): readonly Move[] {
  const world = new EmptyWorld(project);
  const walk = new ProgramWalk(program, world);
  const moves: Move[] = [];
  for (let command = walk.next(); command !== null; command = walk.next()) {
    moves.push(command.move);
    world.walker.advance(command.move);
  }
  return moves;
}

class EmptyWorld implements ProgramWorld {
  readonly walker: Walker;
  readonly feelsBall = false;
  notes: PointMm[] = [];
  private readonly project: Project;
  private readonly planners = new Map<Corner, FetchPlanner>();

  constructor(project: Project) {
    this.project = project;
    this.walker = new Walker(project);
  }

  get pose(): Pose {
    return this.walker.pose;
  }

  get timeLeftS(): number {
    return this.project.rules.timeLimitS - this.walker.timeS;
  }

  answer(ask: Condition): boolean {
    if (ask.kind === "shortOfTime") return this.timeLeftS < ask.belowS;
    return ask.kind === "overWedge" && isOverWedge(this.project, this.pose);
  }

  scan({ angleRad, rateRadPerS }: { readonly angleRad: number; readonly rateRadPerS: number }): Move {
    return { kind: "turn", angleRad, rateRadPerS };
  }

  planner(corner: Corner): FetchPlanner {
    const known = this.planners.get(corner) ?? new FetchPlanner(withWedgeIn(this.project, corner));
    this.planners.set(corner, known);
    return known;
  }
}

/** Whether the floor sensor of a robot that stands so is over the wedge; never without one. */
export function isOverWedge(project: Project, { xMm, yMm, headingRad }: Pose): boolean {
  const floor = sensorOf(project.robot.sensors, "floor");
  if (floor === undefined) return false;
  const [c, s] = [cos(headingRad), sin(headingRad)];
  const x = xMm + c * floor.alongMm - s * floor.acrossMm;
  const y = yMm + s * floor.alongMm + c * floor.acrossMm;
  return distanceToWedge(project.zone, x, y) < 0;
}
