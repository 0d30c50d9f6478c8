import type { Catalogue } from "../catalogue.ts";

export const helpTexts: Catalogue["help"] = {
  word: {
    zone: "Zone",
    doorway: "Einfahrt",
    wedge: "Keil",
    keepOut: "Sperrfläche",
    placement: "Aufstellung",
    pusher: "Schieber",
    drift: "Abweichung",
    move: "Zug",
    routine: "Routine",
    pattern: "Muster",
    run: "Lauf",
    rate: "Erfolgsquote",
    coverage: "Abdeckung",
    sure: "Sichere Abdeckung",
    blind: "Blinder Fleck",
    loss: "Verlust",
    jam: "Klemmen",
    squaring: "Ausrichten",
  },
  meaning: {
    zone: "Der ummauerte Boden, auf dem die Bälle liegen, von oben gesehen.",
    doorway:
      "Die Lücke in einer Wand, durch die der Roboter hineinfährt und durch die Bälle hinausrollen können.",
    wedge: "Das flache Dreieck in einer Ecke, auf dem am Ende jeder Ball liegen muss.",
    keepOut: "Ein fester Klotz auf dem Boden, in den weder Roboter noch Ball hineinkommt.",
    placement: "Wie alle Bälle zu Beginn eines Laufs liegen.",
    pusher: "Die Kanten des Roboters, die Bälle berühren sollen.",
    drift:
      "Worin sich der wirkliche Weg des Roboters vom befohlenen unterscheidet: teils den ganzen Lauf lang gleich, teils in jedem Zug neu.",
    move: "Ein Befehl: fahren, drehen, bis zur Wand fahren, warten, Arme öffnen oder schließen.",
    routine: "Die Liste der Züge, die der Roboter fährt.",
    pattern: "Ein Rezept, das Routinen ergibt, etwa Bahnen oder Runden.",
    run: "Die Routine, einmal auf einer Aufstellung gefahren, mit ihren eigenen kleinen Fehlern; er hat eine Nummer und lässt sich wiederholen.",
    rate: "In wie vielen von 100 Läufen jeder Ball ins Ziel kommt, und zwischen welchen zwei Zahlen der wahre Anteil wahrscheinlich liegt.",
    coverage:
      "Der Anteil der Stellen, an denen ein Ball liegen kann, die der Schieber ohne Abweichung berührt.",
    sure: "Der Anteil, der bei jeder Abweichung innerhalb der genannten Grenzen berührt wird.",
    blind: "Eine Stelle, die der Schieber nicht berührt.",
    loss: "Ein Ball, der nicht ins Ziel kam, und warum.",
    jam: "Ein Ball steckt zwischen Roboter und Wand fest.",
    squaring: "Gegen eine Wand drücken, bis der Roboter gerade davor steht.",
  },
  caution: {
    fingers:
      "Haltet Finger, Haare und Ärmel von laufenden Ketten und Armen fern; schaltet den Roboter aus, bevor ihr in die Zone greift.",
    batteries:
      "Ladet Akkus nur dort, wo ein Erwachsener sie sieht, auf etwas, das nicht brennt, und nie über Nacht.",
    rules: "Die Regeln des Wettbewerbs und die Sicherheitsregeln vor Ort gehen vor, was immer hier steht.",
    slowly: "Probiert eine neue Routine erst langsam, mit einer Hand am Schalter.",
    practise: "Ein Lauf, der hier klappt, ist nur ein Versprechen des Modells: Übt auf dem echten Boden.",
  },
};
