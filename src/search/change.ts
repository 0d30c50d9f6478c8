import { checkProject } from "../model/check.ts";
import type { Project } from "../model/project.ts";
import type { Move, Routine } from "../model/routine.ts";
import { nominalCourse } from "../motion/course.ts";
import { RoutineMaker } from "../plan/maker.ts";
import { changeTexts } from "../texts/english/change.ts";
import { CHANGES } from "./changes.ts";

/** What a change makes of a project and a routine, or why it cannot be made, as a plain sentence. */
export type Changed =
  | {
      readonly project: Project;
      readonly routine: Routine;
      /** Plan the routine anew for the changed robot. */
      readonly replans?: boolean;
      /** Says more than the change's own title. */
      readonly title?: string;
    }
  | { readonly reason: string };

/** Short and stable; texts say in plain words what is done, as the beginning of "…: +6 of 100 runs". */
export type ChangeId = keyof typeof changeTexts.titles;

/** Something a team can do: to the robot, to the way it drives, to the routine. */
export interface Change {
  readonly id: ChangeId;
  readonly about: "pusher" | "drift" | "routine";
  readonly apply: (project: Project, routine: Routine) => Changed;
}

/** A change ready to be tried, or left out for a reason. */
export interface ProposedChange {
  readonly id: string;
  readonly about: Change["about"];
  readonly title: string;
  readonly made: { readonly project: Project; readonly routine: Routine } | null;
  /** Why it is left out; null where it is not. */
  readonly reason: string | null;
}

/**
 * Every known change, made and checked: the project must pass all checks, and the routine may not run into anything that it
 * is not meant to. A robot of another shape gets the same routine planned anew where a pattern made it.
 */
export function proposeChanges(project: Project, routine: Routine): readonly ProposedChange[] {
  return CHANGES.map((change) => propose(change, project, routine));
}

function propose({ id, about, apply }: Change, project: Project, routine: Routine): ProposedChange {
  const decides = routine.program !== undefined && about === "routine";
  const changed: Changed = decides ? { reason: changeTexts.decides } : apply(project, routine);
  const head = {
    id,
    about,
    title: ("title" in changed ? changed.title : undefined) ?? changeTexts.titles[id],
  };
  if ("reason" in changed) return { ...head, made: null, reason: changed.reason };
  const [issue] = checkProject(changed.project);
  if (issue !== undefined) return { ...head, made: null, reason: issue.message };
  const replanned = changed.replans === true ? replan(changed.project, routine, project) : changed.routine;
  if (replanned === null) {
    return { ...head, made: null, reason: changeTexts.noRoom };
  }
  const hit = strayTouch(changed.project, replanned.moves, strayTouches(project, routine.moves));
  if (hit !== null) return { ...head, made: null, reason: changeTexts.runsInto(hit + 1) };
  return { ...head, made: { project: changed.project, routine: replanned }, reason: null };
}

/** The same routine for another robot; a team's own moves stay as they are. Null: the pattern does not fit any more. */
function replan(changed: Project, routine: Routine, project: Project): Routine | null {
  const usual = new RoutineMaker(project).make(routine.id);
  if (usual === null || JSON.stringify(usual.moves) !== JSON.stringify(routine.moves)) return routine;
  return new RoutineMaker(changed).make(routine.id);
}

function strayTouches(project: Project, moves: readonly Move[]): number {
  return nominalCourse(project, moves).blockedMoves.length;
}

/** First move that touches something without meaning to, when there are more of them than before. */
function strayTouch(project: Project, moves: readonly Move[], before: number): number | null {
  const blocked = nominalCourse(project, moves).blockedMoves;
  return blocked.length > before ? (blocked[0] ?? null) : null;
}
