import type { Corner, PointMm, RectMm } from "./zone.ts";

/** How the balls lie at the start. `wallMarginMm` and `spacingMm` are gaps between surfaces, not between centres. */
export type Layout =
  | {
      readonly kind: "random";
      readonly wallMarginMm: number;
      readonly spacingMm: number;
      /** Gap between a ball and the wedge's long side. */
      readonly wedgeMarginMm: number;
      /** Gap between a ball and the robot at its entry pose. */
      readonly robotMarginMm: number;
      /** No ball's centre starts in one of these. */
      readonly forbidden: readonly RectMm[];
    }
  | { readonly kind: "fixed"; readonly positions: readonly PointMm[] };

/** centre: the ball's centre is over the wedge; wholly: the whole ball is, seen from above. */
export type DeliveredRule = "centre" | "wholly";

export interface Rules {
  readonly timeLimitS: number;
  readonly delivered: DeliveredRule;
  readonly layout: Layout;
  /** Corners the wedge may be in, drawn anew for each run; empty: it is always where the zone says. */
  readonly wedgeCorners: readonly Corner[];
}

/** What nobody measured: each trial draws its own value, uniform within ± the stated range. */
export interface Spread {
  /** ± share of every friction coefficient. */
  readonly frictionFrac: number;
  /** ± share of the rolling resistance. */
  readonly rollingResistanceFrac: number;
  /** ± absolute change of the restitution (kept within 0 … 1). */
  readonly restitution: number;
}

/** What the generated routines keep to. */
export interface RoutineSettings {
  /** Clear space kept between the robot and walls it is not meant to touch. */
  readonly clearanceMm: number;
  /** Driven on after the nominal touch of a wall, so that the robot surely arrives and squares up. */
  readonly overrunMm: number;
  /** Speeds tried, as shares of the top speed. */
  readonly speedFracs: readonly number[];
}
