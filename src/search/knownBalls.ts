import type { Project } from "../model/project.ts";
import type { Routine } from "../model/routine.ts";
import { type PushSequence, planPushSequence, sequenceRoutine } from "../plan/push/pushSequence.ts";
import { compileTrial } from "../trial/compile.ts";
import { homeAfter } from "../trial/homeAfter.ts";
import type { TrialOutcome } from "../trial/outcome.ts";
import type { Recording } from "../trial/recording.ts";
import { placementOf, planFor, recordTrial } from "../trial/run.ts";

/** What a robot that knew every ball's place would do in a trial, and what became of it. */
export interface KnownBallsRun {
  readonly sequence: PushSequence;
  readonly routine: Routine;
  /** Balls home in a run without drift. */
  readonly still: readonly boolean[];
  /** The trial with the project's drift, by its seed and number. */
  readonly outcome: TrialOutcome;
  readonly recording: Recording;
}

/** The best push sequence for the placement of trial `index` of `seed`, run in that trial. A pure function of its arguments. */
export function knownBallsRun(project: Project, seed: number, index: number): KnownBallsRun {
  const empty: Routine = { id: "", pattern: "", label: "", params: {}, moves: [] };
  const whole = compileTrial(project, empty);
  const drawn = planFor(whole, seed, index);
  const placement = placementOf(drawn, seed, index);
  const isHome = homeAfter(drawn.project, placement);
  const sequence = planPushSequence(
    drawn.project,
    placement.map((place, i) => ({ ...place, index: i })),
    { homeAfter: isHome },
  );
  const routine = sequenceRoutine(sequence);
  const plan = compileTrial(drawn.project, routine, { placement });
  const { outcome, recording } = recordTrial(plan, seed, index);
  const { corner } = drawn.project.zone.wedge;
  return {
    sequence,
    routine,
    still: isHome(sequence.moves),
    outcome,
    recording: drawn === whole ? recording : { ...recording, corner },
  };
}
