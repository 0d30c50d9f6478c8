import { issueTexts as t } from "../texts/english/issue.ts";
import { checkProject } from "./check.ts";
import { describe, Findings, noun } from "./findings.ts";
import type { Parsed } from "./issue.ts";
import { type JsonValue, readJson } from "./json.ts";
import { COORDINATE_MM } from "./limits.ts";
import { ballsOf, type Project } from "./project.ts";
import { fieldsOf } from "./reader.ts";
import type { PointMm } from "./zone.ts";

/**
 * Reads a placement file, `[{ "xMm": 120, "yMm": 340 }, …]`, one place for each ball of the project in its order. Whatever
 * is wrong comes back at once: the text itself, the number of places, places a ball cannot lie at.
 */
export function parsePlacement(text: string, project: Project): Parsed<readonly PointMm[]> {
  const findings = new Findings();
  const { value, issues } = readJson(text);
  findings.addAll(issues);
  if (value === undefined) return { ok: false, issues: findings.all() };
  const places = placesOf(value, ballsOf(project).length, findings);
  if (findings.count > 0) return { ok: false, issues: findings.all() };
  const laid = {
    ...project,
    rules: { ...project.rules, layout: { kind: "fixed", positions: places } },
  } as const;
  // A place's number in the list is its number in the file.
  for (const issue of checkProject(laid)) {
    findings.add({ ...issue, path: issue.path.replace("rules.layout.positions", "") });
  }
  return findings.count === 0 ? { ok: true, value: places } : { ok: false, issues: findings.all() };
}

function placesOf(value: JsonValue, count: number, findings: Findings): readonly PointMm[] {
  const expected = t.placeList(count);
  if (!Array.isArray(value)) {
    const message = t.notAList(noun(value));
    findings.add({ code: "wrong-type", path: "", message, got: describe(value), expected });
    return [];
  }
  const list = value as readonly JsonValue[];
  if (list.length !== count) {
    const got = t.places(list.length);
    findings.add({ code: "bad-placement", path: "", message: t.placeEach, got, expected });
  }
  return list.map((entry, i) => {
    const fields = fieldsOf(entry, `[${i}]`, findings);
    const place = { xMm: fields.number("xMm", COORDINATE_MM), yMm: fields.number("yMm", COORDINATE_MM) };
    fields.done();
    return place;
  });
}
