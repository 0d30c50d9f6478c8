import { closingRunX, closingRunY, cornerPush } from "./lane.ts";
import type { PushRun } from "./pushRun.ts";
import type { Scene } from "./scene.ts";

/** Runs along the closing walls into the corner, the wall x = 0 first (where lanes in direction −x end), then in turn. */
export function closingRuns(scene: Scene, count: number, squareUp: boolean): readonly PushRun[] {
  return Array.from({ length: count }, (_, i) =>
    i % 2 === 0 ? closingRunY(scene, squareUp) : closingRunX(scene, squareUp),
  );
}

/** Square pushes onto the wedge: one in the middle, further ones beside it. */
export function cornerPushes(scene: Scene, count: number): readonly PushRun[] {
  const step = (scene.reach.pusherLeftMm + scene.reach.pusherRightMm) / 3;
  const asides = [0, step, -step];
  return Array.from({ length: count }, (_, i) => cornerPush(scene, asides[i % asides.length] ?? 0));
}
