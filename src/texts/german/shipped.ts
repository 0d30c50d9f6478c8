import type { Catalogue } from "../catalogue.ts";

interface Words {
  readonly name: string;
  readonly robot: string;
  readonly note: string;
}

const GUESSES = "Reibung, Rollen und Abweichung sind geschätzt, bis das Team seine eigenen gemessen hat.";

const WORDS: Readonly<Record<string, Words>> = {
  "usual-zone": {
    name: "Die übliche Zone",
    robot: "Roboter mit Armen",
    note: "Eine Zone mit Wänden, 1200 mal 900 mm, die Einfahrt unten links, ein niedriger Absatz in der Ecke schräg gegenüber und drei leichte Bälle. Die Größen sind üblich. Reibung, Rollen und Abweichung (die eines Roboters, der mit einem Kreisel lenkt) sind geschätzt, bis das Team seine eigenen gemessen hat.",
  },
  "arm-robot": {
    name: "Roboter mit Armen",
    robot: "Roboter mit Armen",
    note: `Ein Roboter mit zwei festen Armen in einer fast quadratischen Zone. Öffnet danach das Beispiel „Roboter mit Platte“: Alles andere ist dort gleich. ${GUESSES}`,
  },
  "big-hall": {
    name: "Die große Halle",
    robot: "Roboter mit Schaufel",
    note: `Eine große Zone, in der Ecke nur Farbe statt eines Absatzes, vier Bälle mit Filz und eine breite Schaufel. Der Weg ist weit, kleine Drehfehler häufen sich: Hier lohnen sich Fahrten an den Wänden. ${GUESSES}`,
  },
  "five-mixed-balls": {
    name: "Fünf verschiedene Bälle",
    robot: "Roboter mit Gabel",
    note: `Fünf Bälle von vier Sorten mit verschiedenen Punkten, leichte und schwere, lebhafte und tote. Der Roboter hat einen eigenen Umriss: eine Gabel mit zwei gebogenen Zinken, aus Blech geschnitten. ${GUESSES}`,
  },
  "long-narrow": {
    name: "Der lange Flur",
    robot: "Kleiner Roboter mit Armen",
    note: `Eine Zone, viermal so lang wie breit, die Einfahrt in einer kurzen Wand, der Absatz am fernen Ende, drei schwere Bälle, die lange weiterrollen. Ein kleiner Roboter, denn zum Drehen ist wenig Platz. ${GUESSES}`,
  },
  "looking-robot": {
    name: "Ein Roboter, der sich umsieht",
    robot: "Roboter mit Armen und Sensoren",
    note: "Eine Halle, zu groß, um sie rechtzeitig abzufahren, für einen Roboter mit Sensoren: vorn einer, der die Laufzeit des Lichts misst, eine Lichtschranke quer zwischen den Armen, ein Kreisel und hinten ein Tastschalter. Was die Sensoren leisten, ist üblich, ohne Quelle; die Abweichung ist die ohne Kreisel, er kommt dazu.",
  },
  "pillar-zone": {
    name: "Zone mit Pfeiler",
    robot: "Roboter mit Schaufel",
    note: `In der Zone steht ein eckiger Pfeiler, und im Streifen vor der Einfahrt liegt kein Ball. Drei tote Bälle, und ein Ball zählt nur, wenn er ganz über dem Absatz liegt. ${GUESSES}`,
  },
  "plate-robot": {
    name: "Roboter mit Platte",
    robot: "Roboter mit Platte",
    note: `Ein Roboter mit einer geraden Platte in einer fast quadratischen Zone. Öffnet danach das Beispiel „Roboter mit Armen“: Alles andere ist dort gleich. ${GUESSES}`,
  },
  "practice-layout": {
    name: "Feste Aufstellung zum Üben",
    robot: "Roboter mit Armen",
    note: `Jedes Mal dieselben drei Stellen, so wie sie mit Klebeband auf dem Übungsboden stehen: frei, an einer Wand und in einer Ecke. Gut, um einen Lauf auf dem Boden mit einem auf dem Bildschirm zu vergleichen. ${GUESSES}`,
  },
  "ramp-corner": {
    name: "Rampe in der Ecke",
    robot: "Roboter mit Platte auf Ketten",
    note: `Eine sanfte Rampe, die bis in die Ecke um 8 mm steigt. Auf glattem Boden rollt ein Ball, den man dort loslässt, wieder heraus, auf rauem bleibt er: Es entscheidet, wie stark der Rollwiderstand streut. Die Ketten des Roboters können die Rampe hinauf. ${GUESSES}`,
  },
  "swinging-arms": {
    name: "Schwenkende Arme",
    robot: "Roboter mit schwenkenden Armen",
    note: `Der Roboter aus dem Beispiel „Roboter mit Armen“, seine zwei Arme an Gelenken: Er sammelt mit offenen Armen, schließt sie um die Bälle und öffnet sie über dem Keil. Alles andere ist wie dort und wie bei „Roboter mit Platte“. ${GUESSES}`,
  },
  "tray-corner": {
    name: "Mulde in der Ecke",
    robot: "Roboter mit Armen",
    note: `Eine Mulde statt eines Absatzes: eine Kante von 4 mm, dann fällt der Boden zur Ecke ab. Ein Ball braucht einen kräftigen Schub hinein und bleibt dann dort. Die Einfahrt ist in der rechten Wand, die Mulde unten links. ${GUESSES}`,
  },
  "unknown-corner": {
    name: "Die Ecke, die niemand kennt",
    robot: "Roboter mit Armen und Sensoren",
    note: "Der Keil kann in einer von drei Ecken sein und wird für jeden Lauf neu gezogen: Der Roboter muss ihn an der Farbe des Bodens finden, bevor er etwas ins Ziel schieben kann. Größen und Sensoren sind üblich, ohne Quelle.",
  },
};

export const shippedTexts: Catalogue["shipped"] = {
  title: (id, title) => WORDS[id]?.name ?? title,
  name: (id, name) => WORDS[id]?.name ?? name,
  note: (id, note) => WORDS[id]?.note ?? note,
  robot: (id, name) => WORDS[id]?.robot ?? name,
};
