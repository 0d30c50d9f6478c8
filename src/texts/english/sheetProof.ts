import { topic } from "../language.ts";

/** What a sheet says of routines that decide on the way, and of the hardest placement. */
export const sheetProofTexts = topic("sheetProof", {
  decides: (robot: string, run: number, home: number, balls: number) =>
    `${robot} decides by its sensors as it goes, so every run goes another way. Drawn is run ${run} (${home} of ${balls} balls home).`,
  numbers: "The numbers on its way are those of the steps",
  inAppendix: "in the appendix.",
  asListed: "as the command “steps” lists them.",
  about: (seconds: string) => `about ${seconds} s`,
  hard: (places: string, rate: string, range: string) =>
    `The hardest placement found (x,y of each ball in mm, ${places}): every ball home in ${rate} (${range}).`,
  hardLoss: (balls: number, of: number, loss: string) =>
    `Most often there: ${loss} (${balls} of ${of} balls).`,
  hardNone: (runs: number) => `In ${runs} runs laid so, no ball was lost.`,
  hardAgain: (run: number) => `Run ${run} shows it:`,
});
