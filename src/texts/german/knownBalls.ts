import type { Catalogue } from "../catalogue.ts";

export const knownBallsTexts: Catalogue["knownBalls"] = {
  title: "Wenn der Roboter wüsste, wo sie liegen",
  about: "sich das lohnt",
  why: "Keine blinde Routine kann besser sein als ein Roboter, der jeden Ball sieht. Verschiebt die Bälle und seht, welcher zuerst geholt wird, von welcher Seite, und wie lange es dauert.",
  player: "Alle Bälle bekannt",
  show: "Besten Weg zeigen",
  hide: "Zurück zur Routine",
  working: "Der beste Weg wird gesucht …",
  trip: (balls, seconds) =>
    `${balls.length === 1 ? `Ball ${balls[0]}` : `Bälle ${balls.join(" und ")} zusammen`}: im Ziel nach ${seconds} s`,
  moves: (from, to) => (from === to ? `Zug ${from}` : `Züge ${from} bis ${to}`),
  none: "Kein Weg bringt von hier einen Ball ins Ziel, ohne ihn zu verlieren.",
  leftOut: (ball) => `Ball ${ball}: kein Weg, der ihn behält, oder keine Zeit.`,
  still: (home, of) => `Ohne Abweichung sind am Ende ${home} von ${of} Bällen im Ziel.`,
  drifting: (home, of) => `Mit der Abweichung dieses Laufs: ${home} von ${of}.`,
  exact: "Keine andere Reihenfolge, Gruppe oder Seite aus diesen Bausteinen ist schneller.",
  cut: "Es gibt zu viele Reihenfolgen, um alle anzusehen: Vielleicht geht es schneller.",
  watch: "Ansehen",
  from: (ball, words) => `Ball ${ball}: ${words}`,
  shade: "Schattieren, wie lange das Schieben ins Ziel von jeder Stelle dauert",
  drag: "Am Anfang lassen sich die Bälle in der Zeichnung verschieben; der Weg ändert sich sofort.",
};
