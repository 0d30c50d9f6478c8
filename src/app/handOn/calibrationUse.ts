import type { Project } from "../../model/project.ts";
import { projectForFile } from "../../model/serialise.ts";
import { applyCalibration } from "../../practice/applyCalibration.ts";
import type { Calibration } from "../../practice/calibrate.ts";
import type { Draft } from "../project/draft.svelte.ts";
import { withValue } from "../project/form.ts";

/** Puts what was measured into the project under edit: one step of its history. */
export function usedCalibration(draft: Draft, project: Project, found: Calibration): void {
  const { robot, balls, spread } = projectForFile(applyCalibration(project, found).project);
  draft.change((form) => {
    const measured = withValue(form, "robot.drift", robot.drift);
    // As typed where nothing was measured.
    if (!found.rollingResistance && !found.restitution) return measured;
    return withValue(withValue(measured, "balls", balls), "spread", spread);
  });
}
