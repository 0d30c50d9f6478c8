import { SLOTS } from "../num/slots.ts";
import { bx, by, mode, sx, sy, vx, vy } from "./balls.kernel.ts";
import { holdNx, holdNy } from "./contact.kernel.ts";

/** The balls as they were before a step that may have to be made again: place, velocity, roll, mode, and the face that holds each. */

const keptX = new Float64Array(SLOTS);
const keptY = new Float64Array(SLOTS);
const keptVx = new Float64Array(SLOTS);
const keptVy = new Float64Array(SLOTS);
const keptSx = new Float64Array(SLOTS);
const keptSy = new Float64Array(SLOTS);
const keptNx = new Float64Array(SLOTS);
const keptNy = new Float64Array(SLOTS);
const keptMode = new Uint8Array(SLOTS);

export function keepBalls(n: number): void {
  for (let i = 0; i < n; i++) {
    keptX[i] = bx[i]!;
    keptY[i] = by[i]!;
    keptVx[i] = vx[i]!;
    keptVy[i] = vy[i]!;
    keptSx[i] = sx[i]!;
    keptSy[i] = sy[i]!;
    keptNx[i] = holdNx[i]!;
    keptNy[i] = holdNy[i]!;
    keptMode[i] = mode[i]!;
  }
}

export function putBalls(n: number): void {
  for (let i = 0; i < n; i++) {
    bx[i] = keptX[i]!;
    by[i] = keptY[i]!;
    vx[i] = keptVx[i]!;
    vy[i] = keptVy[i]!;
    sx[i] = keptSx[i]!;
    sy[i] = keptSy[i]!;
    holdNx[i] = keptNx[i]!;
    holdNy[i] = keptNy[i]!;
    mode[i] = keptMode[i]!;
  }
}
