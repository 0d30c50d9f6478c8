import { ballsOf, type Project } from "../model/project.ts";
import type { TrialBatch } from "../trial/outcome.ts";

/** What a search is after. It knows how to score trials and which of two means is better; search code asks, and never compares itself. */
export interface Objective {
  readonly id: "every-ball" | "points" | "home-by";
  /** When the clock stops, s; null: at the time limit. */
  readonly bySecondS: number | null;
  /** The project whose trials are scored: the same, or with another time limit. */
  projectFor(project: Project): Project;
  /** One score per trial of the batch, each in [0, 1]. */
  scoresOf(batch: TrialBatch, project: Project): Float64Array;
  /** Whether a mean score is better than another one. */
  isBetter(a: number, b: number): boolean;
}

const higher = (a: number, b: number): boolean => a > b;
const same = (project: Project): Project => project;

/** Share of runs with every ball home. */
export const EVERY_BALL: Objective = {
  id: "every-ball",
  bySecondS: null,
  projectFor: same,
  scoresOf: (batch, project) => {
    const balls = ballsOf(project).length;
    return Float64Array.from(batch.delivered, (count) => Number(count === balls));
  },
  isBetter: higher,
};

/** Expected points, as a share of all there are; with no points to earn every score is 0. */
export const EXPECTED_POINTS: Objective = {
  id: "points",
  bySecondS: null,
  projectFor: same,
  scoresOf: (batch, project) => {
    const most = project.balls.reduce((sum, { count, points }) => sum + count * points, 0);
    return Float64Array.from(batch.points, (points) => (most > 0 ? points / most : 0));
  },
  isBetter: higher,
};

/**
 * Share of the balls that are home when the clock stops at a given second.
 *
 * @param second above 0; later than the time limit is the time limit
 */
export function homeBy(second: number): Objective {
  if (!(second > 0)) throw new RangeError(`home by second ${second}; expected more than 0`);
  return {
    id: "home-by",
    bySecondS: second,
    projectFor: (project) => {
      const timeLimitS = Math.min(second, project.rules.timeLimitS);
      return { ...project, rules: { ...project.rules, timeLimitS } };
    },
    scoresOf: (batch, project) => {
      const balls = ballsOf(project).length;
      return Float64Array.from(batch.delivered, (count) => count / balls);
    },
    isBetter: higher,
  };
}

/** How objectives are named where somebody chooses one; N a second. */
export const OBJECTIVE_NAMES = ["every-ball", "points", "home-by-N"] as const;

/** "every-ball", "points", "home-by-60"; null for anything else. */
export function objectiveNamed(name: string): Objective | null {
  if (name === EVERY_BALL.id) return EVERY_BALL;
  if (name === EXPECTED_POINTS.id) return EXPECTED_POINTS;
  const [, second] = name.match(/^home-by-([1-9]\d{0,3})$/) ?? [];
  return second === undefined ? null : homeBy(Number(second));
}

/** The name by which `objectiveNamed` finds it. */
export function nameOf({ id, bySecondS }: Objective): string {
  return bySecondS === null ? id : `${id}-${bySecondS}`;
}
