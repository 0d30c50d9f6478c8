import type { RobotOutline } from "../model/outline.ts";

/** The pusher as flat polylines [x0, y0, x1, y1, …] in the robot's frame, mm: neighbouring pusher edges in one piece each. */
export function pusherChains(
  outline: Pick<RobotOutline, "footprint" | "pusherEdges">,
): readonly (readonly number[])[] {
  const { footprint, pusherEdges } = outline;
  const chains: number[][] = [];
  let previous = -2;
  for (const edge of pusherEdges) {
    const from = footprint[edge];
    const to = footprint[(edge + 1) % footprint.length];
    if (from === undefined || to === undefined) continue;
    if (edge !== previous + 1) chains.push([from.xMm, from.yMm]);
    chains.at(-1)?.push(to.xMm, to.yMm);
    previous = edge;
  }
  return chains;
}
