import type { Project } from "../../src/model/project.ts";
import type { Move, Routine } from "../../src/model/routine.ts";
import type { PointMm } from "../../src/model/zone.ts";
import { entryPose } from "../../src/motion/entry.ts";

/** Where a fan's pushes start, and the points they are driven toward. */
export interface Fan {
  readonly from: PointMm;
  readonly toward: readonly PointMm[];
  /** The robot turns back this far short of the point. */
  readonly shortMm: number;
}

/** A plain routine for tests: from each place some pushes out and back, each a turn, a drive and a drive in reverse. */
export function fanRoutine(project: Project, fans: readonly Fan[]): Routine {
  const { topSpeedMmPerS: speedMmPerS, turnRateRadPerS: rateRadPerS } = project.robot.drive;
  const moves: Move[] = [];
  let { xMm, yMm, headingRad } = entryPose(project.zone, project.robot);
  const turnTo = (to: PointMm): number => {
    const aim = Math.atan2(to.yMm - yMm, to.xMm - xMm);
    const angleRad = Math.atan2(Math.sin(aim - headingRad), Math.cos(aim - headingRad));
    if (Math.abs(angleRad) > 1e-9) moves.push({ kind: "turn", angleRad, rateRadPerS });
    headingRad = aim;
    return Math.hypot(to.xMm - xMm, to.yMm - yMm);
  };
  const drive = (distanceMm: number): void => {
    moves.push({ kind: "drive", distanceMm, speedMmPerS });
    xMm += distanceMm * Math.cos(headingRad);
    yMm += distanceMm * Math.sin(headingRad);
  };
  for (const { from, toward, shortMm } of fans) {
    drive(turnTo(from));
    for (const point of toward) {
      const distanceMm = turnTo(point) - shortMm;
      drive(distanceMm);
      drive(-distanceMm);
    }
  }
  return { id: "fans", pattern: "own", label: "pushes from a few places", params: {}, moves };
}
