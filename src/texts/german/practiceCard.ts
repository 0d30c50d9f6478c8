import type { Catalogue } from "../catalogue.ts";

export const practiceCardTexts: Catalogue["practiceCard"] = {
  title: (routine) => `Zettel für Übungsläufe: ${routine}`,
  head: (project, routine) => `${project}: Übungsläufe von ${routine}`,
  places:
    "Jede Stelle ist die Mitte eines Balls: mm von der linken Wand, mm von der unteren Wand, von oben gesehen wie in der Zeichnung. Bei den Aufstellungen, neben denen „schwer“ steht, war die Routine in simulierten Läufen am schlechtesten.",
  day: "Tag: ______________________",
  run: "Lauf",
  ball: (number) => `Ball ${number}`,
  home: "im Ziel",
  time: "Zeit",
  happened: "was geschah",
  hard: "schwer",
  ofBalls: (balls) => `__ von ${balls}`,
  caution:
    "Finger, Haare und Ärmel weg von laufenden Ketten und Armen; die Regeln des Wettbewerbs und die Regeln vor Ort gehen vor.",
};
