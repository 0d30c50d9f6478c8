import { testBoxes } from "./box.kernel.ts";
import type { Surroundings } from "./surroundings.ts";
import {
  advancePose,
  bowOf,
  isSameFace,
  type Motion,
  span,
  state,
  type Touch,
  testFace,
} from "./touch.kernel.ts";

/**
 * First touch of a moving robot with its surroundings by conservative advancement: a step is never longer than the
 * gap allows at its closing rate and the bound on how fast that rate can change (Mirtich 1996, with the second-order
 * term). "Progress" q is the path parameter: mm driven, or rad turned on the spot.
 */

/** Conservative steps before the search gives up; of a million searches beside walls none took more than 52 (NOTES). */
const MAX_STEPS = 400;

/**
 * Searches along the motion for at most `length`; fills `out`. Touching faces along which the robot only slides do not
 * count; one that a curve presses against gives "guided". Without a touch, `out.q` is the length, or, if the search gave up,
 * as far as the way is known to be free.
 */
export function findTouch(
  around: Surroundings,
  motion: Motion,
  length: number,
  out: Touch,
  ignore: Touch | null,
): void {
  state.x = motion.x;
  state.y = motion.y;
  state.c = motion.c;
  state.s = motion.s;
  out.kind = "none";
  let q = 0;
  for (let step = 0; step < MAX_STEPS; step++) {
    const left = length - q;
    let safe = testPlanes(around, motion, left, out, ignore);
    if (out.kind === "none") safe = Math.min(safe, testBoxes(around, motion, left, out, ignore));
    if (out.kind !== "none") break;
    if (safe >= left) {
      q = length;
      break;
    }
    q += safe;
    advancePose(state, motion.sigma, motion.kappa, safe);
  }
  out.q = q;
}

function testPlanes(
  around: Surroundings,
  motion: Motion,
  left: number,
  out: Touch,
  ignore: Touch | null,
): number {
  let safe = Number.POSITIVE_INFINITY;
  const { planes } = around;
  const bow = bowOf(motion, left);
  for (let k = 0; k < planes.length; k++) {
    const plane = planes[k]!;
    const ground = plane.stops === "ground";
    if (ignore !== null && isSameFace(ignore, plane.nx, plane.ny, plane.offset)) continue;
    const radius = ground ? around.ground.radius : around.whole.radius;
    const clear = plane.nx * state.x + plane.ny * state.y - plane.offset - radius;
    const toward = motion.sigma * (plane.nx * state.c + plane.ny * state.s) * left;
    if (clear + (toward < 0 ? toward : 0) > bow) continue;
    span[0] = left;
    safe = Math.min(safe, testFace(around, motion, ground, plane.nx, plane.ny, plane.offset, out));
    if (out.kind !== "none") return 0;
  }
  return safe;
}
