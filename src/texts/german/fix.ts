import type { Catalogue } from "../catalogue.ts";

export const fixTexts: Catalogue["fix"] = {
  gain: (value, low, high) => `${value} von 100 Läufen (${low} bis ${high})`,
  share: (value, low, high) => `${value} (${low} bis ${high})`,
  costs: (seconds) => `kostet ${seconds} s`,
  saves: (seconds) => `spart ${seconds} s`,
  unsure: "; nicht zu unterscheiden",
  move: (number) => `Zug ${number}`,
  moves: (from, to) => `Züge ${from} bis ${to}`,
  tooCloseSentence: "Nicht zu unterscheiden.",
};
