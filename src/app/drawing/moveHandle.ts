import type { PointMm } from "../../model/zone.ts";
import type { Draft } from "../project/draft.svelte.ts";
import type { Handle } from "./handle.ts";

/** How often the way to a place that cannot be is halved: to a sixteenth of it. */
const HALVINGS = 4;

/** Takes a handle to a place, or as far on the way there as it can go. */
export function moveHandle(
  draft: Pick<Draft, "tryChange">,
  handle: Handle,
  to: PointMm,
  gesture: string,
): boolean {
  const at = (share: number): PointMm => ({
    xMm: Math.round(handle.at.xMm + share * (to.xMm - handle.at.xMm)),
    yMm: Math.round(handle.at.yMm + share * (to.yMm - handle.at.yMm)),
  });
  const attempt = (share: number) => draft.tryChange((form) => handle.move(form, at(share)), gesture);
  if (attempt(1)) return true;
  let moved = false;
  let reached = 0;
  let step = 0.5;
  for (let i = 0; i < HALVINGS; i++, step /= 2) {
    if (!attempt(reached + step)) continue;
    reached += step;
    moved = true;
  }
  return moved;
}
