import type { BallKind } from "../model/ball.ts";
import { checkProject } from "../model/check.ts";
import type { Program, Step } from "../model/program.ts";
import type { Project } from "../model/project.ts";
import type { Drift, Robot } from "../model/robot.ts";
import type { Move, Routine } from "../model/routine.ts";
import { changeTexts } from "../texts/english/change.ts";
import { compileTrial } from "../trial/compile.ts";
import { runTrial } from "../trial/run.ts";
import { widened, withSpeed } from "./changes.ts";

/** An input that is varied to see what the result depends on. */
export interface Factor {
  readonly id: string;
  /** In plain words, with the range it is varied over. */
  readonly title: string;
  /** @param u in [0, 1]: from the lower to the upper end of its range */
  readonly set: (subject: Subject, u: number) => Subject;
}

type FactorId = keyof typeof changeTexts.factors;

export interface Subject {
  readonly project: Project;
  readonly routine: Routine;
}

/**
 * Ranges: errors from half to one and a half of what is stated, values nobody measured over their stated spread, a pusher as
 * exactly as it is built by hand. The moves stay as they are.
 */
export const FACTORS: readonly Factor[] = [
  driftFactor("turn-error", (drift, f) => ({
    ...drift,
    systematic: { ...drift.systematic, turnScaleSd: f * drift.systematic.turnScaleSd },
    random: {
      ...drift.random,
      turnSdFrac: f * drift.random.turnSdFrac,
      turnSdRad: f * drift.random.turnSdRad,
    },
  })),
  driftFactor("distance-error", (drift, f) => ({
    ...drift,
    systematic: { ...drift.systematic, distanceScaleSd: f * drift.systematic.distanceScaleSd },
    random: { ...drift.random, distanceSdFrac: f * drift.random.distanceSdFrac },
  })),
  driftFactor("crookedness", (drift, f) => ({
    ...drift,
    systematic: { ...drift.systematic, curvatureSdRadPerMm: f * drift.systematic.curvatureSdRadPerMm },
    random: { ...drift.random, curvatureSdRadPerMm: f * drift.random.curvatureSdRadPerMm },
  })),
  driftFactor("start-error", (drift, f) => ({
    ...drift,
    start: { positionSdMm: f * drift.start.positionSdMm, headingSdRad: f * drift.start.headingSdRad },
  })),
  robotFactor("pusher-width", (project, u) => {
    const shape = widened(project.robot.shape, between(u, -10, 10));
    return typeof shape === "string" ? project.robot : { ...project.robot, shape };
  }),
  robotFactor("pusher-friction", ({ robot, spread }, u) => {
    const frictionCoeff = robot.surface.frictionCoeff * spreadFactor(spread.frictionFrac, u);
    return { ...robot, surface: { ...robot.surface, frictionCoeff } };
  }),
  moveFactor("turning", (move, u) => withSpeed(move, 1, between(u, 0.7, 1))),
  moveFactor("pushing-on", (move, u) =>
    move.kind === "toWall" ? { ...move, overrunMm: between(u, 0.5, 1.5) * move.overrunMm } : move,
  ),
  {
    id: "speed",
    get title() {
      return changeTexts.factors.speed;
    },
    set: ({ project, routine }, u) => ({
      project,
      routine: {
        ...routine,
        moves: routine.moves.map((move) => withSpeed(move, between(u, 0.7, 1), 1)),
        ...(routine.program === undefined ? {} : { program: slower(routine.program, between(u, 0.7, 1)) }),
      },
    }),
  },
  ballFactor("rolling", (kind, project, u) => ({
    ...kind,
    rollingResistance: kind.rollingResistance * spreadFactor(project.spread.rollingResistanceFrac, u),
  })),
  ballFactor("ball-friction", (kind, project, u) => ({
    ...kind,
    frictionCoeff: kind.frictionCoeff * spreadFactor(project.spread.frictionFrac, u),
    floorFrictionCoeff: kind.floorFrictionCoeff * spreadFactor(project.spread.frictionFrac, u),
  })),
  ballFactor("bounce", (kind, project, u) => ({
    ...kind,
    restitution: Math.min(1, Math.max(0, kind.restitution + between(u, -1, 1) * project.spread.restitution)),
  })),
];

/** A program in which everything is driven at a share of its speed. */
function slower(program: Program, share: number): Program {
  return program.map((step): Step => {
    switch (step.kind) {
      case "scan":
        return step;
      case "fetch":
      case "goTo":
        return { ...step, speedMmPerS: share * step.speedMmPerS };
      case "repeat":
        return { ...step, steps: slower(step.steps, share) };
      case "if":
        return { ...step, yes: slower(step.yes, share), no: slower(step.no, share) };
      default:
        return withSpeed(step, share, 1);
    }
  });
}

function between(u: number, low: number, high: number): number {
  return low + u * (high - low);
}

function spreadFactor(frac: number, u: number): number {
  return 1 + frac * between(u, -1, 1);
}

function driftFactor(id: FactorId, turn: (drift: Drift, factor: number) => Drift): Factor {
  return {
    id,
    get title() {
      return changeTexts.factors[id];
    },
    set: ({ project, routine }, u) => {
      const { robot } = project;
      const drift = turn(robot.drift, between(u, 0.5, 1.5));
      return { project: { ...project, robot: { ...robot, drift } }, routine };
    },
  };
}

function robotFactor(id: FactorId, turn: (project: Project, u: number) => Robot): Factor {
  return {
    id,
    get title() {
      return changeTexts.factors[id];
    },
    set: ({ project, routine }, u) => ({ project: { ...project, robot: turn(project, u) }, routine }),
  };
}

/** Of a list of moves only: what a program drives is made on the way. */
function moveFactor(id: FactorId, turn: (move: Move, u: number) => Move): Factor {
  return {
    id,
    get title() {
      return changeTexts.factors[id];
    },
    set: ({ project, routine }, u) => ({
      project,
      routine:
        routine.program === undefined
          ? { ...routine, moves: routine.moves.map((move) => turn(move, u)) }
          : routine,
    }),
  };
}

function ballFactor(id: FactorId, turn: (kind: BallKind, project: Project, u: number) => BallKind): Factor {
  return {
    id,
    get title() {
      return changeTexts.factors[id];
    },
    set: ({ project, routine }, u) => ({
      project: {
        ...project,
        balls: project.balls.map((group) => ({ ...group, kind: turn(group.kind, project, u) })),
      },
      routine,
    }),
  };
}

/** Factors whose both ends a project allows, and that change anything in it. */
export function usableFactors(project: Project, routine: Routine): readonly Factor[] {
  return FACTORS.filter((factor) => {
    const ends = [0, 1].map((u) => factor.set({ project, routine }, u));
    if (ends.some((end) => checkProject(end.project).length > 0)) return false;
    return JSON.stringify(ends[0]) !== JSON.stringify(ends[1]);
  });
}

export interface ResponseRequest {
  /** Ids of factors, and one number in [0, 1] for each. */
  readonly factors: readonly string[];
  readonly point: readonly number[];
  readonly seed: number;
  readonly trials: number;
}

/**
 * Balls delivered per trial with the factors set: the same placements and luck at every point. Spread is off where a factor
 * sets the values itself, else they would vary twice.
 *
 * @throws RangeError for a factor that is none
 */
export function response(project: Project, routine: Routine, request: ResponseRequest): number {
  const { factors, point, seed, trials } = request;
  let subject: Subject = { project, routine };
  for (const [i, id] of factors.entries()) {
    const factor = FACTORS.find((each) => each.id === id);
    if (factor === undefined) throw new RangeError(`factor ${id}; expected one of FACTORS`);
    subject = factor.set(subject, point[i] ?? 0.5);
  }
  const plan = compileTrial(subject.project, subject.routine, { spread: false });
  let delivered = 0;
  for (let index = 0; index < trials; index++) {
    for (const isHome of runTrial(plan, seed, index).delivered) delivered += isHome ? 1 : 0;
  }
  return delivered / trials;
}
