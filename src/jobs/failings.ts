import type { Project } from "../model/project.ts";
import type { Routine } from "../model/routine.ts";
import { moveDurationS } from "../motion/duration.ts";
import { type HeatMap, heatMap } from "../score/heatMap.ts";
import { type LossCount, lossesByMove } from "../score/lossCounts.ts";
import { type StopAdvice, type TimeToHome, timeToHome, whenToStop } from "../score/timeToHome.ts";
import { type FateBatch, joinFates } from "../trial/fates.ts";

/** What the trials of one routine say about where and when it fails; plain data. */
export interface Failings {
  readonly trials: number;
  readonly balls: number;
  readonly delivered: number;
  readonly losses: readonly LossCount[];
  readonly map: HeatMap;
  readonly time: TimeToHome;
  readonly stop: StopAdvice;
}

/** Takes tens of milliseconds for a thousand trials: done in a worker. */
export function failingsOf(project: Project, routine: Routine, batches: readonly FateBatch[]): Failings {
  const joined = joinFates(batches);
  // Each run of a program drives other moves; its lines are what they have in common.
  const fates = routine.program === undefined ? joined : { ...joined, lossMove: joined.lossLine };
  const { timeLimitS } = project.rules;
  let timeS = 0;
  const moveEndS = (routine.program === undefined ? routine.moves : []).map((move) => {
    timeS += moveDurationS(project.robot.drive, move);
    return timeS;
  });
  return {
    trials: fates.to - fates.from,
    balls: fates.balls,
    delivered: fates.loss.reduce((sum, code) => sum + (code === 0 ? 1 : 0), 0),
    losses: lossesByMove(fates),
    map: heatMap(fates, project.zone),
    time: timeToHome(
      fates,
      Math.max(1, routine.program === undefined ? Math.min(timeLimitS, timeS) : timeLimitS),
    ),
    stop: whenToStop(fates, moveEndS, timeLimitS),
  };
}
