import { topic } from "../language.ts";

/** The leaf of Practice with the steps for whoever codes the robot. */
export const coderStepTexts = topic("coderStep", {
  none: "As soon as a routine is chosen, its steps stand here.",
  writtenAs: "Written as",
  forms: {
    table: "table",
    pseudo: "numbered sentences",
    python: "program with # comments",
    c: "program with braces",
    csv: "CSV for a spreadsheet",
    json: "JSON for another program",
  },
  copy: "Copy",
  copied: "Copied.",
  notCopied: "This browser does not let the page copy: mark the text and copy it by hand.",
  save: "Save as a file",
  sensorsDecide: "How long it takes its sensors decide.",
  inAll: (seconds: string) => `In all ${seconds} s.`,
  wheelDegrees: (gaugeMm: string) =>
    `Wheel degrees are reckoned with the effective gauge, ${gaugeMm} mm, and make up for the mean drift of the project: once the robot drives with them, set the means under “The same all run long” to 0.`,
  rounded: "Numbers are rounded for reading here; copied or saved they have every digit.",
  example: (run: number) => `What it drove in run ${run}; another run goes another way`,
  listing: "The listing",
  steps: "Steps",
  whole: (steps: number) => `Show all ${steps} steps`,
  fewer: (steps: number) => `Show the first ${steps} steps only`,
});
