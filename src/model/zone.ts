/** The walled rectangle as it really is: walls, doorway, wedge, keep-outs. Lengths in mm, zone frame (see units.ts). */

export type Wall = "left" | "right" | "bottom" | "top";
export type Corner = "lower-left" | "lower-right" | "upper-left" | "upper-right";

export interface PointMm {
  readonly xMm: number;
  readonly yMm: number;
}

/** Axis-parallel rectangle; (xMm, yMm) is its lower left corner. */
export interface RectMm {
  readonly xMm: number;
  readonly yMm: number;
  readonly widthMm: number;
  readonly heightMm: number;
}

/** How a face answers a ball. Combined with the ball's own values in trial/ (restitution: the smaller; friction: √(μ₁μ₂)). */
export interface Surface {
  readonly restitution: number;
  readonly frictionCoeff: number;
}

/** The gap in one wall. `centreMm` runs along the wall from its left or lower end. */
export interface Doorway {
  readonly wall: Wall;
  readonly centreMm: number;
  readonly widthMm: number;
}

/**
 * The low triangle in one corner: right angle in the corner, legs along both walls.
 * Height over the floor at distance d inside the long side: `lipMm` at d = 0, then straight to `riseMm` at d = `runMm`
 * (for ramp and tray the run is the whole depth to the corner), level after that.
 * flat: a mark on the floor, no height. ramp: lip ≥ 0, rising to the corner. shelf: rising over a short run, then level.
 * tray: over a lip, then falling toward the corner (rise < lip).
 */
export type WedgeProfile = "flat" | "ramp" | "shelf" | "tray";

export interface Wedge {
  readonly corner: Corner;
  readonly legXMm: number;
  readonly legYMm: number;
  readonly profile: WedgeProfile;
  readonly lipMm: number;
  readonly riseMm: number;
  /** shelf only; ignored for the other profiles. */
  readonly runMm: number;
}

export interface Zone {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly walls: Surface;
  readonly doorway: Doorway;
  readonly wedge: Wedge;
  /** Solid blocks that neither robot nor ball may enter. */
  readonly keepOuts: readonly RectMm[];
}
