import { pushField } from "../plan/push/pushField.ts";
import { coverageOf } from "../score/coverage.ts";
import { driftBudget } from "../score/driftBudget.ts";
import { sureCoverage } from "../score/sureCoverage.ts";
import { proposeChanges } from "../search/change.ts";
import { response, usableFactors } from "../search/factors.ts";
import { routineParts, withParts } from "../search/routineParts.ts";
import { worstPlacement } from "../search/worstPlacement.ts";
import { runFates } from "../trial/fates.ts";
import { runBatch } from "../trial/run.ts";
import type { Known } from "./known.ts";
import type { Answers, RareKind, TaskOf } from "./protocol.ts";

/** What is done for the tasks of the weak spots, the fixes and the maps; fetched when the first of them is asked for. */
export const RARE_ANSWERS: { readonly [K in RareKind]: (known: Known, task: TaskOf<K>) => Answers[K] } = {
  "all-known": ({ knowing }, { seed, from, to }) => runBatch(knowing, seed, from, to),
  coverage: ({ subject, routine }) => coverageOf(subject.project, routine),
  fates: ({ plan }, { seed, from, to }) => runFates(plan, seed, from, to),
  "sure-coverage": ({ subject, routine }, { bounds }) => sureCoverage(subject.project, routine, bounds),
  "drift-budget": ({ subject, routine }, { bounds, wantedFrac }) =>
    driftBudget(subject.project, routine, bounds, wantedFrac),
  worst: ({ subject, routine }, { request }) => worstPlacement(subject.project, routine, request),
  changes: ({ subject, routine }) => proposeChanges(subject.project, routine),
  parts: partsOf,
  factors: ({ subject, routine }) =>
    usableFactors(subject.project, routine).map(({ id, title }) => ({ id, title })),
  "push-field": ({ subject }) => pushField(subject.project),
  response: ({ subject, routine }, { request }) => response(subject.project, routine, request),
};

function partsOf({ subject: { project }, routine }: Known, { most }: TaskOf<"parts">): Answers["parts"] {
  const cut = routineParts(project, routine, most);
  const variants = Array.from({ length: 1 << cut.parts.length }, (_, mask) =>
    withParts(project, routine, cut, mask),
  );
  return { parts: cut.parts, variants };
}
