import { topic } from "../language.ts";

/** What is wrong with a link. */
export const linkTexts = topic("link", {
  badLink: (what: string) =>
    `The link cannot be opened. ${what} Ask for it again, or for the project's file.`,
  holdsNone: "It holds no project.",
  tooLong: "It is longer than any link of this program.",
  tooLarge: "It unpacks to more than any project holds.",
  damaged: "Part of it is missing or was changed on the way.",
  badRun: "The link names a run that cannot be.",
  noNumber: "no number",
  range: (most: number) => `0 to ${most}`,
  afterHash: "the part of the address after #",
  aLink: "a link made by this page",
});
