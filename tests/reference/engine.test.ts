import { beforeAll, describe, expect, it } from "vitest";
import type { Project } from "../../src/model/project.ts";
import type { Routine } from "../../src/model/routine.ts";
import { nominalCourse } from "../../src/motion/course.ts";
import { Moments } from "../../src/num/moments.ts";
import { compileTrial } from "../../src/trial/compile.ts";
import type { TrialOutcome } from "../../src/trial/outcome.ts";
import { runTrial } from "../../src/trial/run.ts";
import { openFans, tightFans } from "../support/frictionless.ts";
import { type PlanckOutcome, PlanckTrial } from "../support/planckTrial.ts";
import { referenceProject } from "../support/referenceProject.ts";

/**
 * The same trials by the engine and by planck: same zone, footprint, placements, drift and robot motion, so that only the
 * balls' motion differs. Single trials part (a ball that just touches an arm tip or just does not), so means are compared,
 * paired by placement: they may differ by their sampling error only.
 */

const SEED = 2;
const TRIALS = 300;
/** Means this many paired standard errors apart would be called different. */
const BOUND_SE = 2.5;

interface Pairs {
  readonly ours: readonly TrialOutcome[];
  readonly theirs: readonly PlanckOutcome[];
}

interface PairOptions {
  readonly trials: number;
  readonly contactStepS?: number;
  readonly planckStepS?: number;
}

function pairsOf(project: Project, routine: Routine, options: PairOptions): Pairs {
  const { trials, contactStepS, planckStepS } = options;
  const plan = compileTrial(project, routine, contactStepS === undefined ? {} : { contactStepS });
  const planck = new PlanckTrial(plan, planckStepS === undefined ? {} : { stepS: planckStepS });
  const indices = Array.from({ length: trials }, (_, i) => i);
  return {
    theirs: indices.map((i) => planck.run(SEED, i)),
    ours: indices.map((i) => runTrial(plan, SEED, i)),
  };
}

function count(flags: readonly boolean[]): number {
  return flags.filter(Boolean).length;
}

/** Mean and standard error of a difference, ours minus planck's, trial by trial. */
function difference(
  { ours, theirs }: Pairs,
  of: (our: TrialOutcome, their: PlanckOutcome) => number,
): Moments {
  const moments = new Moments();
  for (const [i, our] of ours.entries()) moments.add(of(our, theirs[i]!));
  return moments;
}

const deliveredMore = (our: TrialOutcome, their: PlanckOutcome): number =>
  count(our.delivered) - count(their.delivered);
const rolledOutMore = (our: TrialOutcome, their: PlanckOutcome): number =>
  our.losses.filter((loss) => loss === "rolled-out").length - count(their.out);

/** A ball that took quite another way counts as this far apart, mm: the mean would be a matter of five balls otherwise. */
const ANOTHER_WAY_MM = 50;

/** How far along x or y the balls of a trial end apart, on average, mm. */
function endsFarther(axis: "xMm" | "yMm") {
  return (our: TrialOutcome, their: PlanckOutcome): number => {
    const apart = our.endPositions.map((end, ball) => {
      const mm = end[axis] - their.endPositions[ball]![axis];
      return Math.max(-ANOTHER_WAY_MM, Math.min(ANOTHER_WAY_MM, mm));
    });
    return apart.reduce((sum, mm) => sum + mm, 0) / apart.length;
  };
}

/** A quarter of the moved balls end nearer to each other than this, mm: those that had little occasion to part. */
function quarterApartMm({ ours, theirs }: Pairs): number {
  const apart: number[] = [];
  for (const [i, { placement, endPositions }] of ours.entries()) {
    for (const [ball, end] of endPositions.entries()) {
      const other = theirs[i]!.endPositions[ball]!;
      const start = placement[ball]!;
      if (end.xMm === start.xMm && end.yMm === start.yMm) continue;
      apart.push(Math.hypot(end.xMm - other.xMm, end.yMm - other.yMm));
    }
  }
  return apart.sort((a, b) => a - b)[Math.floor(apart.length / 4)]!;
}

function expectWithinError(moments: Moments, largestSe: number): void {
  // An error this small makes the comparison mean something.
  expect(moments.standardError).toBeLessThan(largestSe);
  expect(Math.abs(moments.mean)).toBeLessThan(BOUND_SE * moments.standardError);
}

const project = referenceProject();

describe("balls in the open, against planck", () => {
  const routine = openFans(project);
  let pairs: Pairs;

  // planck sees the robot's touch up to a step late, and where balls end shifts with it: 1/240 s shows by some mm.
  beforeAll(() => {
    pairs = pairsOf(project, routine, { trials: TRIALS, planckStepS: 1 / 480 });
  }, 600_000);

  it("is a scene without walls in the way, in which balls are delivered", () => {
    expect(nominalCourse(project, routine.moves).blockedMoves).toEqual([]);
    const { mean, variance } = difference(pairs, (our) => count(our.delivered));
    expect(mean).toBeGreaterThan(0.7);
    expect(variance).toBeGreaterThan(0.3);
  });

  it("as many are delivered", () => {
    expectWithinError(difference(pairs, deliveredMore), 0.04);
  });

  it("they end at the same places on average", () => {
    expectWithinError(difference(pairs, endsFarther("xMm")), 1);
    expectWithinError(difference(pairs, endsFarther("yMm")), 1);
  });

  it("what parts the two is planck's step: with four times that step, balls end farther from the engine's", () => {
    const coarse = pairsOf(project, routine, { trials: 100, contactStepS: 1 / 960, planckStepS: 1 / 240 });
    const fine = { ours: coarse.ours, theirs: pairs.theirs.slice(0, 100) };
    expect(quarterApartMm(fine)).toBeLessThan(0.6 * quarterApartMm(coarse));
  }, 600_000);
});

describe("balls squeezed between the robot and the walls, against planck", () => {
  const routine = tightFans(project);
  let pairs: Pairs;

  // Without friction nothing jams by the cone rule; how narrow a wedge still lets a ball escape depends on the step then.
  beforeAll(() => {
    pairs = pairsOf(project, routine, { trials: TRIALS, contactStepS: 1 / 240 });
  }, 600_000);

  it("is a scene in which walls stop the robot, and balls leave through the doorway", () => {
    expect(nominalCourse(project, routine.moves).blockedMoves.length).toBeGreaterThan(5);
    const stalled = difference(pairs, (our) => our.stalls);
    expect(stalled.mean).toBeGreaterThan(5);
    const out = difference(pairs, (_, their) => count(their.out));
    expect(out.mean * TRIALS).toBeGreaterThan(5);
  });

  it("as many are delivered, and as many leave", () => {
    expectWithinError(difference(pairs, deliveredMore), 0.02);
    expectWithinError(difference(pairs, rolledOutMore), 0.02);
  });

  it("no ball ends in a wall, or nowhere", () => {
    const { widthMm, heightMm } = project.zone;
    for (const { losses, endPositions } of pairs.ours) {
      for (const [ball, { xMm, yMm }] of endPositions.entries()) {
        if (losses[ball] === "rolled-out") continue;
        expect(Math.min(xMm, widthMm - xMm)).toBeGreaterThan(19.9);
        expect(Math.min(yMm, heightMm - yMm)).toBeGreaterThan(0);
      }
    }
  });
});
