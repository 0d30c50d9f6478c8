import { topic } from "../language.ts";

/** The head of the page: the project that lies open and what is always at hand. */
export const mastheadTexts = topic("masthead", {
  notKept: "! not kept",
  beingKept: "being kept…",
  kept: "✓ kept in this browser",
  untouched: "an example, not changed yet",
  projects: "Projects, open:",
  undoTitle: "Undo (Ctrl+Z)",
  undo: "Undo",
  redoTitle: "Redo (Ctrl+Shift+Z)",
  redo: "Redo",
  lengths: "Lengths in",
  help: "Help",
  keys: "Keys",
  cannotChange:
    "The language stays as it is: the page would have to load anew, and this browser does not keep the project just now. Save it as a file first.",
  theme: "Theme",
  themes: {
    auto: "Theme: auto",
    light: "Theme: light",
    dark: "Theme: dark",
  },
});
