import { topic } from "../language.ts";

/** How numbers are written. */
export const numberTexts = topic("number", {
  decimalMark: ".",
  /** Before the last of several. */
  and: "and",
  /** "91 of 100" */
  ofHundred: (share: string) => `${share} of 100`,
  /** "3 to 7" */
  range: (low: string, high: string) => `${low} to ${high}`,
});
