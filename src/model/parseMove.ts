import { issueTexts as t } from "../texts/english/issue.ts";
import { ARMS_ENDS } from "./choices.ts";
import { radFromDeg } from "./degrees.ts";
import type { Findings } from "./findings.ts";
import { mm } from "./lengthText.ts";
import { MOVE_LIMITS } from "./limits.ts";
import { BESIDE_LIMITS } from "./programLimits.ts";
import type { Fields } from "./reader.ts";
import type { Beside, Move } from "./routine.ts";

/** The keys of one move, its kind known. */
export function moveOfKind(kind: Move["kind"], fields: Fields, findings: Findings): Move {
  switch (kind) {
    case "drive":
      return { kind, ...fields.numbers(MOVE_LIMITS.drive), ...besideOf(fields) };
    case "turn": {
      const { angleDeg, rateDegPerS } = fields.numbers(MOVE_LIMITS.turn);
      return { kind, angleRad: radFromDeg(angleDeg), rateRadPerS: radFromDeg(rateDegPerS) };
    }
    case "arc": {
      const { angleDeg, ...rest } = fields.numbers(MOVE_LIMITS.arc);
      return { kind, ...rest, angleRad: radFromDeg(angleDeg) };
    }
    case "toWall": {
      const move: Move = { kind, ...fields.numbers(MOVE_LIMITS.toWall), ...besideOf(fields) };
      if (move.distanceMm * move.overrunMm >= 0) return move;
      const message = t.oppositeSigns;
      const expected = t.sign(move.distanceMm < 0);
      const path = fields.pathOf("overrunMm");
      findings.add({ code: "opposite-signs", path, message, got: mm(move.overrunMm), expected });
      return move;
    }
    case "wait":
      return { kind, ...fields.numbers(MOVE_LIMITS.wait) };
    case "arms":
      return { kind, to: fields.choice("to", ARMS_ENDS) ?? "open", ...fields.numbers(MOVE_LIMITS.arms) };
    default:
      return kind satisfies never;
  }
}

/** Counted from 1 in files and words, as the sensors are. */
function besideOf(fields: Fields): { readonly beside?: Beside } {
  if (!fields.has("beside")) return {};
  const own = fields.child("beside", "required");
  const { sensor, readsMm } = own.numbers(BESIDE_LIMITS);
  own.done();
  return { beside: { sensor: sensor - 1, readsMm } };
}
