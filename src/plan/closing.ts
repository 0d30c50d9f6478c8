import { FROM_FAR_X_RAD, FROM_FAR_Y_RAD, type Side } from "./place.ts";
import type { PushRun } from "./pushRun.ts";
import { closingRun, cornerAsides, cornerPush } from "./routes.ts";
import type { Scene } from "./scene.ts";

/** Headings for squaring up on both far walls, and on the one a run of a side starts from. */
export const BOTH_FAR_WALLS: readonly number[] = [FROM_FAR_Y_RAD, FROM_FAR_X_RAD];

export function farWallOf(side: Side): readonly number[] {
  return [side === "x" ? FROM_FAR_X_RAD : FROM_FAR_Y_RAD];
}

/**
 * Closing wall runs, in turn along both closing walls, the one across the lanes (x = 0) first. A pusher that holds
 * balls swings out for a square push onto the wedge; another pushes on along the wall.
 */
export function closingRuns(scene: Scene, count: number, squareUps: boolean): readonly PushRun[] {
  return Array.from({ length: count }, (_, i) => {
    const side: Side = i % 2 === 0 ? "y" : "x";
    return closingRun(scene, side, scene.carry.holds, { squareUps: squareUps ? farWallOf(side) : [] });
  });
}

export function cornerPushes(scene: Scene, count: number): readonly PushRun[] {
  return cornerAsides(scene, count).map((aside) => cornerPush(scene, aside));
}
