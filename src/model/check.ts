import { checkBallCount, checkBalls } from "./checkBalls.ts";
import { checkCorners } from "./checkCorners.ts";
import { checkEntry } from "./checkEntry.ts";
import { checkRobot } from "./checkRobot.ts";
import { checkZone } from "./checkZone.ts";
import type { Issue } from "./issue.ts";
import type { Project } from "./project.ts";

/** Which parts are known to be sound in themselves (types and ranges); the checks of the others are left out. */
export interface SoundParts {
  readonly zone: boolean;
  readonly balls: boolean;
  readonly rules: boolean;
  readonly robot: boolean;
}

const ALL_SOUND: SoundParts = { zone: true, balls: true, rules: true, robot: true };

/**
 * What contradicts itself in a project: everything that takes more than one field to see. Paths are those of the file.
 * The robot is checked against the zone, and the balls against both, once these are free of issues of their own.
 */
export function checkProject(project: Project, parts: SoundParts = ALL_SOUND): readonly Issue[] {
  const zone = parts.zone ? checkZone(project.zone) : [];
  const robot = parts.robot ? checkRobot(project.robot) : [];
  const balls = parts.balls ? checkBallCount(project.balls) : [];
  const issues = [...zone, ...robot, ...balls];
  if (!parts.zone || !parts.robot || zone.length > 0 || robot.length > 0) return issues;
  issues.push(...checkEntry(project.zone, project.robot));
  if (!parts.balls || !parts.rules || balls.length > 0) return issues;
  issues.push(...checkBalls(project));
  if (issues.length === 0) issues.push(...checkCorners(project));
  return issues;
}
