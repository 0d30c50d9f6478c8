import type { Catalogue } from "../catalogue.ts";

export const coderStepTexts: Catalogue["coderStep"] = {
  none: "Sobald eine Routine gewählt ist, stehen hier ihre Schritte.",
  writtenAs: "Geschrieben als",
  forms: {
    table: "Tabelle",
    pseudo: "nummerierte Sätze",
    python: "Programm mit #-Kommentaren",
    c: "Programm mit Klammern",
    csv: "CSV für eine Tabellenkalkulation",
    json: "JSON für ein anderes Programm",
  },
  copy: "Kopieren",
  copied: "Kopiert.",
  notCopied: "Dieser Browser lässt die Seite nicht kopieren: Markiert den Text und kopiert ihn von Hand.",
  save: "Als Datei sichern",
  sensorsDecide: "Wie lange es dauert, bestimmen die Sensoren.",
  inAll: (seconds) => `Zusammen ${seconds} s.`,
  wheelDegrees: (gaugeMm) =>
    `Die Radgrade sind mit der wirksamen Spurweite ${gaugeMm} mm gerechnet und gleichen die mittlere Abweichung des Projekts aus: Sobald der Roboter so fährt, stellt die Mittelwerte unter „Den ganzen Lauf lang gleich“ auf 0.`,
  rounded: "Zum Lesen sind die Zahlen hier gerundet; kopiert oder gesichert haben sie alle Stellen.",
  example: (run) => `Was er in Lauf ${run} gefahren ist; jeder Lauf geht anders`,
  listing: "Das Programm",
  steps: "Schritte",
  whole: (steps) => `Alle ${steps} Schritte zeigen`,
  fewer: (steps) => `Nur die ersten ${steps} Schritte zeigen`,
};
