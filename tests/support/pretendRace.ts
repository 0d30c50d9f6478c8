import type { Project } from "../../src/model/project.ts";
import type { Routine } from "../../src/model/routine.ts";
import { RandomStream } from "../../src/num/stream.ts";
import { LeaderRefining } from "../../src/search/leaderRefining.ts";
import { EVERY_BALL } from "../../src/search/objective.ts";
import { Race } from "../../src/search/race.ts";
import type { RaceAnswer, RaceWork } from "../../src/search/raceWork.ts";
import { LOSS_REASONS, type TrialBatch } from "../../src/trial/outcome.ts";

/** A project with one ball, for races whose trials are thrown like coins. */
export const coinProject = {
  name: "coins",
  balls: [{ kind: {}, count: 1, points: 1 }],
  rules: { timeLimitS: 60 },
  settings: { speedFracs: [1] },
  robot: { drive: { topSpeedMmPerS: 200, accelMmPerS2: 400 } },
} as unknown as Project;

/** Routine with a number and so many moves. */
export const coinRoutine = (number: number, moves = 1): Routine => ({
  id: `coin${number}`,
  pattern: "own",
  label: `coin ${number}`,
  params: {},
  moves: Array.from({ length: moves }, (_, i) => ({ kind: "wait", durationS: 1 + number / 1000 + i })),
});

/** Share of a trial's luck that all routines have in common. */
const SHARED = 0.5;
const stream = new RandomStream();

/** Trials of a routine with a rate of success: the same for a routine, seed and index, in whatever pieces they are run. */
export function tossBatch(number: number, rate: number, seed: number, from: number, to: number): TrialBatch {
  const delivered = new Uint8Array(to - from);
  for (let t = from; t < to; t++) {
    const isShared = stream.open(seed, t, 1).uniform() < SHARED;
    const luck = isShared ? stream.uniform() : stream.open(seed, t, 2 + number).uniform();
    delivered[t - from] = Number(luck < rate);
  }
  const losses = new Float64Array(LOSS_REASONS.length);
  losses[0] = delivered.reduce((sum, count) => sum + 1 - count, 0);
  const zeros = new Float64Array(to - from);
  return {
    from,
    to,
    delivered,
    timeS: zeros,
    points: Float64Array.from(delivered),
    losses,
    hashLow: number + from,
    hashHigh: to,
    jams: 0,
    stalls: 0,
  };
}

/** Runs a race of coins to its end. @param rates chance of each routine, by its number */
export function raceCoins(
  rates: readonly number[],
  {
    seed = 1,
    mostTrials = 60,
    budgetTrials = Number.POSITIVE_INFINITY,
    moves = (_: number): number => 1,
  } = {},
): Race {
  const own = rates.map((_, number) => coinRoutine(number, moves(number)));
  const settings = {
    project: coinProject,
    objective: EVERY_BALL,
    seed,
    mostTrials,
    budgetTrials,
    own,
    firstIds: [],
    moreIds: [],
  };
  const race = new Race(settings);
  runCoins(race, rates);
  return race;
}

/** Runs what a race of coins has to do. */
export function runCoins(race: Race, rates: readonly number[]): void {
  const work = race.run();
  for (let step = work.next(); !step.done; ) step = work.next(step.value.map((piece) => toss(piece, rates)));
}

/** The answer to one piece of a race's work. */
export function toss(work: RaceWork, rates: readonly number[]): RaceAnswer {
  if (work.kind === "make") {
    return { kind: "made", routines: work.ids.map((id) => (isCoin(id) ? coinRoutine(numberOf(id)) : null)) };
  }
  if (work.kind === "refiner") return { kind: "refiner", Refining: LeaderRefining };
  const number = numberOf(work.routine.id);
  return { kind: "ran", batch: tossBatch(number, rates[number] ?? 0, work.seed, work.from, work.to) };
}

const isCoin = (id: string): boolean => /^coin\d+$/.test(id);
const numberOf = (id: string): number => Number(id.slice("coin".length));
