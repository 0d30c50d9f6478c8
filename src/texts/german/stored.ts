import type { Catalogue } from "../catalogue.ts";

export const storedTexts: Catalogue["stored"] = {
  foreign: "es ist nicht das, was dieses Programm dort sichert",
  unreadable: "seine Datei ist nicht lesbar",
  noName: "Ein Projekt ohne Namen",
};
