import type { Move } from "../../model/routine.ts";
import type { Pose } from "../../motion/pose.ts";
import { type Approach, approachTo } from "./approach.ts";
import type { LyingBall } from "./ballGuard.ts";
import { distanceTo } from "./fromRobot.ts";
import { tripByShove } from "./shove.ts";
import { type Trip, tripFrom } from "./trip.ts";
import { leastWithBall, type TripChoice, tripChoices, tripsAhead } from "./tripChoices.ts";
import type { TripMaker } from "./tripMaker.ts";

/** A trip as part of a sequence, with the way to its start. */
export interface Leg {
  readonly trip: Trip;
  readonly approach: Approach;
  /** Seconds of the sequence at which the leg begins, and at which its balls are home. */
  readonly startS: number;
  readonly homeS: number;
  /** Under which the trip is known. */
  readonly key: string;
}

/** Which balls, by number, are home after some moves. */
export type Verdict = (moves: readonly Move[]) => readonly boolean[];

export interface FoundSequence {
  readonly legs: readonly Leg[];
  readonly moves: readonly Move[];
  readonly timeS: number;
  /** False where the search was cut short: a better sequence may exist. */
  readonly exact: boolean;
}

/** Where the robot stands after some legs, with the balls still to be fetched as bits. */
interface Standing {
  readonly pose: Pose;
  readonly left: number;
  readonly timeS: number;
  /** Balls fetched so far. */
  readonly home: number;
  readonly legs: readonly Leg[];
}

/** A trip that could come next; its balls are not home before `leastHomeS`, nor all others as well before `leastS`. */
interface Prospect {
  readonly choice: TripChoice;
  readonly leastHomeS: number;
  readonly leastS: number;
}

/** Ways and trips built before the search settles for the best so far: about a tenth of a second. */
const MOST_WORK = 1500;

/** What a verdict counts as, in ways and trips built. */
const VERDICT_WORK = 3;

/**
 * The order, grouping and approaches that bring most balls home within the time, and among these the quickest: depth first
 * over legs, the most promising first, each evaluated exactly by the moves that would be run; branches are cut where even
 * straight lines at full speed could not beat the best so far (branch and bound, Land and Doig 1960). It begins with always
 * taking the soonest trip, so that it is never worse than that even where it is cut short. What a verdict finds to lose its ball is
 * not tried again: nothing is taken for the best that has not stood the verdict.
 */
export class SequenceSearch {
  private readonly maker: TripMaker;
  private readonly balls: readonly LyingBall[];
  private readonly limitS: number;
  private readonly choices: readonly TripChoice[];
  private readonly leastWith: readonly number[];
  private readonly trips = new Map<string, Trip | null>();
  private readonly roomy = new Map<number, boolean>();
  private readonly ways = new Map<string, Approach | null>();
  private readonly verdict: Verdict | null;
  /** Legs that stood the verdict after those before them. */
  private readonly sure = new Set<Leg>();
  /** The place of a leg that did not: everything built on it is left. −1: none. */
  private cutAt = -1;
  private work = 0;
  private bestLegs: readonly Leg[] = [];
  private bestHome = 0;
  private bestS = 0;

  constructor(maker: TripMaker, balls: readonly LyingBall[], limitS: number, verdict: Verdict | null = null) {
    this.verdict = verdict;
    this.maker = maker;
    this.balls = balls;
    this.limitS = limitS;
    this.choices = tripChoices(maker, balls);
    this.leastWith = balls.map((ball) => leastWithBall(maker, ball));
  }

  run(from: Pose): FoundSequence {
    this.takeSoonest(from);
    this.extend({ pose: from, left: (1 << this.balls.length) - 1, timeS: 0, home: 0, legs: [] });
    const legs = this.bestLegs;
    return {
      legs,
      moves: movesOf(legs),
      timeS: legs.reduce((sum, leg) => sum + leg.approach.timeS + leg.trip.timeS, 0),
      exact: this.work < MOST_WORK,
    };
  }

  /** Always the trip that brings something home the soonest. */
  private takeSoonest(from: Pose): void {
    let at: Standing = { pose: from, left: (1 << this.balls.length) - 1, timeS: 0, home: 0, legs: [] };
    while (at.left !== 0 && this.work < MOST_WORK) {
      let soonest: Leg | null = null;
      let taken = 0;
      for (const { choice, leastHomeS } of this.promising(at)) {
        if (soonest !== null && leastHomeS >= soonest.homeS) continue;
        const leg = this.legTo(at, choice, soonest?.homeS ?? Number.POSITIVE_INFINITY);
        if (leg === null) continue;
        soonest = leg;
        taken = choice.bits;
      }
      if (soonest === null) return;
      const next = after(at, soonest, taken);
      if (this.accept(next)) at = next;
      this.cutAt = -1;
    }
  }

  private extend(at: Standing): void {
    if (this.isBetter(at) && !this.accept(at)) return;
    if (at.left === 0) return;
    for (const { choice, leastS } of this.promising(at)) {
      if (this.work >= MOST_WORK) return;
      const most = at.home + bitsIn(at.left);
      if (most <= this.bestHome && leastS >= this.bestS) break;
      const rest = this.restLeast(at.left & ~choice.bits);
      const latest = most > this.bestHome ? Number.POSITIVE_INFINITY : this.bestS - rest;
      const leg = this.legTo(at, choice, latest);
      if (leg === null) continue;
      this.extend(after(at, leg, choice.bits));
      if (this.cutAt >= 0 && this.cutAt < at.legs.length) return;
      this.cutAt = -1;
    }
  }

  /** The trip and the way to it; null where there is none, or where its balls would not be home before the latest second. */
  private legTo(at: Standing, choice: TripChoice, latestS: number): Leg | null {
    if (choice.start !== at.pose && !this.canStand(choice, at.left)) return null;
    const { trip, key } = this.tripOf(choice, at.left);
    if (trip === null) return null;
    const speed = this.maker.builder.scene.topSpeedMmPerS;
    if (at.timeS + distanceTo(at.pose, trip.start) / speed + trip.homeS >= latestS) return null;
    const approach = this.wayTo(at.pose, choice, at.left);
    if (approach === null) return null;
    const homeS = at.timeS + approach.timeS + trip.homeS;
    return homeS > this.limitS || homeS >= latestS ? null : { trip, approach, startS: at.timeS, homeS, key };
  }

  private isBetter({ home, legs }: Standing): boolean {
    return home > this.bestHome || (home === this.bestHome && lastHomeS(legs) < this.bestS);
  }

  /** Takes it for the best so far, if it stands the verdict. */
  private accept({ home, legs }: Standing): boolean {
    this.cutAt = this.firstLost(legs);
    const lost = legs[this.cutAt];
    if (lost !== undefined) {
      this.trips.set(lost.key, null);
      return false;
    }
    this.bestHome = home;
    this.bestS = lastHomeS(legs);
    this.bestLegs = legs;
    return true;
  }

  /** Place of the first leg after which one of the balls fetched until then is not home; −1: there is none. */
  private firstLost(legs: readonly Leg[]): number {
    if (this.verdict === null) return -1;
    for (const [i, leg] of legs.entries()) {
      if (this.sure.has(leg)) continue;
      this.work += VERDICT_WORK;
      const until = legs.slice(0, i + 1);
      const home = this.verdict(movesOf(until));
      if (until.some(({ trip }) => trip.balls.some((ball) => home[ball] !== true))) return i;
      this.sure.add(leg);
    }
    return -1;
  }

  private promising({ pose, left, timeS }: Standing): readonly Prospect[] {
    const speed = this.maker.builder.scene.topSpeedMmPerS;
    const open = this.choices.filter(({ bits }) => (bits & left) === bits);
    return [...tripsAhead(this.maker, pose, open), ...open]
      .map((choice) => {
        const leastHomeS = timeS + distanceTo(pose, choice.start) / speed + choice.leastS;
        return { choice, leastHomeS, leastS: leastHomeS + this.restLeast(left & ~choice.bits) };
      })
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

  /** Whether no ball lies where the robot has to stand at the start of a trip. */
  private canStand(choice: TripChoice, left: number): boolean {
    const key = (choice.id << this.balls.length) | left;
    const known = this.roomy.get(key);
    if (known !== undefined) return known;
    const found = this.maker.guard.canStand(choice.start, this.lyingOf(left));
    this.roomy.set(key, found);
    return found;
  }

  private tripOf(choice: TripChoice, left: number): { readonly trip: Trip | null; readonly key: string } {
    const { xMm, yMm, headingRad } = choice.start;
    const key = `${choice.id} ${left} ${xMm} ${yMm} ${headingRad}`;
    const known = this.trips.get(key);
    if (known !== undefined) return { trip: known, key };
    this.work++;
    const lying = this.lyingOf(left);
    const trip = choice.shoves
      ? tripByShove(this.maker, choice.start, choice.balls, lying)
      : tripFrom(this.maker, choice.start, choice.balls, lying);
    this.trips.set(key, trip);
    return { trip, key };
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

function after({ left, home, legs }: Standing, leg: Leg, bits: number): Standing {
  const timeS = leg.startS + leg.approach.timeS + leg.trip.timeS;
  return {
    pose: leg.trip.end,
    left: left & ~bits,
    timeS,
    home: home + leg.trip.balls.length,
    legs: [...legs, leg],
  };
}

function lastHomeS(legs: readonly Leg[]): number {
  return legs[legs.length - 1]?.homeS ?? 0;
}

function movesOf(legs: readonly Leg[]): readonly Move[] {
  return legs.flatMap((leg) => [...leg.approach.moves, ...leg.trip.moves]);
}
