import { ballsOf, type Project } from "../model/project.ts";
import type { Move } from "../model/routine.ts";
import type { PointMm } from "../model/zone.ts";
import { brakingSpeed, type Carry, carryOf, runOnMm } from "./carry.ts";
import { type CarryLimit, carryLimits } from "./carryLimits.ts";
import { CATCH_UP_MM } from "./pushRun.ts";
import { reachOf } from "./reach.ts";

/**
 * The same moves no faster than a ball in the pusher stays at: turns at the rate at which it does, and ways end as slowly as a stop
 * may be. The path stays the same; what keeps no ball at any speed (a V that turns on the spot, a plate) is left as it is.
 *
 * @param places where balls may lie (startPlaces)
 */
export function gentleMoves(
  project: Project,
  moves: readonly Move[],
  places: readonly PointMm[],
): readonly Move[] {
  const { robot } = project;
  const carry = carryOf(reachOf(robot), robot.drive, ballsOf(project));
  if (!carry.holds) return moves;
  const limits = new Map(carryLimits(project, moves, places).map((limit) => [limit.move, limit]));
  return moves.flatMap((move, i) => {
    const limit = limits.get(i);
    return limit === undefined || limit.safe <= 0 ? [move] : gentled(move, limit, carry);
  });
}

function gentled(move: Move, { safe }: CarryLimit, carry: Carry): readonly Move[] {
  if (move.kind === "turn") return [{ ...move, rateRadPerS: safe }];
  if (move.kind === "arc") return [{ ...move, speedMmPerS: safe }];
  return move.kind === "drive" ? slowEnd(move, carry) : [move];
}

/** As fast as before, and slowly for as long as a ball that ran ahead takes to be in the pusher again. */
function slowEnd(move: Extract<Move, { readonly kind: "drive" }>, carry: Carry): readonly Move[] {
  const slow = brakingSpeed(carry);
  const slowMm = runOnMm(carry, move.speedMmPerS) + CATCH_UP_MM;
  if (move.distanceMm < 2 * slowMm) return [{ ...move, speedMmPerS: slow }];
  return [
    { ...move, distanceMm: move.distanceMm - slowMm },
    { ...move, distanceMm: slowMm, speedMmPerS: slow },
  ];
}
