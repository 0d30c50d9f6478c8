import type { Project } from "../../src/model/project.ts";
import type { Routine } from "../../src/model/routine.ts";
import type { PointMm } from "../../src/model/zone.ts";
import { fanRoutine } from "./fanRoutine.ts";

/**
 * A project in which a general engine can follow: a wedge without height, no friction at upright faces (planck's discs
 * cannot roll, so they cannot feel it either), nothing spread. The floor, restitution and drift stay as they are.
 */
export function frictionless(project: Project): Project {
  const { zone, robot } = project;
  return {
    ...project,
    zone: {
      ...zone,
      walls: { ...zone.walls, frictionCoeff: 0 },
      wedge: { ...zone.wedge, profile: "flat", lipMm: 0, riseMm: 0, runMm: 0 },
    },
    balls: project.balls.map((group) => ({ ...group, kind: { ...group.kind, frictionCoeff: 0 } })),
    robot: { ...robot, surface: { ...robot.surface, frictionCoeff: 0 } },
    spread: { frictionFrac: 0, rollingResistanceFrac: 0, restitution: 0 },
  };
}

/** Pushes toward the corner of the usual zone that stay clear of every wall: balls are hardly ever squeezed. */
export function openFans(project: Project): Routine {
  return fanRoutine(project, [
    { from: at(160, 240), toward: [at(1120, 690), at(1060, 750), at(1000, 800)], shortMm: 230 },
    { from: at(300, 560), toward: [at(970, 830), at(1010, 780), at(1080, 720)], shortMm: 230 },
    {
      from: at(560, 230),
      toward: [at(970, 830), at(1030, 780), at(1080, 720), at(1130, 670)],
      shortMm: 230,
    },
    { from: at(960, 240), toward: [at(960, 840), at(1000, 800), at(1050, 750)], shortMm: 240 },
  ]);
}

/** Pushes that end on walls, so that the robot is turned by them, stalls, and squeezes balls in every second trial or so. */
export function tightFans(project: Project): Routine {
  return fanRoutine(project, [
    {
      from: at(160, 250),
      toward: [at(1120, 690), at(1060, 750), at(1000, 810), at(940, 860)],
      shortMm: 150,
    },
    { from: at(250, 560), toward: [at(940, 860), at(1000, 780), at(1060, 720)], shortMm: 150 },
    {
      from: at(500, 230),
      toward: [at(940, 860), at(1020, 780), at(1080, 720), at(1150, 650)],
      shortMm: 150,
    },
  ]);
}

function at(xMm: number, yMm: number): PointMm {
  return { xMm, yMm };
}
