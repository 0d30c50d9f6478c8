import { topic } from "../language.ts";

/** What stands around the steps of the job, and their names. */
export const shellTexts = topic("shell", {
  steps: "Steps of the job",
  toMend: (count: number) => `${count} to mend`,
  drawing: "The drawing",
  footer:
    "Everything is computed in this browser; nothing is sent anywhere. A model leaves things out: try the routine on your real floor before you trust it.",
  pageTitle: "Wedgeward: which routine brings every ball home?",
  pageDescription:
    "Describe a zone and a robot, see which routine brings every ball onto the wedge, and watch it run.",
  titles: {
    zone: "Zone",
    robot: "Robot",
    routines: "Routines",
    watch: "Watch",
    weak: "Weak spots",
    practice: "Practice",
    jury: "Jury",
  },
  words: {
    zone: "what the floor looks like",
    robot: "what drives on it",
    routines: "what it could do",
    watch: "what happens then",
    weak: "where it fails",
    practice: "onto the real floor",
    jury: "show how and why",
  },
});
