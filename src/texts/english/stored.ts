import { topic } from "../language.ts";

/** What is wrong with what the browser keeps. */
export const storedTexts = topic("stored", {
  foreign: "it is not what this program keeps there",
  unreadable: "its file cannot be read",
  noName: "A project without a name",
});
