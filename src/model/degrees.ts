import { DEG_PER_RAD, RAD_PER_DEG } from "./units.ts";

const MM_PER_M = 1000;
const S_PER_MIN = 60;

/** Half the relative spacing of doubles. */
const ULP_FRAC = Number.EPSILON / 2;

/** The one way from a file's degrees to radians; everything that reads degrees must use it, so that files round-trip bit for bit. */
export function radFromDeg(deg: number): number {
  // + 0: the tiniest angles round to −0, which no file can hold.
  return deg * RAD_PER_DEG + 0;
}

/** Degrees that `radFromDeg` turns into exactly this angle, with as few digits as that takes (within one unit in the last place where no such number exists). */
export function degFromRad(rad: number): number {
  return shortestInverse(radFromDeg, rad, rad * DEG_PER_RAD);
}

/** The one way from a file's curvature in °/m to rad/mm. */
export function radPerMmFromDegPerM(degPerM: number): number {
  return (degPerM * RAD_PER_DEG) / MM_PER_M + 0;
}

/** Inverse of `radPerMmFromDegPerM`, with as few digits as that takes. */
export function degPerMFromRadPerMm(radPerMm: number): number {
  return shortestInverse(radPerMmFromDegPerM, radPerMm, radPerMm * DEG_PER_RAD * MM_PER_M);
}

/** The one way from a file's °/min to rad/s. */
export function radPerSFromDegPerMin(degPerMin: number): number {
  return (degPerMin * RAD_PER_DEG) / S_PER_MIN + 0;
}

/** Inverse of `radPerSFromDegPerMin`, with as few digits as that takes. */
export function degPerMinFromRadPerS(radPerS: number): number {
  return shortestInverse(radPerSFromDegPerMin, radPerS, radPerS * DEG_PER_RAD * S_PER_MIN);
}

/** Shortest decimal whose image is `value`, searched around the real-number inverse `guess`. */
function shortestInverse(forward: (x: number) => number, value: number, guess: number): number {
  for (let digits = 1; digits <= 17; digits++) {
    const candidate = Number(guess.toPrecision(digits));
    if (forward(candidate) === value) return candidate;
  }
  // Rounding may have put the guess a few doubles beside the number that was multiplied.
  const step = Math.abs(guess) * ULP_FRAC;
  for (let k = 1; k <= 8; k++) {
    for (const candidate of [guess - k * step, guess + k * step]) {
      if (forward(candidate) === value) return candidate;
    }
  }
  return guess;
}
