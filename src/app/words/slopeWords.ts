import { type BallGroup, type BallKind, inertiaFactor } from "../../model/ball.ts";
import { shownBallName } from "../../model/presetNames.ts";
import type { Zone } from "../../model/zone.ts";
import { zoneStepTexts as t } from "../../texts/english/zoneStep.ts";
import { plain } from "../../texts/numbers.ts";
import { slopeRunMm, wedgePlace } from "../../view/wedgePlace.ts";

/**
 * Whether balls stay on a ramp when they are let go, as the trial has it (`holds` of trial/wedge.kernel). Empty for other wedges,
 * and where every ball stays.
 */
export function slopeWords(zone: Zone, balls: readonly BallGroup[]): string {
  const { wedge } = zone;
  if (wedge.profile !== "ramp") return "";
  const slope = (wedge.riseMm - wedge.lipMm) / slopeRunMm(wedge, wedgePlace(zone).depthMm);
  const rolling = balls.filter(({ kind }) => steepest(kind) < slope);
  if (rolling.length === 0) return "";
  // Rounded apart, so that no slope reads as one on which the ball would stay.
  const per100 = (share: number, round: (value: number) => number): string => plain(round(1000 * share) / 10);
  const stays = rolling.map(({ kind }) =>
    t.staysUpTo(shownBallName(kind), per100(steepest(kind), Math.floor)),
  );
  return t.rollsBack(per100(slope - 1e-9, Math.ceil), stays.join("; "));
}

/** Rise over run on which a ball just stays. */
function steepest(kind: BallKind): number {
  return (1 + inertiaFactor(kind)) * kind.rollingResistance;
}
