import { topic } from "../language.ts";

/** The leaf of Jury that makes a sheet. */
export const sheetMakerTexts = topic("sheetMaker", {
  title: "A sheet for the jury",
  none: "As soon as a routine is chosen, a sheet about it can be made.",
  hint: "The way, why this one, the evidence, practice, decisions, what fails, what the model leaves out, and how anyone can run it again. It stays on this computer.",
  length: "Length",
  pages: { 1: "one page", 2: "two pages" },
  audience: "For",
  audiences: { engineers: "a jury of engineers", visitors: "younger visitors" },
  steps: "the steps on a page of their own",
  decisions: (count: number) => `${count} ${count === 1 ? "decision" : "decisions"} from the notebook`,
  gather: "Gather the evidence",
  gatherAgain: "Gather the evidence again",
  running: "Running the routine and the other patterns",
  old: "The project was changed since: gather again to have the sheet say what is so now.",
  print: "Print, or save as PDF",
  save: "Save as a file",
  sheet: "The sheet",
});
