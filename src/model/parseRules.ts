import { issueTexts as t } from "../texts/english/issue.ts";
import { plain } from "../texts/numbers.ts";
import { CORNERS, DELIVERED_RULES, LAYOUT_KINDS } from "./choices.ts";
import { describe, type Findings } from "./findings.ts";
import { DEFAULT_SPEED_FRACS, RULE_LIMITS, SETTINGS_LIMITS, SPEED_FRAC, SPREAD_LIMITS } from "./limits.ts";
import { parsePoint } from "./parsePoint.ts";
import { MAX_RECTS, parseRect } from "./parseZone.ts";
import { MAX_BALLS } from "./project.ts";
import type { Fields } from "./reader.ts";
import { numberOf } from "./readNumber.ts";
import type { Layout, RoutineSettings, Rules, Spread } from "./rules.ts";
import { nearestWord } from "./suggest.ts";
import type { Corner } from "./zone.ts";

/** Each speed multiplies the number of routines tried. */
export const MAX_SPEEDS = 8;

export function parseRules(fields: Fields, findings: Findings): Rules {
  const rules: Rules = {
    timeLimitS: fields.number("timeLimitS", RULE_LIMITS.timeLimitS),
    delivered: fields.choice("delivered", DELIVERED_RULES, "centre") ?? "centre",
    layout: parseLayout(fields.child("layout", "optional"), findings),
    wedgeCorners: parseCorners(fields, findings),
  };
  fields.done();
  return rules;
}

function parseCorners(fields: Fields, findings: Findings): readonly Corner[] {
  const path = fields.pathOf("wedgeCorners");
  const expected = t.oneOf(CORNERS.map((corner) => `"${corner}"`).join(", "));
  return fields.list("wedgeCorners", { max: CORNERS.length }).flatMap((value, i) => {
    const corner = CORNERS.find((each) => each === value);
    if (corner !== undefined) return [corner];
    const near = typeof value === "string" ? nearestWord(value, CORNERS) : undefined;
    const hint = near === undefined ? t.chooseOne : t.didYouMean(near);
    const message = t.unknownCorner(hint);
    findings.add({ code: "unknown-choice", path: `${path}[${i}]`, message, got: describe(value), expected });
    return [];
  });
}

function parseLayout(fields: Fields, findings: Findings): Layout {
  const kind = fields.choice("kind", LAYOUT_KINDS, "random") ?? "random";
  const layout = kind === "random" ? parseRandomLayout(fields, findings) : parseFixedLayout(fields, findings);
  fields.done();
  return layout;
}

function parseRandomLayout(fields: Fields, findings: Findings): Layout {
  const path = fields.pathOf("forbidden");
  const { timeLimitS: _, ...margins } = RULE_LIMITS;
  return {
    kind: "random",
    ...fields.numbers(margins),
    forbidden: fields
      .list("forbidden", { max: MAX_RECTS })
      .map((value, i) => parseRect(value, `${path}[${i}]`, findings)),
  };
}

function parseFixedLayout(fields: Fields, findings: Findings): Layout {
  const path = fields.pathOf("positionsMm");
  return {
    kind: "fixed",
    positions: fields
      .list("positionsMm", { max: MAX_BALLS, required: true })
      .map((value, i) => parsePoint(value, `${path}[${i}]`, findings)),
  };
}

export function parseSpread(fields: Fields): Spread {
  const spread = fields.numbers(SPREAD_LIMITS);
  fields.done();
  return spread;
}

export function parseSettings(fields: Fields, findings: Findings): RoutineSettings {
  const lengths = fields.numbers(SETTINGS_LIMITS);
  const speedFracs = parseSpeeds(fields, findings);
  fields.done();
  return { ...lengths, speedFracs };
}

function parseSpeeds(fields: Fields, findings: Findings): readonly number[] {
  const path = fields.pathOf("speedFracs");
  const given = fields.has("speedFracs");
  const speeds = fields
    .list("speedFracs", { max: MAX_SPEEDS })
    .map((value, i) => numberOf(value, `${path}[${i}]`, SPEED_FRAC, findings));
  if (!given) return DEFAULT_SPEED_FRACS;
  const report = (code: string, message: string, got: string) =>
    findings.add({ code, path, message, got, expected: t.speeds(MAX_SPEEDS) });
  if (speeds.length === 0) report("empty-list", t.noSpeed, t.none);
  if (new Set(speeds).size < speeds.length)
    report("repeated-value", t.speedTwice, speeds.map(plain).join(", "));
  return speeds;
}
