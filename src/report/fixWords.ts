import type { Fix } from "../jobs/fixes.ts";
import type { PartWorth } from "../jobs/partWorths.ts";
import type { RateDifference } from "../num/interval.ts";
import { fixTexts } from "../texts/english/fix.ts";

/** "+6 of 100 runs (4 to 8)"; "−0" never. */
export function gainWords({ value, low, high }: RateDifference): string {
  return fixTexts.gain(signed(100 * value), signed(100 * low, Math.floor), signed(100 * high, Math.ceil));
}

/** "costs 3 s", "saves 2 s", or nothing. */
export function costWords(costsS: number): string {
  const seconds = Math.round(Math.abs(costsS));
  if (seconds === 0) return "";
  return costsS > 0 ? fixTexts.costs(seconds) : fixTexts.saves(seconds);
}

/** "a pusher 20 mm wider: +6 of 100 runs (4 to 8), costs 3 s" */
export function fixWords({ title, gain, costsS, verdict }: Fix): string {
  const cost = costWords(costsS);
  const unsure = verdict === "not told apart" ? fixTexts.unsure : "";
  return `${title}: ${gainWords(gain)}${cost === "" ? "" : `, ${cost}`}${unsure}`;
}

/** "moves 5 to 12", counted from 1 */
export function partTitle({ from, to }: Pick<PartWorth, "from" | "to">): string {
  return to - from === 1 ? fixTexts.move(to) : fixTexts.moves(from + 1, to);
}

/** With a real minus sign, and a plus before what is more than nothing. */
export function signed(value: number, round: (value: number) => number = Math.round): string {
  const whole = round(value) + 0;
  if (whole === 0) return "0";
  return whole > 0 ? `+${whole}` : `−${-whole}`;
}
