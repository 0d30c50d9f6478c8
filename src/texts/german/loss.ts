import type { Catalogue } from "../catalogue.ts";

export const lossTexts: Catalogue["loss"] = {
  ended: {
    "rolled-out": "ist aus der Einfahrt gerollt",
    "out-of-time": "war nicht im Ziel, als die Zeit um war",
    "left-wedge": "lag auf dem Keil, ist aber wieder heruntergerollt",
    jammed: "hat zwischen Roboter und Wand geklemmt",
    "left-pusher": "wurde berührt, ist aber vom Schieber gerutscht",
    "never-touched": "wurde nie berührt",
  },
  title: {
    "rolled-out": "aus der Einfahrt gerollt",
    "out-of-time": "Zeit abgelaufen",
    "left-wedge": "wieder vom Keil gerollt",
    jammed: "an einer Wand geklemmt",
    "left-pusher": "vom Schieber gerutscht",
    "never-touched": "nie berührt",
  },
};
