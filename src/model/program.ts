import type { Move } from "./routine.ts";
import type { BumpSensor } from "./sensor.ts";
import type { Corner } from "./zone.ts";

/** Something a robot can ask itself between two moves: a reading against a threshold, its notes, or the clock. */
export type Condition =
  /** At least one ball is on the note that the last scan left. */
  | { readonly kind: "seen" }
  /** The light barrier is broken: there is a ball in the pusher. */
  | { readonly kind: "holding" }
  /** The floor sensor is over the wedge. */
  | { readonly kind: "overWedge" }
  /** The last move ran into something with this side. */
  | { readonly kind: "bumped"; readonly side: BumpSensor["side"] }
  /** The distance sensor (its place in the robot's list) reads less than this. */
  | { readonly kind: "nearer"; readonly sensor: number; readonly thanMm: number }
  /** Less than this is left of the time limit. */
  | { readonly kind: "shortOfTime"; readonly belowS: number };

/** A question, and whether the answer wanted is no. */
export interface Question {
  readonly ask: Condition;
  readonly not: boolean;
}

/**
 * A line of a program: a move, or something that depends on what the robot senses and where it believes it is. `corner`:
 * where it takes the wedge to be.
 */
export type Step =
  | Move
  /** Turns on the spot while the first distance sensor reads, and notes the balls it makes out anew. */
  | {
      readonly kind: "scan";
      readonly angleRad: number;
      readonly rateRadPerS: number;
      readonly corner: Corner;
    }
  /** Pushes home the noted ball that takes least time, and strikes it off; gives up where the barrier finds nothing. */
  | { readonly kind: "fetch"; readonly speedMmPerS: number; readonly corner: Corner }
  /** Drives to a place, clear of walls and wedge. */
  | {
      readonly kind: "goTo";
      readonly xMm: number;
      readonly yMm: number;
      readonly headingRad: number;
      readonly speedMmPerS: number;
      readonly corner: Corner;
    }
  /** Again and again, at most so many times; the question is asked before each round. */
  | {
      readonly kind: "repeat";
      readonly atMost: number;
      readonly until: Question | null;
      readonly steps: readonly Step[];
    }
  | {
      readonly kind: "if";
      readonly when: Question;
      readonly yes: readonly Step[];
      readonly no: readonly Step[];
    };

export type Program = readonly Step[];

/** Limits of a program: what is beyond them never ends in time anyway. */
export const MAX_LINES = 4000;
export const MAX_DEPTH = 8;
export const MAX_ROUNDS = 100;

/** The lines of a program in the order in which they are written down: a block's own lines after its head. */
export function linesOf(program: Program): readonly Step[] {
  return program.flatMap((step): readonly Step[] => {
    if (step.kind === "repeat") return [step, ...linesOf(step.steps)];
    if (step.kind === "if") return [step, ...linesOf(step.yes), ...linesOf(step.no)];
    return [step];
  });
}

/** Nesting: 1 for a program without blocks. */
export function depthOf(program: Program): number {
  return program.reduce((deepest, step) => {
    if (step.kind === "repeat") return Math.max(deepest, 1 + depthOf(step.steps));
    if (step.kind === "if") return Math.max(deepest, 1 + depthOf(step.yes), 1 + depthOf(step.no));
    return deepest;
  }, 1);
}

export function isMove(step: Step): step is Move {
  return !["scan", "fetch", "goTo", "repeat", "if"].includes(step.kind);
}

/** The same line for people to read: a branch with nothing to do on yes asks the opposite instead. */
export function straightened(step: Step): Step {
  if (step.kind !== "if" || step.yes.length > 0 || step.no.length === 0) return step;
  const { ask, not } = step.when;
  return { ...step, when: { ask, not: !not }, yes: step.no, no: [] };
}
