import type { PointMm } from "../../src/model/zone.ts";
import type { TrialPlan } from "../../src/trial/plan.ts";
import { Recorder } from "../../src/trial/recorder.ts";
import type { Recording, RunEvent } from "../../src/trial/recording.ts";
import { restS, run } from "../../src/trial/run.kernel.ts";

/** A recorder that also looks at the engine's world after every step of a run. */
class Probe extends Recorder {
  private readonly look: (timeS: number) => void;

  constructor(balls: number, look: (timeS: number) => void) {
    super(balls);
    this.look = look;
  }

  override frame(timeS: number): void {
    super.frame(timeS);
    this.look(timeS);
  }
}

/** Runs one trial by the engine; `look` sees the world at the start of each step and at the end. */
export function watchTrial(
  plan: TrialPlan,
  seed: number,
  index: number,
  look: (timeS: number) => void,
): Recording {
  const placement: readonly PointMm[] = plan.placement ?? plan.placements.draw(seed, index);
  const probe = new Probe(plan.kinds.length, look);
  run(plan, seed, index, placement, probe);
  return probe.finish(restS());
}

export function eventsOf(recording: Recording, kind: RunEvent["kind"]): readonly RunEvent[] {
  return recording.events.filter((event) => event.kind === kind);
}
