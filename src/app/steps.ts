/** The steps of the job, in order; their names are in texts. */
export const STEPS = ["zone", "robot", "routines", "watch", "weak", "practice", "jury"] as const;

export type StepId = (typeof STEPS)[number];
