import type { HingedShape } from "../model/robot.ts";
import type { PointMm } from "../model/zone.ts";
import { sinCos } from "../num/elementary.ts";
import { SCRATCH, SLOTS } from "../num/slots.ts";
import { robotFriction } from "./balls.kernel.ts";
import { contactsOf, hitNx, hitNy, hitVx, hitVy, loadShape, swing } from "./robot.kernel.ts";

/**
 * Hinged arms as the balls meet them. While the arms are still, the footprint is an outline like any other; it is loaded anew
 * at each angle that a swing comes to. A swinging arm turns about its hinge, and what it touches is struck with the velocity
 * it has there (robot.kernel `putHit`).
 */

export const arms = {
  /** Outward from straight ahead, rad. */
  angle: 0,
};

const trig = new Float64Array(SCRATCH);
/** Corners of the footprint from the rear right one on, counter-clockwise; shared by all swings of this world. */
const corners: { xMm: number; yMm: number }[] = [];

/** The footprint with its arms at an angle: what model/outline makes, without leaving out corners of straight edges. */
function outlineAt(shape: HingedShape, angleRad: number): readonly PointMm[] {
  sinCos(angleRad, trig);
  const s = trig[0]!;
  const c = trig[1]!;
  const { hingeAsideMm: root, armLengthMm: length, armThicknessMm: thickness, bodyWidthMm } = shape;
  const rear = -shape.axleFromRearMm;
  const front = shape.bodyLengthMm - shape.axleFromRearMm;
  const half = bodyWidthMm / 2;
  const tipX = front + length * c;
  const tipY = root + length * s;
  corners.length = 0;
  corners.push({ xMm: rear, yMm: -half });
  if (root < half) corners.push({ xMm: front, yMm: -half });
  corners.push({ xMm: front, yMm: -root }, { xMm: tipX, yMm: -tipY });
  corners.push({ xMm: tipX + thickness * s, yMm: thickness * c - tipY });
  corners.push({ xMm: front, yMm: thickness / c - root });
  for (let i = corners.length - 1; i >= 0; i--) corners.push({ xMm: corners[i]!.xMm, yMm: -corners[i]!.yMm });
  return corners;
}

/** Puts the arms to an angle, at rest. */
export function setArms(shape: HingedShape, angleRad: number): void {
  arms.angle = angleRad;
  swing.rate = 0;
  swing.front = shape.bodyLengthMm - shape.axleFromRearMm;
  swing.hinge = shape.hingeAsideMm;
  loadShape({ footprint: outlineAt(shape, angleRad), pusherEdges: [], ground: [] });
}

/** 1: the ball is held between two parts of the robot. */
export const squeezed = new Uint8Array(SLOTS);

/**
 * Balls that swinging arms hold against the robot itself, by the rule of `findJam`: two faces hold a ball when the line
 * between the contacts lies in both friction cones; one of them must be an arm that presses. Marks them; true if there are any.
 */
export function findSqueezed(n: number): boolean {
  let any = false;
  for (let i = 0; i < n; i++) {
    squeezed[i] = 0;
    const hits = contactsOf(i);
    if (hits < 2) continue;
    const mu = robotFriction[i]!;
    const held = -(1 - mu * mu) / (1 + mu * mu);
    for (let h = 0; h < hits; h++) {
      if (hitVx[h]! * hitNx[h]! + hitVy[h]! * hitNy[h]! <= PRESS_EPS) continue;
      for (let g = 0; g < hits; g++) {
        if (g !== h && hitNx[h]! * hitNx[g]! + hitNy[h]! * hitNy[g]! < held) squeezed[i] = 1;
      }
    }
    if (squeezed[i] === 1) any = true;
  }
  return any;
}

/** An arm that advances slower than this does not press, mm/s. */
const PRESS_EPS = 1e-6;
