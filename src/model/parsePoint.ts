import { issueTexts as t } from "../texts/english/issue.ts";
import { describe, type Findings, noun } from "./findings.ts";
import type { JsonValue } from "./json.ts";
import { COORDINATE_MM } from "./limits.ts";
import { numberOf } from "./readNumber.ts";
import type { PointMm } from "./zone.ts";

/** A point of a list, written [x, y] in mm. */
export function parsePoint(value: JsonValue, path: string, findings: Findings): PointMm {
  const [x, y] = Array.isArray(value) ? (value as readonly JsonValue[]) : [];
  if (x === undefined || y === undefined || (Array.isArray(value) && value.length !== 2)) {
    const expected = t.aPoint;
    const message = t.wrongType(noun(value), expected);
    findings.add({ code: "wrong-type", path, message, got: describe(value), expected });
    return { xMm: 0, yMm: 0 };
  }
  return {
    xMm: numberOf(x, `${path}[0]`, COORDINATE_MM, findings),
    yMm: numberOf(y, `${path}[1]`, COORDINATE_MM, findings),
  };
}
