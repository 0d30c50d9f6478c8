import type { Catalogue } from "../catalogue.ts";

export const sheetMakerTexts: Catalogue["sheetMaker"] = {
  title: "Ein Blatt für die Jury",
  none: "Sobald eine Routine gewählt ist, lässt sich ein Blatt über sie machen.",
  hint: "Der Weg, warum gerade dieser, die Belege, Übungsläufe, Entscheidungen, was schiefgeht, was das Modell weglässt und wie jeder es nachrechnen kann. Es bleibt auf diesem Computer.",
  length: "Länge",
  pages: { 1: "eine Seite", 2: "zwei Seiten" },
  audience: "Für",
  audiences: { engineers: "eine Jury aus Fachleuten", visitors: "jüngere Gäste" },
  steps: "die Schritte auf einer eigenen Seite",
  decisions: (count) => `${count} ${count === 1 ? "Entscheidung" : "Entscheidungen"} aus dem Heft`,
  gather: "Belege sammeln",
  gatherAgain: "Belege noch einmal sammeln",
  running: "Die Routine und die anderen Muster werden gefahren",
  old: "Das Projekt wurde inzwischen geändert: Sammelt noch einmal, dann sagt das Blatt, was jetzt gilt.",
  print: "Drucken oder als PDF sichern",
  save: "Als Datei sichern",
  sheet: "Das Blatt",
};
