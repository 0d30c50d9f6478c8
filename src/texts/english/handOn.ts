import { topic } from "../language.ts";

/** The leaves of Practice and Jury, and long work in them. */
export const handOnTexts = topic("handOn", {
  whatToDo: "What to do",
  whatToShow: "What to show",
  leaves: {
    code: "Steps for the coder",
    tape: "Tape measure",
    runs: "Practice runs",
    sheet: "Jury sheet",
    notebook: "Decision notebook",
    pictures: "Poster and clip",
  },
  progress: (words: string, percent: number) => `${words}: ${percent} %`,
  stop: "Stop",
  failed: (why: string) => `This did not work: ${why}`,
  stopped: "Stopped.",
  printed: "What is being printed",
});
