/** The steps of the job, in order. */
export const STEPS = [
  { id: "zone", title: "Zone", words: "what the floor looks like" },
  { id: "robot", title: "Robot", words: "what drives on it" },
  { id: "routines", title: "Routines", words: "what it could do" },
  { id: "watch", title: "Watch", words: "what happens then" },
  { id: "weak", title: "Weak spots", words: "where it fails" },
  { id: "practice", title: "Practice", words: "onto the real floor" },
  { id: "jury", title: "Jury", words: "show how and why" },
] as const;

export type StepId = (typeof STEPS)[number]["id"];
