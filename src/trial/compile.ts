import type { Project } from "../model/project.ts";
import type { Routine } from "../model/routine.ts";
import { sideOf } from "../model/sensor.ts";
import { SideGuide } from "./guide.ts";
import { Pilot } from "./pilot.ts";
import { planTrial, type TrialOptions, type TrialPlan } from "./plan.ts";

/** @param project where the wedge may be in several corners, each trial draws one */
export function compileTrial(project: Project, routine: Routine, options: TrialOptions = {}): TrialPlan {
  const { program } = routine;
  return planTrial(project, routine, options, {
    pilotOf: (each) => (program === undefined ? null : new Pilot(each, program, options.perfect ?? false)),
    guideOf,
  });
}

/** null for a robot that cannot look to a side. */
function guideOf(project: Project): SideGuide | null {
  return project.robot.sensors.some((sensor) => sideOf(sensor) !== 0) ? new SideGuide(project) : null;
}
