import { describe, expect, it } from "vitest";
import type { Project } from "../../../src/model/project.ts";
import { generateRoutines } from "../../../src/plan/catalogue.ts";
import {
  DRIFT_FACTORS,
  type DriftFit,
  driftFitOf,
  driftPairs,
  fitDrift,
  likelihoodOf,
  scaledDrift,
} from "../../../src/practice/driftFit.ts";
import { testPlacements } from "../../../src/practice/testPlacements.ts";
import { driftFitWords } from "../../../src/report/practiceWords.ts";
import { compileTrial } from "../../../src/trial/compile.ts";
import { runTrial } from "../../../src/trial/run.ts";
import { shippedProject } from "../../support/projectFiles.ts";
import { seededNumbers } from "../../support/seededNumbers.ts";

/** Placements of a made-up routine: how much each suffers from drifting straights and from drifting turns. */
interface Placed {
  readonly byStraights: number;
  readonly byTurns: number;
}

const chance = ({ byStraights, byTurns }: Placed, straight: number, turn: number): number =>
  1 / (1 + Math.exp(-(2.5 - byStraights * straight - byTurns * turn)));

/** Simulated runs of each placement and pair of factors, as the command and the page make them. */
const RUNS = 60;

/** Practice with planted factors, and its fit from promises that are themselves counted in simulated runs, each pair with luck of its own. */
function fitted(placed: readonly Placed[], straight: number, turn: number, random: () => number): DriftFit {
  const outcomes = placed.map((each) => ({
    placement: [{ xMm: 0, yMm: 0 }],
    home: random() < chance(each, straight, turn) ? 1 : 0,
  }));
  const pairs = driftPairs().map(([s, t]) => {
    const promised = placed.map((each) => {
      let hits = 0;
      for (let run = 0; run < RUNS; run++) if (random() < chance(each, s, t)) hits++;
      return { homeCounts: [RUNS - hits, hits], runs: RUNS };
    });
    return likelihoodOf(promised, outcomes);
  });
  return driftFitOf(pairs);
}

/** Half of the placements suffer mostly from straights, the other half mostly from turns. */
const TELLING = Array.from({ length: 20 }, (_, i) =>
  i % 2 === 0 ? { byStraights: 1.3, byTurns: 0.05 } : { byStraights: 0.05, byTurns: 1.3 },
);
/** All suffer from both alike. */
const ALIKE = Array.from({ length: 20 }, () => ({ byStraights: 0.7, byTurns: 0.7 }));

describe("drift of straights and of turns, fitted to practice", () => {
  it("has intervals that hold the planted factors in 95 of 100 repetitions", () => {
    const random = seededNumbers(11);
    for (const [straight, turn] of [
      [1, 4],
      [2, 1],
      [2, 2],
    ] as const) {
      let [covered, both] = [0, 0];
      const REPEATS = 120;
      for (let n = 0; n < REPEATS; n++) {
        const fit = fitted(TELLING, straight, turn, random);
        if (fit.straight.low <= straight && straight <= fit.straight.high) covered++;
        if (fit.turn.low <= turn && turn <= fit.turn.high) both++;
      }
      expect(covered / REPEATS, `straights, ${straight} and ${turn}`).toBeGreaterThan(0.92);
      expect(both / REPEATS, `turns, ${straight} and ${turn}`).toBeGreaterThan(0.92);
    }
  });

  it("blames the planted one where the placements tell them apart", () => {
    const random = seededNumbers(5);
    const blames = (straight: number, turn: number) =>
      Array.from({ length: 30 }, () => fitted(TELLING, straight, turn, random).blame);
    const shareOf = (list: readonly string[], blame: string) =>
      list.filter((each) => each === blame).length / list.length;
    expect(shareOf(blames(1, 4), "turns")).toBeGreaterThan(0.8);
    expect(shareOf(blames(4, 1), "straights")).toBeGreaterThan(0.8);
    expect(shareOf(blames(4, 4), "both")).toBeGreaterThan(0.8);
    expect(shareOf(blames(1, 1), "none")).toBeGreaterThan(0.8);
  });

  it("says that it cannot tell them apart where every placement suffers from both", () => {
    const random = seededNumbers(7);
    const fits = Array.from({ length: 30 }, () => fitted(ALIKE, 1, 4, random));
    expect(fits.filter(({ blame }) => blame === "either").length).toBeGreaterThan(24);
    expect(driftFitWords(fits[0] as DriftFit)).toMatch(/cannot tell straights from turns/);
  });

  it("says what is possible, and that it may be more than was tried", () => {
    const at = (straight: number, turn: number) => -9 * Math.abs(straight - 4) - 9 * Math.abs(turn - 2);
    const fit = driftFitOf(driftPairs().map(([s, t]) => ({ logLikelihood: at(s, t), variance: 0.1 })));
    expect(fit).toMatchObject({
      straight: { factor: 4, low: 4, high: 4, openBelow: false, openAbove: true },
      turn: { factor: 2, low: 2, high: 2, openBelow: false, openAbove: false },
      blame: "both",
    });
    expect(driftFitWords(fit)).toContain("straights that drift 4 times (possible: 4 to 4 or more)");
    expect(fit.logLikelihoods[DRIFT_FACTORS.indexOf(0.5)]?.[DRIFT_FACTORS.indexOf(1)]).toBe(at(0.5, 1));
  });
});

const project = shippedProject();
const routine = [...generateRoutines(project)].sort((a, b) => a.moves.length - b.moves.length)[0];
if (routine === undefined) throw new Error("no routine");
const drifting = (straight: number, turn: number): Project => ({
  ...project,
  robot: { ...project.robot, drift: scaledDrift(project.robot.drift, straight, turn) },
});

describe("drift that is made larger", () => {
  it("is that of straights or of turns; means and start stay", () => {
    const { drift } = project.robot;
    const straights = scaledDrift(drift, 3, 1);
    expect(straights.systematic.turnScaleSd).toBe(drift.systematic.turnScaleSd);
    expect(straights.systematic.distanceScaleSd).toBe(3 * drift.systematic.distanceScaleSd);
    expect(straights.random.turnSdRad).toBe(drift.random.turnSdRad);
    const turns = scaledDrift(drift, 1, 3);
    expect(turns.random.distanceSdFrac).toBe(drift.random.distanceSdFrac);
    expect(turns.random.turnSdRad).toBe(3 * drift.random.turnSdRad);
    expect(turns.start).toBe(drift.start);
    expect(turns.systematic.turnScaleMean).toBe(drift.systematic.turnScaleMean);
    expect(scaledDrift(drift, 1, 1)).toEqual(drift);
  });

  it("is found again in simulated practice with planted turns", () => {
    const real = drifting(1, 4);
    const outcomes = testPlacements(project, 12, 1).map((placement, i) => ({
      placement,
      home: runTrial(compileTrial(real, routine, { placement }), 99, i).delivered.filter(Boolean).length,
    }));
    const { turn, logLikelihoods } = fitDrift(project, routine, outcomes, { runs: 10, seed: 5 });
    expect(turn.high).toBe(4);
    const at = DRIFT_FACTORS.indexOf(1);
    expect(logLikelihoods[at]?.[3]).toBeGreaterThan(logLikelihoods[at]?.[0] ?? 0);
  });
});
