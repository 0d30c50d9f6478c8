import type { Pose } from "../../src/motion/pose.ts";
import { approachTo } from "../../src/plan/push/approach.ts";
import type { LyingBall } from "../../src/plan/push/ballGuard.ts";
import { tripFrom } from "../../src/plan/push/trip.ts";
import { tripChoices, tripsAhead } from "../../src/plan/push/tripChoices.ts";
import type { TripMaker } from "../../src/plan/push/tripMaker.ts";

/** How many balls are home, and when the last of them is. */
export interface Homecoming {
  readonly home: number;
  readonly lastS: number;
}

export function isBetter(a: Homecoming, b: Homecoming): boolean {
  return a.home > b.home || (a.home === b.home && a.lastS < b.lastS);
}

/** One leg that could come next. */
interface NextLeg {
  readonly homeS: number;
  readonly endS: number;
  readonly end: Pose;
  readonly left: number;
  readonly count: number;
}

function nextLegs(
  maker: TripMaker,
  balls: readonly LyingBall[],
  pose: Pose,
  left: number,
  timeS: number,
): readonly NextLeg[] {
  const lying = balls.filter((_, i) => ((left >> i) & 1) === 1);
  const open = tripChoices(maker, balls).filter(({ bits }) => (bits & left) === bits);
  return [...tripsAhead(maker, pose, open), ...open].flatMap((choice): NextLeg[] => {
    const trip = tripFrom(maker, choice.start, choice.balls, lying);
    if (trip === null) return [];
    const way = choice.start === pose ? { timeS: 0 } : approachTo(maker, pose, choice.start, lying);
    if (way === null) return [];
    const startS = timeS + way.timeS;
    const count = choice.balls.length;
    return [
      {
        homeS: startS + trip.homeS,
        endS: startS + trip.timeS,
        end: trip.end,
        left: left & ~choice.bits,
        count,
      },
    ];
  });
}

/** Every order, grouping and side of the same building blocks, nothing left out and nothing bounded. */
export function bruteSequence(
  maker: TripMaker,
  balls: readonly LyingBall[],
  from: Pose,
  limitS: number,
): Homecoming {
  let best: Homecoming = { home: 0, lastS: 0 };
  const extend = (pose: Pose, left: number, timeS: number, reached: Homecoming): void => {
    if (isBetter(reached, best)) best = reached;
    if (left === 0) return;
    for (const leg of nextLegs(maker, balls, pose, left, timeS)) {
      if (leg.homeS > limitS) continue;
      extend(leg.end, leg.left, leg.endS, { home: reached.home + leg.count, lastS: leg.homeS });
    }
  };
  extend(from, (1 << balls.length) - 1, 0, { home: 0, lastS: 0 });
  return best;
}

/** Always the trip that brings something home the soonest. */
export function greedySequence(
  maker: TripMaker,
  balls: readonly LyingBall[],
  from: Pose,
  limitS: number,
): Homecoming {
  let reached: Homecoming = { home: 0, lastS: 0 };
  let at = { pose: from, left: (1 << balls.length) - 1, timeS: 0 };
  for (;;) {
    const legs = nextLegs(maker, balls, at.pose, at.left, at.timeS).filter(({ homeS }) => homeS <= limitS);
    const [first, ...others] = legs;
    if (first === undefined) return reached;
    const soonest = others.reduce((best, leg) => (leg.homeS < best.homeS ? leg : best), first);
    reached = { home: reached.home + soonest.count, lastS: soonest.homeS };
    at = { pose: soonest.end, left: soonest.left, timeS: soonest.endS };
  }
}
