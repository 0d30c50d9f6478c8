import type { HingedShape } from "../model/robot.ts";
import type { PathTracer } from "../motion/path.kernel.ts";
import { arms, findSqueezed, setArms, squeezed } from "./arms.kernel.ts";
import { bx, by, halt, inHand, roam } from "./balls.kernel.ts";
import { setRobot } from "./clock.kernel.ts";
import { clearContacts, isTooDeep, resolve, stirred } from "./contact.kernel.ts";
import { runMove, type Watcher } from "./engine.kernel.ts";
import { span } from "./impulse.kernel.ts";
import { findJam, inJam } from "./jam.kernel.ts";
import { swing } from "./robot.kernel.ts";
import { chooseStep } from "./stepLength.kernel.ts";
import { awake, ballsInPlay, fromX, fromY, openMove, tidy } from "./wake.kernel.ts";
import { onSlope, roamSlope } from "./wedge.kernel.ts";

/**
 * The arms swing while the robot stands. Small even steps, in which balls move freely as far as walls, slopes and each other
 * let them, and the sweeps put right what the arms come to overlap. Arms that would squeeze a ball they cannot push away stop
 * for the rest of the move, as the wheels do.
 */

/** Farthest way of an arm's tip in one step, mm: its overlap with a ball is put right within the step. */
const TIP_STEP_MM = 0.8;
const LONGEST_STEP_S = 1 / 120;

/**
 * Runs a started "arms" move: toward `toRad`, which nothing but balls keeps the arms from, for durationS seconds.
 * Returns the seconds after which the arms stood.
 */
export function runSwing(
  planner: PathTracer,
  shape: HingedShape,
  toRad: number,
  durationS: number,
  watcher: Watcher,
): number {
  const sign = toRad < arms.angle ? -1 : 1;
  const most = Math.min(LONGEST_STEP_S, TIP_STEP_MM / (shape.swingRateRadPerS * shape.armLengthMm));
  let t = 0;
  setRobot(planner, 0);
  openMove();
  while (t < durationS && arms.angle !== toRad) {
    const left = Math.abs(toRad - arms.angle);
    let h = Math.min(most, durationS - t, left / shape.swingRateRadPerS);
    h = Math.min(h, chooseStep(t, h));
    watcher.stepBegins(t);
    const last = h * shape.swingRateRadPerS >= left - 1e-12;
    const moved = swingStep(
      planner,
      shape,
      last ? toRad : arms.angle + sign * h * shape.swingRateRadPerS,
      sign,
      t,
      h,
      watcher,
    );
    t = h === durationS - t ? durationS : t + h;
    watcher.stepEnded(t);
    if (!moved) break;
  }
  const stoodAtS = t;
  swing.rate = 0;
  if (t < durationS) runMove(planner, durationS, watcher, t);
  return stoodAtS;
}

/** One step of h seconds that ends with the arms at `toRad`; false if they had to be taken back. */
function swingStep(
  planner: PathTracer,
  shape: HingedShape,
  toRad: number,
  sign: number,
  t: number,
  h: number,
  watcher: Watcher,
): boolean {
  const balls = ballsInPlay();
  const before = arms.angle;
  for (let i = 0; i < balls; i++) {
    fromX[i] = bx[i]!;
    fromY[i] = by[i]!;
    inHand[i] = 0;
    if (awake[i] === 0) continue;
    if (onSlope(i)) roamSlope(i, h);
    else roam(i, h);
  }
  setRobot(planner, t + h);
  setArms(shape, toRad);
  swing.rate = sign * shape.swingRateRadPerS;
  span[0] = h;
  span[1] = 0;
  clearContacts(balls);
  const deepest = resolve(balls);
  const jam = findJam(balls);
  const held = findSqueezed(balls);
  const moves = !(jam || held || isTooDeep(deepest));
  if (!moves) takeBack(shape, before, isTooDeep(deepest), t + h, watcher);
  for (let i = 0; i < balls; i++) tidy(i, t + h);
  return moves;
}

/** The arms stand where they were before the step; balls they held lie still there. */
function takeBack(
  shape: HingedShape,
  angleRad: number,
  everything: boolean,
  t: number,
  watcher: Watcher,
): void {
  const balls = ballsInPlay();
  setArms(shape, angleRad);
  let jammed = false;
  for (let i = 0; i < balls; i++) {
    // Held between the arms it is not lost: only what lies jammed at a wall counts as such.
    if (inJam[i] === 1) jammed = true;
    if (inJam[i] === 0 && squeezed[i] === 0 && !(everything && stirred[i] === 1)) continue;
    bx[i] = fromX[i]!;
    by[i] = fromY[i]!;
    halt(i);
  }
  if (jammed) watcher.jammed(t);
  for (let i = 0; i < balls; i++) stirred[i] = 0;
  resolve(balls);
}
