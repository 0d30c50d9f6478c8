import type { Comparison } from "../../score/compare.ts";

/** "+4 of 100 (likely 1 to 7)", on the runs both have made; the ends are rounded outward. */
export function differenceWords({ successDifference, trials }: Comparison): string {
  if (trials === 0) return "not compared yet";
  const { value, low, high } = successDifference;
  const sign = (whole: number) => (whole > 0 ? `+${whole}` : whole < 0 ? `−${-whole}` : "0");
  const rounded = sign(Math.round(100 * value));
  return `${rounded === "0" ? "±0" : rounded} of 100 (likely ${sign(Math.floor(100 * low))} to ${sign(Math.ceil(100 * high))})`;
}

/** Whether the same runs tell the two apart. */
export function tellsApart({ better }: Comparison): string {
  if (better === "first") return "surely better";
  return better === "second" ? "surely worse" : "too close to call";
}
