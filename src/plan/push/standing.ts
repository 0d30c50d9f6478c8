import { convexHull } from "../../geometry/polygon.ts";
import { robotOutline } from "../../model/outline.ts";
import type { Project } from "../../model/project.ts";
import type { PointMm } from "../../model/zone.ts";
import { wedgeEdge } from "../../motion/obstacles.ts";
import { wedgeStopsRobot } from "../../motion/surroundings.ts";
import type { Standing } from "./touchGap.kernel.ts";

/** A project's robot as touchGap reads it. Keep-outs and the doorway are left out: see pockets.ts. */
export function standingOf(project: Project): Standing {
  const { zone, robot } = project;
  const outline = robotOutline(robot);
  const hull = convexHull([...outline.footprint, ...outline.ground]);
  const stops = wedgeStopsRobot(zone, robot);
  const ground = stops ? convexHull(outline.ground) : [];
  const edge = wedgeEdge(zone);
  const room = Math.max(spinReach(hull), spinReach(ground));
  return {
    footprint: flat(outline.footprint),
    hull: flat(hull),
    ground: flat(ground),
    width: zone.widthMm,
    height: zone.heightMm,
    edgeX: edge.nx,
    edgeY: edge.ny,
    edgeOffset: edge.offset,
    // Outline and standing room turn along; where the room is a corner of two walls both supports move.
    perRad: spinReach(outline.footprint) + Math.sqrt(2) * room,
  };
}

function flat(points: readonly PointMm[]): Float64Array {
  return Float64Array.from(points.flatMap((p) => [p.xMm, p.yMm]));
}

/**
 * How fast an outline's boundary moves across itself when it turns about its origin, mm per rad: at most |v·t| over all
 * corners v and the directions t of the edges that meet there, or |v| where the corner is sharp enough to look along v's
 * circle. A disc made of many edges hardly moves, a long arm moves by its length.
 */
export function spinReach(outline: readonly PointMm[]): number {
  let most = 0;
  outline.forEach((corner, i) => {
    const before = outline[(i + outline.length - 1) % outline.length] ?? corner;
    const after = outline[(i + 1) % outline.length] ?? corner;
    const [inAlong, inAcross] = alongAndAcross(corner, before, corner);
    const [outAlong, outAcross] = alongAndAcross(corner, corner, after);
    const bends = inAcross * outAlong - inAlong * outAcross;
    most = Math.max(most, Math.abs(inAlong), Math.abs(outAlong));
    // The outward normal passes through the direction across v where `across` changes its sign.
    if (inAcross * outAcross <= 0 && bends !== 0) {
      most = Math.max(most, Math.sqrt(corner.xMm * corner.xMm + corner.yMm * corner.yMm));
    }
  });
  return most;
}

/** A corner's place along the edge from a to b, and across it to its right, mm. */
function alongAndAcross(corner: PointMm, a: PointMm, b: PointMm): readonly [number, number] {
  const dx = b.xMm - a.xMm;
  const dy = b.yMm - a.yMm;
  const length = Math.sqrt(dx * dx + dy * dy) || 1;
  return [(corner.xMm * dx + corner.yMm * dy) / length, (corner.xMm * dy - corner.yMm * dx) / length];
}
