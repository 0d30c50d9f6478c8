import type { Catalogue } from "../catalogue.ts";

export const keptTexts: Catalogue["kept"] = {
  keptRoutine: (label) => `Behalten: ${label}`,
  keptRobot: (project) => `Den Roboter behalten, wie er jetzt ist, nicht wie in ${project}`,
  now: (project) => `${project}, jetzt`,
  before: (project) => `${project}, vorher`,
  measured: "Roboter und Ball vermessen",
  changed: (what) => `Geändert: ${what}.`,
  unchanged: "In der Projektdatei ist nichts anders.",
  head: (other) => `Von ${other} zu diesem Projekt geändert:`,
  notWritten: "Vor dem Ende angehalten, darum ist nichts aufgeschrieben.",
  written: (file) => `Aufgeschrieben in ${file}; das Projekt davor bleibt, wie es war.`,
};
