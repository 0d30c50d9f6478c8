import type { Pose } from "../../motion/pose.ts";
import { type Approach, approachTo } from "./approach.ts";
import type { LyingBall } from "./ballGuard.ts";
import { distanceTo } from "./fromRobot.ts";
import { startsFor } from "./starts.ts";
import { type Trip, tripFrom } from "./trip.ts";
import { leastTime, tripsAhead } from "./tripChoices.ts";
import type { TripMaker } from "./tripMaker.ts";

/** A trip and the way to its start. */
export interface SoonestTrip {
  readonly approach: Approach;
  readonly trip: Trip;
  /** Seconds until its ball is home. */
  readonly homeS: number;
}

/** Trips and ways that are looked at for one ball before the best of them is taken. */
const MOST_LOOKS = 12;

/**
 * The trip with one ball that is home the soonest, from any side, keeping clear of all others; null where there is none that is
 * home before `beforeS`. The starts that could be soonest are looked at first, and no more of them than can still win.
 */
export function soonestTrip(
  maker: TripMaker,
  from: Pose,
  ball: LyingBall,
  others: readonly LyingBall[],
  beforeS: number,
): SoonestTrip | null {
  const speed = maker.builder.scene.topSpeedMmPerS;
  const lying = [ball, ...others];
  const balls = [ball];
  const choices = startsFor(maker, ball).map((start, id) => ({
    ...{ id, balls, bits: 1, start, shoves: false },
    leastS: leastTime(maker, start, balls),
  }));
  const rated = [...tripsAhead(maker, from, choices.slice(0, 1)), ...choices]
    .map(({ start, leastS }) => ({ start, leastS: leastS + distanceTo(from, start) / speed }))
    .sort((a, b) => a.leastS - b.leastS);
  let best: SoonestTrip | null = null;
  let latestS = beforeS;
  let looks = 0;
  for (const { start, leastS } of rated) {
    if (leastS >= latestS || looks === MOST_LOOKS) break;
    looks++;
    const trip = tripFrom(maker, start, balls, lying);
    if (trip === null || distanceTo(from, start) / speed + trip.homeS >= latestS) continue;
    const approach = start === from ? { moves: [], timeS: 0 } : approachTo(maker, from, start, lying);
    if (approach === null || approach.timeS + trip.homeS >= latestS) continue;
    latestS = approach.timeS + trip.homeS;
    best = { approach, trip, homeS: latestS };
  }
  return best;
}
