import type { Catalogue } from "../catalogue.ts";

export const linkTexts: Catalogue["link"] = {
  badLink: (what) =>
    `Der Link lässt sich nicht öffnen. ${what} Bittet noch einmal darum, oder um die Projektdatei.`,
  holdsNone: "Es steckt kein Projekt darin.",
  tooLong: "Er ist länger als jeder Link dieses Programms.",
  tooLarge: "Ausgepackt ist mehr darin, als ein Projekt enthält.",
  damaged: "Ein Teil davon fehlt oder wurde unterwegs verändert.",
  badRun: "Der Link nennt einen Lauf, den es nicht geben kann.",
  noNumber: "keine Zahl",
  range: (most) => `0 bis ${most}`,
  afterHash: "was in der Adresse nach dem # kommt",
  aLink: "ein Link von dieser Seite",
};
