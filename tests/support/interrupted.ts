import type { TrialPlan } from "../../src/trial/plan.ts";
import {
  carried,
  hash,
  home,
  homeAtS,
  jamMove,
  jamS,
  jamX,
  jamY,
  leftMove,
  leftS,
  result,
  touched,
  touchMove,
  touchS,
  wasHome,
  wasJammed,
} from "../../src/trial/result.kernel.ts";
import { driveOn, endRun, isTimeUp, openRun, run } from "../../src/trial/run.kernel.ts";
import { placementOf, planFor } from "../../src/trial/run.ts";
import { lossOf } from "../../src/trial/verdict.ts";
import { ballsInPlay } from "../../src/trial/wake.kernel.ts";
import { KeptWorld } from "../../src/trial/world.kernel.ts";

/** All that the run just finished has come to. */
function tale(): unknown {
  const balls = Array.from({ length: ballsInPlay() }, (_, i) => ({
    touched: touched[i] === 1 ? [touchS[i], touchMove[i]] : null,
    home: home[i],
    wasHome: wasHome[i] === 1 ? homeAtS[i] : null,
    jam: wasJammed[i] === 1 ? [jamX[i], jamY[i], jamS[i], jamMove[i]] : null,
    carried: carried[i],
    loss: lossOf(i),
    left: ["rolled-out", "left-wedge"].includes(lossOf(i) ?? "") ? [leftS[i], leftMove[i]] : null,
  }));
  return { balls, result: { ...result }, hash: hash.hex() };
}

/** A trial run alone. */
export function uninterrupted(whole: TrialPlan, seed: number, index: number): unknown {
  const plan = planFor(whole, seed, index);
  run(plan, seed, index, placementOf(plan, seed, index), null);
  return tale();
}

/** The same trial, but after each of its moves the moves of another list are run to their end from there before it goes on. */
export function interrupted(whole: TrialPlan, other: TrialPlan, seed: number, index: number): unknown {
  const plan = planFor(whole, seed, index);
  const intruder = planFor(other, seed, index);
  const world = new KeptWorld();
  openRun(plan, seed, index, placementOf(plan, seed, index), null);
  for (let m = 0; m <= plan.routine.moves.length && !isTimeUp(plan); m++) {
    driveOn(plan, m);
    world.keep(plan);
    driveOn(intruder, intruder.routine.moves.length);
    endRun(intruder);
    world.takeUp(plan);
  }
  endRun(plan);
  return tale();
}
