import type { Box, HalfPlane } from "../motion/obstacles.ts";
import type { Pose } from "../motion/pose.ts";
import type { ConvexOutline, Surroundings } from "../motion/surroundings.ts";
import { cos, sin } from "../num/elementary.ts";

/** A straight boundary the robot can be stopped by, as far as it reaches along itself: from `from` to `to`, measured along (−ny, nx). */
export interface Face extends HalfPlane {
  readonly from: number;
  readonly to: number;
  /** The block that it is a side of; null for a wall without end. */
  readonly box: Box | null;
}

/** All faces: whole walls and the wedge's edge, without end, and the sides of doorway parts and keep-outs. */
export function facesOf(around: Surroundings): readonly Face[] {
  const endless = { from: Number.NEGATIVE_INFINITY, to: Number.POSITIVE_INFINITY, box: null };
  return [
    ...around.planes.map((plane) => ({ ...plane, ...endless })),
    ...around.boxes.flatMap((box): Face[] => {
      const { minX, minY, maxX, maxY } = box;
      const side = { stops: "outline" as const, box };
      return [
        { nx: -1, ny: 0, offset: -minX, from: -maxY, to: -minY, ...side },
        { nx: 1, ny: 0, offset: maxX, from: minY, to: maxY, ...side },
        { nx: 0, ny: -1, offset: -minY, from: minX, to: maxX, ...side },
        { nx: 0, ny: 1, offset: maxY, from: -maxX, to: -minX, ...side },
      ];
    }),
  ];
}

/** Which outline a face stops. */
export function outlineFor(around: Surroundings, face: Pick<HalfPlane, "stops">): ConvexOutline {
  return face.stops === "ground" ? around.ground : around.whole;
}

/** Corners of an outline at a pose, flat, mm. */
export function cornersAt(outline: ConvexOutline, { xMm, yMm, headingRad }: Pose): readonly number[] {
  const c = cos(headingRad);
  const s = sin(headingRad);
  const flat: number[] = [];
  for (let i = 0; i < outline.count; i++) {
    const x = outline.x[i] ?? 0;
    const y = outline.y[i] ?? 0;
    flat.push(xMm + c * x - s * y, yMm + s * x + c * y);
  }
  return flat;
}

/** Least distance of the corners from the face's line, mm; negative beyond it. */
export function gapTo(face: HalfPlane, corners: readonly number[]): number {
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i + 1 < corners.length; i += 2) {
    const x = corners[i] ?? 0;
    const y = corners[i + 1] ?? 0;
    least = Math.min(least, face.nx * x + face.ny * y - face.offset);
  }
  return least;
}

/**
 * A distance that robot and box certainly keep, mm: the widest gap along the normals of either. At most their true distance;
 * negative when they overlap.
 */
export function gapToBox(box: Box, corners: readonly number[]): number {
  const ring = [box.minX, box.minY, box.maxX, box.minY, box.maxX, box.maxY, box.minX, box.maxY];
  return Math.max(widestGap(corners, ring), widestGap(ring, corners));
}

/** Widest gap between two counter-clockwise convex outlines along the edge normals of the first. */
function widestGap(first: readonly number[], second: readonly number[]): number {
  let widest = Number.NEGATIVE_INFINITY;
  for (let i = 0; i + 1 < first.length; i += 2) {
    const ax = first[i] ?? 0;
    const ay = first[i + 1] ?? 0;
    const dx = (first[(i + 2) % first.length] ?? 0) - ax;
    const dy = (first[(i + 3) % first.length] ?? 0) - ay;
    const length = Math.sqrt(dx * dx + dy * dy);
    if (length === 0) continue;
    const face = { nx: dy / length, ny: -dx / length, offset: 0, stops: "outline" as const };
    widest = Math.max(widest, gapTo({ ...face, offset: face.nx * ax + face.ny * ay }, second));
  }
  return widest;
}
