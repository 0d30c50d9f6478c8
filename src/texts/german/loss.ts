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
  clause: {
    "rolled-out": (balls, many) =>
      `${many ? "Bälle" : "Ball"} ${balls} ${many ? "sind" : "ist"} aus der Einfahrt gerollt`,
    "out-of-time": (balls, many) =>
      `${many ? "Bälle" : "Ball"} ${balls} ${many ? "waren" : "war"} nicht im Ziel, als die Zeit um war`,
    "left-wedge": (balls, many) =>
      `${many ? "Bälle" : "Ball"} ${balls} ${many ? "lagen" : "lag"} auf dem Keil, aber nicht bis zum Ende`,
    jammed: (balls, many) =>
      `${many ? "Bälle" : "Ball"} ${balls} ${many ? "haben" : "hat"} zwischen Roboter und Wand geklemmt`,
    "left-pusher": (balls, many) =>
      `${many ? "Bälle" : "Ball"} ${balls} ${many ? "wurden" : "wurde"} berührt, aber vom Schieber verloren`,
    "never-touched": (balls, many) =>
      `${many ? "Bälle" : "Ball"} ${balls} ${many ? "wurden" : "wurde"} nie berührt`,
  },
};
