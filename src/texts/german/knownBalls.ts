import type { Catalogue } from "../catalogue.ts";

export const knownBallsTexts: Catalogue["knownBalls"] = {
  title: "Wenn der Roboter wüsste, wo sie liegen",
  about: "sich das lohnt",
  why: "Keine blinde Routine kann besser sein als ein Roboter, der jeden Ball sieht. Verschiebt die Bälle und seht, welcher zuerst geholt wird, von welcher Seite, und wie lange es dauert.",
  show: "Besten Weg zeigen",
  hide: "Zurück zur Routine",
  working: "Der beste Weg wird gesucht …",
  one: (ball, seconds) => `Ball ${ball}: im Ziel nach ${seconds} s`,
  together: (balls, seconds) => `Bälle ${balls} zusammen: im Ziel nach ${seconds} s`,
  moves: (from, to) => (from === to ? `Zug ${from}` : `Züge ${from} bis ${to}`),
  none: "Kein Weg bringt von hier einen Ball ins Ziel, ohne ihn zu verlieren.",
  leftOut: (ball) => `Ball ${ball}: kein Weg, der ihn behält, oder keine Zeit.`,
  still: (home, of) => `Ohne Abweichung sind am Ende ${home} von ${of} Bällen im Ziel.`,
  drifting: (home, of) => `Mit der Abweichung dieses Laufs: ${home} von ${of}.`,
  exact: "Keine andere Reihenfolge, Gruppe oder Seite aus diesen Bausteinen ist schneller.",
  cut: "Es gibt zu viele Reihenfolgen, um alle anzusehen: Vielleicht geht es schneller.",
  watch: "Ansehen",
  shade: "Schattieren, wie lange das Schieben ins Ziel von jeder Stelle dauert",
  drag: "Am Anfang lassen sich die Bälle in der Zeichnung verschieben; der Weg ändert sich sofort.",
};
