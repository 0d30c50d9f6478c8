import { bx, by, mode, OUT } from "./balls.kernel.ts";
import type { LossReason } from "./outcome.ts";
import { carried, home, jamX, jamY, result, touched, wasHome, wasJammed } from "./result.kernel.ts";

/** A ball that lies this near to where it jammed is lost to the jam, mm. */
const STILL_THERE_MM = 1;

/**
 * Why ball i of the run just finished was not delivered; null if it was. First that fits: it rolled out of the doorway; the
 * time limit cut the routine before the robot came to it, or while the robot had it; it was on the wedge and left it; it
 * lies where it jammed; the pusher lost it; nothing ever touched it.
 */
export function lossOf(i: number): LossReason | null {
  if (home[i] === 1) return null;
  if (mode[i] === OUT) return "rolled-out";
  if (result.cut && (touched[i] === 0 || carried[i] === 1)) return "out-of-time";
  if (wasHome[i] === 1) return "left-wedge";
  if (wasJammed[i] === 1 && isStillAt(i)) return "jammed";
  return touched[i] === 1 ? "left-pusher" : "never-touched";
}

function isStillAt(i: number): boolean {
  const dx = (bx[i] ?? 0) - (jamX[i] ?? 0);
  const dy = (by[i] ?? 0) - (jamY[i] ?? 0);
  return dx * dx + dy * dy < STILL_THERE_MM * STILL_THERE_MM;
}
