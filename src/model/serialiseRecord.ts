import type { Project } from "./project.ts";
import { type Decision, EMPTY_RECORD, type PracticeEntry, type TeamRecord } from "./record.ts";
import type { Routine } from "./routine.ts";

/** Whether there is nothing to write down. */
export function isEmptyRecord(record: TeamRecord): boolean {
  return JSON.stringify(record) === JSON.stringify(EMPTY_RECORD);
}

/** A team's record as it stands in a project file, empty parts left out; see parseRecord. */
export function recordForFile(
  { measurements, practice, decisions }: TeamRecord,
  inputsForFile: (project: Project, routines: readonly Routine[]) => object,
) {
  return {
    ...(measurements === "" ? {} : { measurements }),
    ...(practice.length === 0 ? {} : { practice: practice.map(entryForFile) }),
    ...(decisions.length === 0
      ? {}
      : { decisions: decisions.map((each) => decisionForFile(each, inputsForFile)) }),
  };
}

/** One practice run as a file holds it. */
export function entryForFile({ routine, placement, hard, home, timeS, loss, day, note }: PracticeEntry) {
  return {
    routine,
    placement: placement.map(({ xMm, yMm }) => ({ xMm, yMm })),
    ...(hard ? { hard } : {}),
    ...(home === null ? {} : { home }),
    ...(timeS === null ? {} : { timeS }),
    ...(loss === "" ? {} : { loss }),
    ...(day === "" ? {} : { day }),
    ...(note === "" ? {} : { note }),
  };
}

/** One decision with all its inputs. */
export function decisionForFile(
  { date, kind, title, figures, reason, inputs }: Decision,
  inputsForFile: (project: Project, routines: readonly Routine[]) => object,
) {
  const { project, otherProject, routines, change, measurements, seed, trials } = inputs;
  return {
    ...{ date, kind, title, figures: [...figures], reason },
    inputs: {
      // Two robots may run routines of one id: each project holds its own.
      ...(otherProject === undefined
        ? { project: inputsForFile(project, routines) }
        : {
            project: inputsForFile(project, routines.slice(0, 1)),
            otherProject: inputsForFile(otherProject, routines.slice(1)),
          }),
      ...(change === undefined ? {} : { change }),
      ...(measurements === "" ? {} : { measurements }),
      ...{ seed, trials },
    },
  };
}
