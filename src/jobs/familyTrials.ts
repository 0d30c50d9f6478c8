import { compileTrial } from "../trial/compile.ts";
import { runFamilyBatch } from "../trial/family.ts";
import type { TrialBatch } from "../trial/outcome.ts";
import type { TrialPlan } from "../trial/plan.ts";
import { withMoves } from "../trial/withMoves.ts";
import type { Known } from "./known.ts";
import type { TaskOf } from "./protocol.ts";

/** What the plans of a project's families share, and a routine's plan among them; kept as long as the worker knows of either. */
const shared = new WeakMap<Known, TrialPlan>();
const members = new WeakMap<Known, { readonly of: TrialPlan; readonly plan: TrialPlan }>();

/** Trials of several lists of moves of a project, run together as far as they begin alike. @throws RangeError for a program */
export function familyTrials(
  project: Known,
  family: readonly Known[],
  { seed, from, to }: TaskOf<"family">,
): readonly TrialBatch[] {
  const [first] = family;
  if (first === undefined) return [];
  const plan = shared.get(project) ?? compileTrial(project.subject.project, first.routine);
  shared.set(project, plan);
  const plans = family.map((each) => planIn(plan, each));
  return runFamilyBatch(plans, seed, from, to);
}

function planIn(of: TrialPlan, routine: Known): TrialPlan {
  const known = members.get(routine);
  if (known?.of === of) return known.plan;
  const plan = withMoves(of, routine.routine);
  members.set(routine, { of, plan });
  return plan;
}
