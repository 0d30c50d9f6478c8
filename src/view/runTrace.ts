import { ballAt, robotAt } from "../trial/playback.ts";
import type { Recording } from "../trial/recording.ts";

/** The ways of the robot's origin and of every ball in a recorded run, sampled for drawing. */
export interface RunTrace {
  readonly robot: Trail;
  readonly balls: readonly Trail[];
}

/** Places in order of time; `timeS[i]` belongs to (`xMm[i]`, `yMm[i]`). Standing still gives no further points. */
export interface Trail {
  readonly timeS: Float64Array;
  readonly xMm: Float64Array;
  readonly yMm: Float64Array;
}

/** Step of the samples, s: at 200 mm/s one point every 10 mm. */
const SAMPLE_S = 0.05;
/** A trail gets a new point after this much way, mm. */
const SPACING_MM = 4;

/** Samples a recording once, so that drawing a trail up to any second costs no playback. */
export function traceRun(recording: Recording): RunTrace {
  return {
    robot: trail(recording.durationS, (timeS) => robotAt(recording, timeS)),
    balls: Array.from({ length: recording.ballCount }, (_, ball) =>
      trail(recording.durationS, (timeS) => ballAt(recording, ball, timeS)),
    ),
  };
}

function trail(durationS: number, at: (timeS: number) => { xMm: number; yMm: number }): Trail {
  const timeS: number[] = [];
  const xMm: number[] = [];
  const yMm: number[] = [];
  const steps = Math.ceil(durationS / SAMPLE_S);
  for (let k = 0; k <= steps; k++) {
    const t = Math.min(durationS, k * SAMPLE_S);
    const place = at(t);
    const dx = place.xMm - (xMm.at(-1) ?? Number.POSITIVE_INFINITY);
    const dy = place.yMm - (yMm.at(-1) ?? Number.POSITIVE_INFINITY);
    if (dx * dx + dy * dy < SPACING_MM * SPACING_MM) continue;
    timeS.push(t);
    xMm.push(place.xMm);
    yMm.push(place.yMm);
  }
  return { timeS: Float64Array.from(timeS), xMm: Float64Array.from(xMm), yMm: Float64Array.from(yMm) };
}

/** How many points of a trail lie at or before `timeS`. */
export function pointsUntil(trail: Trail, timeS: number): number {
  let low = 0;
  let high = trail.timeS.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((trail.timeS[middle] ?? Number.POSITIVE_INFINITY) <= timeS) low = middle + 1;
    else high = middle;
  }
  return low;
}
