import type { Project } from "../model/project.ts";
import { NO_DRIFT } from "../model/robot.ts";
import type { PointMm } from "../model/zone.ts";

/** The same project with the balls laid where they are told, in every trial. */
export function withPlacement(project: Project, positions: readonly PointMm[]): Project {
  return { ...project, rules: { ...project.rules, layout: { kind: "fixed", positions } } };
}

/** The same project with a robot that does exactly what it is told, and with every stated value as stated. */
export function withoutDrift(project: Project): Project {
  return {
    ...project,
    spread: { frictionFrac: 0, rollingResistanceFrac: 0, restitution: 0 },
    robot: { ...project.robot, drift: NO_DRIFT },
  };
}
