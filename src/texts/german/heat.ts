import type { Catalogue } from "../catalogue.ts";

export const heatTexts: Catalogue["heat"] = {
  title: "Wo verlorene Bälle anfangs lagen",
  description:
    "Die Zone von oben mit Quadraten darin: je größer das Quadrat, desto mehr der Bälle, die dort liegen, gehen verloren; ein Punkt, wo keiner verloren geht, nichts, wo zu wenige Bälle liegen. Die Tabelle daneben nennt die Zahlen.",
  caption: (balls) =>
    `Wo Bälle lagen, die verloren gingen: je größer das Quadrat, desto mehr; ein Punkt: keiner. ${balls} Bälle.`,
  table:
    "Von 100 Bällen, die in jedem Teil der Zone lagen, kamen so viele ins Ziel; in Klammern, wie viele gezählt wurden.",
  none: "kein Ball",
};
