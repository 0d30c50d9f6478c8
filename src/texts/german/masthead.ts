import type { Catalogue } from "../catalogue.ts";

export const mastheadTexts: Catalogue["masthead"] = {
  notKept: "! nicht gesichert",
  beingKept: "wird gesichert …",
  kept: "✓ in diesem Browser gesichert",
  untouched: "ein Beispiel, noch unverändert",
  projects: "Projekte, offen:",
  undoTitle: "Rückgängig (Strg+Z)",
  undo: "Rückgängig",
  redoTitle: "Wiederholen (Strg+Umschalt+Z)",
  redo: "Wiederholen",
  lengths: "Längen in",
  help: "Hilfe",
  keys: "Tasten",
  cannotChange:
    "Die Sprache bleibt, wie sie ist: Die Seite müsste neu laden, aber dieser Browser sichert das Projekt gerade nicht. Sichere es erst als Datei.",
  theme: "Farben",
  themes: {
    auto: "Farben: auto",
    light: "Farben: hell",
    dark: "Farben: dunkel",
  },
};
