/**
 * The elementary functions of the core: the same bits in every engine, because they use only + − × ÷ √ and bit moves.
 * Errors stay below 1 ulp unless a function says otherwise; measured in tests/reference/elementary and tests/unit/num/elementary.
 */
import { acos, asin, atan2 } from "./arcTangent.ts";
import { exp, log } from "./exponential.ts";
import { cos, sin, sinCos } from "./trig.kernel.ts";
import { wrapAngle } from "./wrapAngle.ts";

export { acos, asin, atan2, cos, exp, log, sin, sinCos, wrapAngle };

/** √(x² + y²). Error about 1 ulp; overflows beyond 1e154 and loses digits below 1e−154, far outside any length here. */
export function hypot(x: number, y: number): number {
  return Math.sqrt(x * x + y * y);
}
