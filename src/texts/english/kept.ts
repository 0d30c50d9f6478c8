import { topic } from "../language.ts";

/** What the command says of decisions that it writes into the notebook. */
export const keptTexts = topic("kept", {
  keptRoutine: (label: string) => `Kept ${label}`,
  keptRobot: (project: string) => `Kept the robot as it is now, not as in ${project}`,
  now: (project: string) => `${project}, now`,
  before: (project: string) => `${project}, before`,
  measured: "Measured robot and ball",
  changed: (what: string) => `Changed: ${what}.`,
  unchanged: "In the project file nothing differs.",
  head: (other: string) => `Changed from ${other} to this project:`,
  notWritten: "Stopped before the end, so nothing was written down.",
  written: (file: string) => `Written down in ${file}; the project before it stays as it was.`,
});
