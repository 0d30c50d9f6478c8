import type { Evidence } from "../../jobs/evidence.ts";
import type { Judgement } from "../../jobs/practising.ts";
import type { Project } from "../../model/project.ts";
import type { Routine } from "../../model/routine.ts";
import { type SheetChoice, USUAL_SHEET } from "../../report/sheet/sheetFacts.ts";
import type { Workbench } from "../state/workbench.svelte.ts";
import { LongWork } from "./longWork.svelte.ts";

/** Something found out about a routine in a project, as both were then. */
export interface About<T> {
  readonly project: Project;
  readonly routine: Routine;
  readonly seed: number;
  readonly found: T;
}

/** What is under way in the steps Practice and Jury; it goes on while another step is looked at. */
export class HandOn {
  readonly proposing = new LongWork<true>();
  readonly judging = new LongWork<About<Judgement>>();
  readonly gathering = new LongWork<
    About<{ readonly evidence: Evidence; readonly practice: Judgement | null }> & {
      readonly durationS: number;
    }
  >();
  choice = $state.raw<SheetChoice>(USUAL_SHEET);
  withDecisions = $state(true);
}

const known = new WeakMap<Workbench, HandOn>();

export function handOnOf(bench: Workbench): HandOn {
  const found = known.get(bench) ?? new HandOn();
  known.set(bench, found);
  return found;
}
