import { issueTexts as t } from "../texts/english/issue.ts";
import { plain } from "../texts/numbers.ts";
import { describe, type Findings, noun } from "./findings.ts";
import type { JsonValue } from "./json.ts";
import type { NumberLimits } from "./limits.ts";

/** A number within its limits; a stand-in and an issue otherwise. */
export function numberOf(value: JsonValue, path: string, limits: NumberLimits, findings: Findings): number {
  const expected = allowed(limits);
  const report = (code: string, message: string) =>
    findings.add({ code, path, message, got: describe(value), expected });
  const standIn = limits.fallback ?? limits.min;
  if (typeof value !== "number") {
    const quoted = typeof value === "string" && value.trim() !== "" && Number.isFinite(Number(value));
    const hint = quoted ? t.noQuotes : t.mustBe(expected);
    report("wrong-type", t.noNumber(noun(value), hint));
  } else if (!Number.isFinite(value)) {
    report("not-finite", t.notFinite(t.mustBe(expected)));
  } else if (value < limits.min || value > limits.max || (limits.above && value === limits.min)) {
    report("out-of-range", t.outOfRange(t.mustBe(expected)));
  } else if (limits.whole && !Number.isInteger(value)) {
    report("not-whole", t.notWhole(t.mustBe(expected)));
  } else {
    // −0 would not survive being written: + 0 makes it 0.
    return value + 0;
  }
  return standIn;
}

/** The limits in words, like "a number above 0 and up to 5 kg (left out: 1 kg)". */
export function allowed(limits: NumberLimits): string {
  const unit = limits.unit === "" ? "" : limits.unit.startsWith("°") ? limits.unit : ` ${limits.unit}`;
  const { whole = false, above = false, min, max, fallback } = limits;
  const leftOut = fallback === undefined ? "" : t.leftOut(`${plain(fallback)}${unit}`);
  return t.number(whole, above, plain(min), `${plain(max)}${unit}`) + leftOut;
}
