import type { Move } from "../../model/routine.ts";
import type { Pose } from "../../motion/pose.ts";
import { type Approach, approachTo } from "./approach.ts";
import type { LyingBall } from "./ballGuard.ts";
import { distanceTo, type Trip, type TripMaker, tripFrom } from "./trip.ts";
import { leastWithBall, type TripChoice, tripChoices, tripsAhead } from "./tripChoices.ts";

/** A trip as part of a sequence, with the way to its start. */
export interface Leg {
  readonly trip: Trip;
  readonly approach: Approach;
  /** Seconds of the sequence at which the leg begins, and at which its balls are home. */
  readonly startS: number;
  readonly homeS: number;
}

export interface FoundSequence {
  readonly legs: readonly Leg[];
  readonly moves: readonly Move[];
  readonly timeS: number;
  /** False where the search was cut short: a better sequence may exist. */
  readonly exact: boolean;
}

/** Ways and trips built before the search settles for the best so far: about a tenth of a second. */
const MOST_WORK = 1500;

/**
 * The order, grouping and approaches that bring most balls home within the time, and among these the quickest: depth first
 * over legs, the most promising first, each evaluated exactly by the moves that would be run; branches are cut where even
 * straight lines at full speed could not beat the best so far (branch and bound, Land and Doig 1960).
 */
export class SequenceSearch {
  private readonly maker: TripMaker;
  private readonly balls: readonly LyingBall[];
  private readonly limitS: number;
  private readonly choices: readonly TripChoice[];
  private readonly leastWith: readonly number[];
  private readonly trips = new Map<string, Trip | null>();
  private readonly ways = new Map<string, Approach | null>();
  private work = 0;
  private bestLegs: readonly Leg[] = [];
  private bestHome = 0;
  private bestS = Number.POSITIVE_INFINITY;

  constructor(maker: TripMaker, balls: readonly LyingBall[], limitS: number) {
    this.maker = maker;
    this.balls = balls;
    this.limitS = limitS;
    this.choices = tripChoices(maker, balls);
    this.leastWith = balls.map((ball) => leastWithBall(maker, ball));
  }

  run(from: Pose): FoundSequence {
    this.extend(from, (1 << this.balls.length) - 1, 0, 0, []);
    const legs = this.bestLegs;
    return {
      legs,
      moves: legs.flatMap((leg) => [...leg.approach.moves, ...leg.trip.moves]),
      timeS: legs.reduce((sum, leg) => sum + leg.approach.timeS + leg.trip.timeS, 0),
      exact: this.work < MOST_WORK,
    };
  }

  private extend(pose: Pose, left: number, timeS: number, home: number, legs: readonly Leg[]): void {
    const lastS = legs.length === 0 ? 0 : (legs[legs.length - 1]?.homeS ?? 0);
    if (home > this.bestHome || (home === this.bestHome && lastS < this.bestS)) {
      this.bestHome = home;
      this.bestS = lastS;
      this.bestLegs = legs;
    }
    if (left === 0) return;
    for (const { choice, leastS } of this.promising(pose, left, timeS)) {
      if (this.work >= MOST_WORK) return;
      if (home + bitsIn(left) <= this.bestHome && leastS >= this.bestS) break;
      const trip = this.tripOf(choice, left);
      if (trip === null) continue;
      const approachLeast = distanceTo(pose, trip.start) / this.maker.builder.scene.topSpeedMmPerS;
      const after = left & ~choice.bits;
      const rest = this.restLeast(after);
      if (this.isWorse(home + bitsIn(left), timeS + approachLeast + trip.homeS + rest)) continue;
      const approach = this.wayTo(pose, choice, left);
      if (approach === null) continue;
      const homeS = timeS + approach.timeS + trip.homeS;
      if (homeS > this.limitS || this.isWorse(home + bitsIn(left), homeS + rest)) continue;
      const leg: Leg = { trip, approach, startS: timeS, homeS };
      const endS = timeS + approach.timeS + trip.timeS;
      this.extend(trip.end, after, endS, home + choice.balls.length, [...legs, leg]);
    }
  }

  /** Cannot bring more balls home than the best, nor as many sooner. */
  private isWorse(most: number, leastS: number): boolean {
    return most < this.bestHome || (most === this.bestHome && leastS >= this.bestS);
  }

  private promising(
    pose: Pose,
    left: number,
    timeS: number,
  ): readonly { readonly choice: TripChoice; readonly leastS: number }[] {
    const speed = this.maker.builder.scene.topSpeedMmPerS;
    const open = this.choices.filter(({ bits }) => (bits & left) === bits);
    return [...tripsAhead(this.maker, pose, open), ...open]
      .map((choice) => ({
        choice,
        leastS:
          timeS +
          distanceTo(pose, choice.start) / speed +
          choice.leastS +
          this.restLeast(left & ~choice.bits),
      }))
      .sort((a, b) => a.leastS - b.leastS || a.choice.id - b.choice.id);
  }

  /** No way of bringing these balls home as well takes less than it takes for the farthest of them. */
  private restLeast(left: number): number {
    let most = 0;
    for (let i = 0; i < this.balls.length; i++) {
      if (((left >> i) & 1) === 1) most = Math.max(most, this.leastWith[i] ?? 0);
    }
    return most;
  }

  private lyingOf(left: number): readonly LyingBall[] {
    return this.balls.filter((_, i) => ((left >> i) & 1) === 1);
  }

  private tripOf(choice: TripChoice, left: number): Trip | null {
    const { xMm, yMm, headingRad } = choice.start;
    const key = `${choice.id} ${left} ${xMm} ${yMm} ${headingRad}`;
    const known = this.trips.get(key);
    if (known !== undefined) return known;
    this.work++;
    const trip = tripFrom(this.maker, choice.start, choice.balls, this.lyingOf(left));
    this.trips.set(key, trip);
    return trip;
  }

  private wayTo(pose: Pose, choice: TripChoice, left: number): Approach | null {
    if (choice.start === pose) return { moves: [], timeS: 0 };
    const { xMm, yMm, headingRad } = pose;
    const key = `${xMm} ${yMm} ${headingRad} ${choice.start.xMm} ${choice.start.yMm} ${choice.start.headingRad} ${left}`;
    const known = this.ways.get(key);
    if (known !== undefined) return known;
    this.work++;
    const found = approachTo(this.maker, pose, choice.start, this.lyingOf(left));
    this.ways.set(key, found);
    return found;
  }
}

function bitsIn(bits: number): number {
  let count = 0;
  for (let rest = bits; rest !== 0; rest &= rest - 1) count++;
  return count;
}
