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
    const hint = quoted ? "Write the number without quotes." : `It must be ${expected}.`;
    report("wrong-type", `Here stands ${noun(value)} instead of a number. ${hint}`);
  } else if (!Number.isFinite(value)) {
    report("not-finite", `This is no finite number. It must be ${expected}.`);
  } else if (value < limits.min || value > limits.max || (limits.above && value === limits.min)) {
    report("out-of-range", `The number is outside what makes sense here. It must be ${expected}.`);
  } else if (limits.whole && !Number.isInteger(value)) {
    report("not-whole", `The number must be whole. It must be ${expected}.`);
  } else {
    // −0 would not survive being written: + 0 makes it 0.
    return value + 0;
  }
  return standIn;
}

/** The limits in words, like "a number above 0 and up to 5 kg (left out: 1 kg)". */
export function allowed(limits: NumberLimits): string {
  const unit = limits.unit === "" ? "" : limits.unit.startsWith("°") ? limits.unit : ` ${limits.unit}`;
  const kind = limits.whole ? "a whole number" : "a number";
  const range = limits.above
    ? `above ${limits.min} and up to ${limits.max}${unit}`
    : `from ${limits.min} to ${limits.max}${unit}`;
  const fallback = limits.fallback === undefined ? "" : ` (left out: ${limits.fallback}${unit})`;
  return `${kind} ${range}${fallback}`;
}
