import type { Move } from "../model/routine.ts";
import type { PointMm } from "../model/zone.ts";
import type { Pose } from "../motion/pose.ts";
import { RoutineBuilder } from "./builder.ts";
import type { Frame } from "./frame.ts";
import type { LyingBall } from "./push/ballGuard.ts";
import { makerFor } from "./push/pushSequence.ts";
import { soonestTrip } from "./push/soonestTrip.ts";
import type { TripMaker } from "./push/tripMaker.ts";
import type { Scene } from "./scene.ts";

/** Fetches as a push sequence would: the ball is kept all the way by the same rules, and nothing else is touched. In the frame. */
export class TripFetcher {
  private readonly frame: Frame;
  private readonly scene: Scene;
  private readonly radiusMm: number;
  private readonly makers = new Map<number, TripMaker>();

  /** @param radiusMm of the largest ball: what is noted may be any of them */
  constructor(frame: Frame, scene: Scene, radiusMm: number) {
    this.frame = frame;
    this.scene = scene;
    this.radiusMm = radiusMm;
  }

  /** null where no trip has room. */
  movesTo(
    from: Pose,
    place: PointMm,
    others: readonly PointMm[],
    speedMmPerS: number,
  ): { readonly moves: readonly Move[]; readonly durationS: number } | null {
    const [ball, ...rest] = [place, ...others].map(
      (point, index): LyingBall => ({ ...point, index, radiusMm: this.radiusMm }),
    );
    if (ball === undefined) return null;
    const found = soonestTrip(this.makerAt(speedMmPerS), from, ball, rest, Number.POSITIVE_INFINITY);
    if (found === null) return null;
    const { approach, trip } = found;
    return { moves: [...approach.moves, ...trip.moves], durationS: approach.timeS + trip.timeS };
  }

  /** One for each speed: making one measures the zone anew. */
  private makerAt(speedMmPerS: number): TripMaker {
    const known = this.makers.get(speedMmPerS);
    if (known !== undefined) return known;
    const any = { xMm: 0, yMm: 0, index: 0, radiusMm: this.radiusMm };
    const builder = new RoutineBuilder(this.scene, speedMmPerS);
    const maker = { ...makerFor(this.frame, [any]), builder };
    this.makers.set(speedMmPerS, maker);
    return maker;
  }
}
