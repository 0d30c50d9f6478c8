/** A straight scale from values to places on the chart. */
export interface Scale {
  readonly at: (value: number) => number;
  /** Round values within the range, for labels. */
  readonly ticks: readonly number[];
}

/** Round steps: 1, 2 or 5 times a power of ten. */
const STEPS = [1, 2, 5, 10];

/**
 * @param from first and last value, different
 * @param to places they come to lie at
 * @param wanted about this many ticks
 */
export function linearScale(
  from: readonly [number, number],
  to: readonly [number, number],
  wanted = 5,
): Scale {
  const [low, high] = from;
  const [start, end] = to;
  const at = (value: number): number => start + ((value - low) / (high - low)) * (end - start);
  const rough = Math.abs(high - low) / wanted;
  const power = powerBelow(rough);
  const step = power * (STEPS.find((each) => each * power >= rough * 0.999) ?? 10);
  const first = Math.ceil(Math.min(low, high) / step - 1e-9);
  const last = Math.floor(Math.max(low, high) / step + 1e-9);
  const ticks = Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => (first + i) * step + 0);
  return { at, ticks };
}

/** Largest power of ten not above a value; by multiplying, since engines differ in logarithms. */
function powerBelow(value: number): number {
  let power = 1;
  while (power * 10 <= value) power *= 10;
  while (power > value) power /= 10;
  return power;
}
