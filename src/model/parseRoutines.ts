import { MOVE_KINDS } from "./choices.ts";
import { radFromDeg } from "./degrees.ts";
import type { Findings } from "./findings.ts";
import type { JsonValue } from "./json.ts";
import { MOVE_LIMITS } from "./limits.ts";
import { type Fields, fieldsOf } from "./reader.ts";
import type { Move, Routine } from "./routine.ts";

/** More own routines than a team keeps apart. */
export const MAX_ROUTINES = 40;
/** More moves than any routine that ends in time. */
export const MAX_MOVES = 400;
const MAX_ID_LENGTH = 120;
const MAX_LABEL_LENGTH = 300;

/** Name of the pattern of routines that people made or changed by hand. */
export const OWN_PATTERN = "own";

/** The routines a team wrote itself, under the key "routines" of a project file; ids must differ. */
export function parseRoutines(fields: Fields, findings: Findings): readonly Routine[] {
  const path = fields.pathOf("routines");
  const routines = fields
    .list("routines", { max: MAX_ROUTINES })
    .map((value, i) => parseRoutine(value, `${path}[${i}]`, findings));
  for (const [i, { id }] of routines.entries()) {
    if (routines.findIndex((other) => other.id === id) === i) continue;
    const message = "Two routines have the same id; give one of them another.";
    const expected = "an id of its own for each routine";
    findings.add({ code: "repeated-value", path: `${path}[${i}].id`, message, got: `"${id}"`, expected });
  }
  return routines;
}

function parseRoutine(value: JsonValue, path: string, findings: Findings): Routine {
  const fields = fieldsOf(value, path, findings);
  const id = fields.text("id", { maxLength: MAX_ID_LENGTH });
  const label = fields.text("label", { maxLength: MAX_LABEL_LENGTH, fallback: "Own routine" });
  const from = fields.text("from", { maxLength: MAX_ID_LENGTH, fallback: "" });
  const moves = fields
    .list("moves", { max: MAX_MOVES, required: true })
    .map((entry, i) => parseMove(entry, `${fields.pathOf("moves")}[${i}]`, findings));
  fields.done();
  return { id, pattern: OWN_PATTERN, label, params: from === "" ? {} : { from }, moves };
}

function parseMove(value: JsonValue, path: string, findings: Findings): Move {
  const fields = fieldsOf(value, path, findings);
  const kind = fields.choice("kind", MOVE_KINDS);
  // Without a known kind nobody can say which keys belong here.
  if (kind === undefined) return { kind: "wait", durationS: 0 };
  const move = moveOfKind(kind, fields, findings);
  fields.done();
  return move;
}

function moveOfKind(kind: Move["kind"], fields: Fields, findings: Findings): Move {
  switch (kind) {
    case "drive":
      return { kind, ...fields.numbers(MOVE_LIMITS.drive) };
    case "turn": {
      const { angleDeg, rateDegPerS } = fields.numbers(MOVE_LIMITS.turn);
      return { kind, angleRad: radFromDeg(angleDeg), rateRadPerS: radFromDeg(rateDegPerS) };
    }
    case "arc": {
      const { angleDeg, ...rest } = fields.numbers(MOVE_LIMITS.arc);
      return { kind, ...rest, angleRad: radFromDeg(angleDeg) };
    }
    case "toWall": {
      const move: Move = { kind, ...fields.numbers(MOVE_LIMITS.toWall) };
      if (move.distanceMm * move.overrunMm >= 0) return move;
      const message = "The overrun must have the same sign as the distance: both forward or both backward.";
      const expected = move.distanceMm < 0 ? "0 or less" : "0 or more";
      const path = fields.pathOf("overrunMm");
      findings.add({ code: "opposite-signs", path, message, got: `${move.overrunMm} mm`, expected });
      return move;
    }
    case "wait":
      return { kind, ...fields.numbers(MOVE_LIMITS.wait) };
    default:
      return kind satisfies never;
  }
}
