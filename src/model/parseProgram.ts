import { issueTexts as t } from "../texts/english/issue.ts";
import { CORNERS, MOVE_KINDS } from "./choices.ts";
import { radFromDeg } from "./degrees.ts";
import type { Findings } from "./findings.ts";
import type { JsonValue } from "./json.ts";
import { moveOfKind } from "./parseMove.ts";
import { type Condition, MAX_DEPTH, MAX_LINES, type Program, type Question, type Step } from "./program.ts";
import {
  FETCH_LIMITS,
  GO_TO_LIMITS,
  NEARER_LIMITS,
  REPEAT_LIMITS,
  SCAN_LIMITS,
  SHORT_LIMITS,
} from "./programLimits.ts";
import { type Fields, fieldsOf } from "./reader.ts";
import { BUMP_SIDES } from "./sensor.ts";

const STEP_KINDS: readonly Step["kind"][] = [...MOVE_KINDS, "scan", "fetch", "goTo", "repeat", "if"];
const ASKS: readonly Condition["kind"][] = [
  "seen",
  "holding",
  "overWedge",
  "bumped",
  "nearer",
  "shortOfTime",
];

/** The lines under a key of a file; blocks nested too deep, and lines beyond the limit, are an issue each. */
export function parseProgram(fields: Fields, key: string, findings: Findings): Program {
  return new ProgramReader(findings).block(fields, key, 1);
}

class ProgramReader {
  private readonly findings: Findings;
  private lines = 0;

  constructor(findings: Findings) {
    this.findings = findings;
  }

  block(fields: Fields, key: string, depth: number): Program {
    const path = fields.pathOf(key);
    const values = fields.list(key, { max: MAX_LINES });
    if (depth > MAX_DEPTH && values.length > 0) {
      this.report("nested-too-deep", path, t.tooDeep, t.levels(depth), t.atMost(t.levels(MAX_DEPTH)));
      return [];
    }
    const before = this.lines;
    this.lines += values.length;
    if (before <= MAX_LINES && this.lines > MAX_LINES) {
      const most = t.atMost(t.lines(MAX_LINES));
      this.report("program-too-long", path, t.tooManyLines, t.lines(this.lines), most);
    }
    return values.map((value, i) => this.step(value, `${path}[${i}]`, depth));
  }

  private step(value: JsonValue, path: string, depth: number): Step {
    const fields = fieldsOf(value, path, this.findings);
    const kind = fields.choice("kind", STEP_KINDS);
    // Without a known kind nobody can say which keys belong here.
    if (kind === undefined) return { kind: "wait", durationS: 0 };
    const step = this.stepOfKind(kind, fields, depth);
    fields.done();
    return step;
  }

  private stepOfKind(kind: Step["kind"], fields: Fields, depth: number): Step {
    switch (kind) {
      case "scan": {
        const { angleDeg, rateDegPerS } = fields.numbers(SCAN_LIMITS);
        return {
          kind,
          angleRad: radFromDeg(angleDeg),
          rateRadPerS: radFromDeg(rateDegPerS),
          corner: corner(fields),
        };
      }
      case "fetch":
        return { kind, ...fields.numbers(FETCH_LIMITS), corner: corner(fields) };
      case "goTo": {
        const { headingDeg, ...rest } = fields.numbers(GO_TO_LIMITS);
        return { kind, ...rest, headingRad: radFromDeg(headingDeg), corner: corner(fields) };
      }
      case "repeat": {
        const { atMost } = fields.numbers(REPEAT_LIMITS);
        const until = fields.has("until") ? question(fields.child("until", "optional")) : null;
        return { kind, atMost, until, steps: this.block(fields, "steps", depth + 1) };
      }
      case "if": {
        const when = question(fields.child("when", "required"));
        return {
          kind,
          when,
          yes: this.block(fields, "yes", depth + 1),
          no: this.block(fields, "no", depth + 1),
        };
      }
      default:
        return moveOfKind(kind, fields, this.findings);
    }
  }

  private report(code: string, path: string, message: string, got: string, expected: string): void {
    this.findings.add({ code, path, message, got, expected });
  }
}

function corner(fields: Fields) {
  return fields.choice("corner", CORNERS) ?? "upper-right";
}

function question(fields: Fields): Question {
  const kind = fields.choice("ask", ASKS);
  if (kind === undefined) return { ask: { kind: "seen" }, not: false };
  const asked = { ask: condition(kind, fields), not: fields.flag("not", false) };
  fields.done();
  return asked;
}

function condition(kind: Condition["kind"], fields: Fields): Condition {
  switch (kind) {
    case "seen":
    case "holding":
    case "overWedge":
      return { kind };
    case "bumped":
      return { kind, side: fields.choice("side", BUMP_SIDES, "front") ?? "front" };
    case "nearer": {
      // Counted from 1 in files and words, as the sensors are.
      const { sensor, thanMm } = fields.numbers(NEARER_LIMITS);
      return { kind, sensor: sensor - 1, thanMm };
    }
    case "shortOfTime":
      return { kind, ...fields.numbers(SHORT_LIMITS) };
    default:
      return kind satisfies never;
  }
}
