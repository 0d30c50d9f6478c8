import type { Catalogue } from "../catalogue.ts";

export const fieldTexts: Catalogue["field"] = {
  why: "warum?",
  allowed: (words) => `Erlaubt: ${words}.`,
  isNot: (value, wanted) => `„${value}“ ist nicht ${wanted}.`,
  wanted: {
    length: "eine Länge wie 900 mm, 90 cm oder 0,9 m",
    angle: "ein Winkel in Grad wie 45",
    speed: "eine Geschwindigkeit wie 200 mm/s oder 20 cm/s",
    mass: "eine Masse wie 800 g oder 0,8 kg",
    time: "eine Zeit wie 120 s oder 2 min",
    temperature: "eine Temperatur wie 20 °C",
    share: "ein Anteil wie 5 %",
    plain: "eine Zahl wie 0,3",
  },
};
