import type { Fix } from "../jobs/fixes.ts";
import type { BallsShare, PartWorth } from "../jobs/partWorths.ts";
import type { RateDifference } from "../num/interval.ts";
import { fixTexts } from "../texts/english/fix.ts";
import { fixed } from "../texts/numbers.ts";

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

/** "0.65 (0.52 to 0.78)"; the ends are rounded outward. */
export function shareWords({ value, low, high }: BallsShare): string {
  return fixTexts.share(hundredths(value), hundredths(low, Math.floor), hundredths(high, Math.ceil));
}

function hundredths(value: number, round: (value: number) => number = Math.round): string {
  const whole = round(100 * value) + 0;
  return `${whole < 0 ? "−" : ""}${fixed(Math.abs(whole) / 100, 2)}`;
}

/** With a real minus sign, and a plus before what is more than nothing. */
export function signed(value: number, round: (value: number) => number = Math.round): string {
  const whole = round(value) + 0;
  if (whole === 0) return "0";
  return whole > 0 ? `+${whole}` : `−${-whole}`;
}
