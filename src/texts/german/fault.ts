import type { Catalogue } from "../catalogue.ts";

export const faultTexts: Catalogue["fault"] = {
  ended: (why) => `ein Rechenhelfer hörte auf, bevor er geantwortet hatte: ${why}`,
  notLoaded: "sein Programm ließ sich nicht laden",
  unreadable: "seine Antwort war nicht lesbar",
  noAnswer: "keine Antwort",
};
