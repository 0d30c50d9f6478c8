/** The steps of the job, in order; their names are in texts. */
export const STEPS = ["zone", "robot", "routines", "watch", "weak", "practice", "jury"] as const;

export type StepId = (typeof STEPS)[number];

/** The step in which what stands under a path of the project file is typed. */
export function stepOfPath(path: string): StepId {
  if (path.startsWith("robot")) return "robot";
  if (path.startsWith("routines")) return "routines";
  if (path.startsWith("record.decisions")) return "jury";
  return path.startsWith("record") ? "practice" : "zone";
}
