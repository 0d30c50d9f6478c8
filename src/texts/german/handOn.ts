import type { Catalogue } from "../catalogue.ts";

export const handOnTexts: Catalogue["handOn"] = {
  whatToDo: "Was zu tun ist",
  whatToShow: "Was zu zeigen ist",
  leaves: {
    code: "Schritte zum Programmieren",
    tape: "Maßband",
    runs: "Übungsläufe",
    sheet: "Juryblatt",
    notebook: "Entscheidungsheft",
    pictures: "Plakat und Clip",
  },
  progress: (words, percent) => `${words}, ${percent} %`,
  stop: "Aufhören",
  failed: (why) => `Das hat nicht geklappt: ${why}`,
  stopped: "Abgebrochen.",
  printed: "Was gerade gedruckt wird",
};
