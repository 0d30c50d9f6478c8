import { issueTexts as t } from "../texts/english/issue.ts";
import { MOVE_KINDS } from "./choices.ts";
import type { Findings } from "./findings.ts";
import type { JsonValue } from "./json.ts";
import { moveOfKind } from "./parseMove.ts";
import { parseProgram } from "./parseProgram.ts";
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
    const message = t.repeatedId;
    const expected = t.ownId;
    findings.add({ code: "repeated-value", path: `${path}[${i}].id`, message, got: `"${id}"`, expected });
  }
  return routines;
}

function parseRoutine(value: JsonValue, path: string, findings: Findings): Routine {
  const fields = fieldsOf(value, path, findings);
  const id = fields.text("id", { maxLength: MAX_ID_LENGTH });
  const label = fields.text("label", { maxLength: MAX_LABEL_LENGTH, fallback: t.unnamed.routine });
  const from = fields.text("from", { maxLength: MAX_ID_LENGTH, fallback: "" });
  const moves = fields
    .list("moves", { max: MAX_MOVES, required: true })
    .map((entry, i) => parseMove(entry, `${fields.pathOf("moves")}[${i}]`, findings));
  const program = fields.has("program") ? parseProgram(fields, "program", findings) : [];
  fields.done();
  const params: Routine["params"] = from === "" ? {} : { from };
  return { id, pattern: OWN_PATTERN, label, params, moves, ...(program.length === 0 ? {} : { program }) };
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
