import type { Project } from "../../src/model/project.ts";
import type { Move, Routine } from "../../src/model/routine.ts";
import type { PointMm } from "../../src/model/zone.ts";
import { compileTrial } from "../../src/trial/compile.ts";
import type { TrialPlan } from "../../src/trial/plan.ts";
import { runBatch } from "../../src/trial/run.ts";
import { openFans } from "../support/frictionless.ts";
import { defaultProject } from "./defaultProject.ts";
import { type BenchRow, rowOf } from "./row.ts";

/** What a trial costs with more balls, more corners of the footprint, and more moves; processor time of one core. */

const SEED = 1;
const ROUNDS = 5;
const TRIALS = 300;
const BALLS = [1, 2, 3, 5, 8, 12];
const CORNERS = [4, 8, 16, 32, 64];
const MOVES = [10, 25, 50, 100, 200, 400];

/** Long enough for the longest routine here, s. */
const NO_LIMIT_S = 1e5;

interface Case {
  readonly what: string;
  readonly plan: TrialPlan;
}

export async function bench(): Promise<readonly BenchRow[]> {
  const project = defaultProject();
  const cases = [
    ...BALLS.map((count) => caseOf(`balls: ${count}`, withBalls(project, count), openFans(project))),
    ...CORNERS.map((n) =>
      caseOf(`corners of the footprint: ${n}`, withCorners(project, n), openFans(project)),
    ),
    ...MOVES.map((count) => caseOf(`moves: ${count}`, withoutLimit(project), shuttle(project, count))),
  ];
  const times: number[][] = cases.map(() => []);
  for (let round = -1; round < ROUNDS; round++) {
    for (const [i, { plan }] of cases.entries()) {
      const us = microsecondsOf(plan, round < 0 ? 0 : round * TRIALS);
      if (round >= 0) times[i]?.push(us);
    }
  }
  return cases.map(({ what }, i) => rowOf(what, "µs a trial", times[i] ?? []));
}

function caseOf(what: string, project: Project, routine: Routine): Case {
  return { what, plan: compileTrial(project, routine) };
}

function microsecondsOf(plan: TrialPlan, from: number): number {
  const before = process.cpuUsage();
  const { timeS } = runBatch(plan, SEED, from, from + TRIALS);
  const { user, system } = process.cpuUsage(before);
  if (!timeS.every((seconds) => seconds > 0)) throw new Error("a trial took no time");
  return (user + system) / TRIALS;
}

function withBalls(project: Project, count: number): Project {
  return { ...project, balls: project.balls.slice(0, 1).map((group) => ({ ...group, count })) };
}

/** A plate 150 mm wide, and behind it half an ellipse with the other corners: the balls meet nearly the same robot. */
function withCorners(project: Project, corners: number): Project {
  const outline: PointMm[] = Array.from({ length: corners }, (_, i) => {
    const angle = -Math.PI / 2 - (Math.PI * i) / (corners - 1);
    return { xMm: 95 + 170 * Math.cos(angle), yMm: 75 * Math.sin(angle) };
  });
  const shape = { kind: "polygon", outline: outline.reverse(), pusherEdges: [corners - 1] } as const;
  return { ...project, robot: { ...project.robot, shape } };
}

function withoutLimit(project: Project): Project {
  return { ...project, rules: { ...project.rules, timeLimitS: NO_LIMIT_S } };
}

/** The moves of the pushing routine, over and over. */
function shuttle(project: Project, count: number): Routine {
  const once = openFans(project);
  // Its last push starts where the first ones could: out and back, so that it can be repeated with turns between.
  const [out, back] = once.moves.slice(-2) as [Move, Move];
  const turn = (angleRad: number): Move => ({ kind: "turn", angleRad, rateRadPerS: 2 });
  const cycle = [out, back, turn(0.3), turn(-0.3)];
  const lead = once.moves.slice(0, Math.min(count, once.moves.length));
  const more = Array.from({ length: count - lead.length }, (_, i) => cycle[i % cycle.length] as Move);
  return { ...once, id: `moves-${count}`, moves: [...lead, ...more] };
}
