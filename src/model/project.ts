import type { BallGroup, BallKind } from "./ball.ts";
import type { Robot } from "./robot.ts";
import type { RoutineSettings, Rules, Spread } from "./rules.ts";
import type { Zone } from "./zone.ts";

/** Everything a team describes. Read from and written to one JSON file (parse.ts, serialise.ts). */
export interface Project {
  readonly name: string;
  readonly note: string;
  readonly zone: Zone;
  readonly balls: readonly BallGroup[];
  readonly rules: Rules;
  readonly robot: Robot;
  readonly spread: Spread;
  readonly settings: RoutineSettings;
}

/** At most this many balls in a project: the trial's arrays and the placement's dimensions are made for it. */
export const MAX_BALLS = 12;

/** One entry per ball, groups in file order. */
export function ballsOf(project: Project): readonly BallKind[] {
  return project.balls.flatMap((group) => Array.from({ length: group.count }, () => group.kind));
}
