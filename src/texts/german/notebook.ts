import type { Catalogue } from "../catalogue.ts";

export const notebookTexts: Catalogue["notebook"] = {
  title: "Entscheidungsheft",
  hint: "Was entschieden wurde, mit welchen Zahlen und warum. Jeder Eintrag behält Projekt und Routinen so, wie sie waren: Er lässt sich nachrechnen, was immer aus ihnen wird.",
  none: "Noch steht nichts darin.",
  entry: (date, title) => `${date}: ${title}`,
  again: "Nachrechnen",
  takeOut: "Wegnehmen",
  running: "Wird mit dem nachgerechnet, was der Eintrag mitbringt",
  same: "Nachgerechnet mit dem Projekt von damals: dieselben Zahlen.",
  sameInOtherWords: "Nachgerechnet mit dem Projekt von damals: dieselben Zahlen, in den Worten von heute:",
  others: "Nachgerechnet mit dem Projekt von damals sagt diese Version des Programms:",
  notFound: "woraus der Eintrag entstand, gibt es im Projekt nicht mehr",
  write: "Eine Entscheidung aufschreiben",
  nothing:
    "Noch gibt es nichts zu entscheiden: Wählt eine Routine, probiert unter „Schwächen“ Änderungen, oder vermesst unter „Üben“ euren Roboter.",
  madeFrom: "Grundlage",
  date: "Datum",
  why: "Warum wir so entschieden haben",
  writeDown: "Aufschreiben",
  writeDownAfter: (runs) => `Aufschreiben, nach je ${runs} ${runs === 1 ? "Lauf" : "Läufen"}`,
  comparing: "Auf denselben Aufstellungen wird verglichen",
  written: "Aufgeschrieben.",
  measurements: "die Messungen unter „Üben“",
  change: (title) => `eine Änderung: ${title}`,
  comparison: (label) => `ein Vergleich mit: ${label}`,
};
