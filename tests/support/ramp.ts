import type { BallKind } from "../../src/model/ball.ts";
import type { Wedge, Zone } from "../../src/model/zone.ts";
import { FLAT_WEDGE, type SceneBall } from "./scene.ts";

/** A wide hall whose upper right corner is a ramp, for balls that roll straight up or down it. */

const SIDE_MM = 30_000;
const LEG_MM = 20_000;
/** Distance of the corner from the wedge's long side. */
const DEPTH_MM = LEG_MM / Math.SQRT2;

export interface BigRamp {
  readonly zone: Partial<Zone>;
}

/** A ramp of the given angle; with `riseMm` a shelf: as steep, but level from that height on; `lipMm`: height of its edge. */
export function bigRamp(
  angleRad: number,
  options: { readonly riseMm?: number; readonly lipMm?: number } = {},
): BigRamp {
  const { riseMm, lipMm = 0 } = options;
  const slope = Math.tan(angleRad);
  const wedge: Wedge = {
    ...FLAT_WEDGE,
    legXMm: LEG_MM,
    legYMm: LEG_MM,
    profile: riseMm === undefined ? "ramp" : "shelf",
    lipMm,
    riseMm: riseMm ?? lipMm + DEPTH_MM * slope,
    runMm: riseMm === undefined || slope === 0 ? 20 : (riseMm - lipMm) / slope,
  };
  return { zone: { widthMm: SIDE_MM, heightMm: SIDE_MM, wedge } };
}

/** A ball on the line of steepest ascent, `depthMm` beyond the ramp's foot (below 0: before it), rolling up with `speedMmPerS` seen from above. */
export function onRamp(_: BigRamp, depthMm: number, kind: Partial<BallKind>, speedMmPerS = 0): SceneBall {
  const at = SIDE_MM - (DEPTH_MM - depthMm) / Math.SQRT2;
  const v = speedMmPerS / Math.SQRT2;
  return { x: at, y: at, vx: v, vy: v, kind };
}
