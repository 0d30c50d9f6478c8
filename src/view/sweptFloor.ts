import { cos, sin } from "../num/elementary.ts";
import { robotAt } from "../trial/playback.ts";
import type { Recording } from "../trial/recording.ts";

/** Step of the samples, s: at 200 mm/s and 90 degrees a second a stripe is 10 mm long and turns by 4.5 degrees. */
const SAMPLE_S = 0.05;

/** Turns and ways below these give no stripe of their own: the robot stands. */
const STILL_MM = 0.5;
const STILL_RAD = 0.005;

/** One stripe of floor that an edge of the pusher passed over: its four corners [x, y, …], mm, and when. */
export interface Stripe {
  readonly timeS: number;
  readonly corners: readonly number[];
}

/**
 * The floor that the pusher passes over in a recorded run, in stripes in order of time.
 * @param chains the pusher's edges in the robot's frame, flat polylines, mm; hinged arms as they are given, open or closed
 */
export function sweptFloor(recording: Recording, chains: readonly (readonly number[])[]): readonly Stripe[] {
  const stripes: Stripe[] = [];
  let from = robotAt(recording, 0);
  const steps = Math.ceil(recording.durationS / SAMPLE_S);
  for (let k = 1; k <= steps; k++) {
    const timeS = Math.min(recording.durationS, k * SAMPLE_S);
    const to = robotAt(recording, timeS);
    const moved = Math.abs(to.xMm - from.xMm) + Math.abs(to.yMm - from.yMm);
    if (moved < STILL_MM && Math.abs(to.headingRad - from.headingRad) < STILL_RAD) continue;
    for (const chain of chains) {
      const before = placed(chain, from);
      const after = placed(chain, to);
      for (let i = 0; i + 3 < chain.length; i += 2) {
        const corners = [...before.slice(i, i + 4), ...after.slice(i + 2, i + 4), ...after.slice(i, i + 2)];
        stripes.push({ timeS, corners });
      }
    }
    from = to;
  }
  return stripes;
}

function placed(
  chain: readonly number[],
  pose: { readonly xMm: number; readonly yMm: number; readonly headingRad: number },
): number[] {
  const c = cos(pose.headingRad);
  const s = sin(pose.headingRad);
  const out: number[] = [];
  for (let i = 0; i + 1 < chain.length; i += 2) {
    const x = chain[i] ?? 0;
    const y = chain[i + 1] ?? 0;
    out.push(pose.xMm + c * x - s * y, pose.yMm + s * x + c * y);
  }
  return out;
}
