import type { Catalogue } from "../catalogue.ts";

export const choiceTexts: Catalogue["choice"] = {
  profile: {
    flat: "Flach auf den Boden gemalt",
    ramp: "Eine Rampe, die zur Ecke ansteigt",
    shelf: "Eine kurze Rampe, dann eben",
    tray: "Eine Kante, dann zur Ecke abfallend",
  },
  delivered: {
    centre: "wenn seine Mitte über dem Keil ist",
    wholly: "wenn er ganz über dem Keil ist",
  },
  build: { solid: "massiv", hollow: "hohl" },
  ownBall: "Ein eigener Ball",
  layout: { random: "zufällig, nach einer Regel", fixed: "immer an denselben Stellen" },
};
