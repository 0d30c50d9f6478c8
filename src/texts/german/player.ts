import type { Catalogue } from "../catalogue.ts";

export const playerTexts: Catalogue["player"] = {
  routineRank: (rank, count) => `Routine ${rank} von ${count}`,
  ownRoutine: "Eure eigene Routine",
  pause: "Anhalten",
  again: "Noch einmal",
  play: "Abspielen",
  player: "Abspielen und Anhalten",
  moveBefore: "Voriger Zug",
  moveBeforeKey: "Voriger Zug (,)",
  nextMove: "Nächster Zug",
  nextMoveKey: "Nächster Zug (.)",
  nextTroubleKey: "Nächstes Klemmen oder Verlust (L)",
  nextTrouble: "Nächstes Problem",
  speed: "Tempo",
  times: (speed) => `${speed}-faches Tempo`,
  of: (duration) => `von ${duration}`,
  timeInRun: "Zeit im Lauf",
  timeOf: (time, duration) => `${time} von ${duration}`,
  touches: (ball) => `Der Roboter berührt Ball ${ball}`,
  ontoWedge: (ball) => `Ball ${ball} kommt auf den Keil`,
  offWedge: (ball) => `Ball ${ball} rollt vom Keil`,
  rolledOut: (ball) => `Ball ${ball} rollt aus der Einfahrt`,
  robotJams: "Der Roboter klemmt",
  ballJams: (ball) => `Ball ${ball} klemmt zwischen Roboter und Wand`,
  stalled: "Eine Wand hält den Roboter auf, seine Ketten rutschen durch",
  ends: "Die Routine ist zu Ende",
  place: (left, up) => `${left} mm von links, ${up} mm von unten`,
  zone: (width, height) => `Zone ${width} mm breit und ${height} mm hoch, von oben gesehen.`,
  wedge: (corner, legX, legY) => `Keil in der Ecke ${corner}, Schenkel ${legX} mm und ${legY} mm.`,
  keepOut: (width, height, left, up) =>
    `Sperrfläche ${width} × ${height} mm, ihre Ecke unten links ${left} mm von links, ${up} mm nach oben.`,
  endsAfter: (time) => `Der Lauf endet nach ${time}.`,
  allMovesDone: "Alle Züge sind gefahren; die Bälle rollen aus.",
  moveNow: (move, moves, words) => `Zug ${move} von ${moves}: ${words}.`,
  ballNow: (ball, mark, place) => `Ball ${ball}: ${mark}, ${place}.`,
  robotNow: (place) => `Roboter ${place}.`,
  allDelivered: (balls, last) =>
    `${balls === 1 ? "Der eine Ball" : `Alle ${balls} Bälle`} im Ziel, der letzte nach ${last}.`,
  someDelivered: (home, balls, lost) =>
    `${home} von ${balls} ${balls === 1 ? "Ball" : "Bällen"} im Ziel. ${lost}`,
  walls: {
    left: "linke Wand",
    right: "rechte Wand",
    bottom: "untere Wand",
    top: "obere Wand",
  },
  marks: {
    open: "noch nicht im Ziel",
    delivered: "im Ziel",
    lost: "verloren",
  },
  doorwayIn: {
    left: (width, middle) =>
      `Einfahrt ${width} mm breit in der linken Wand, ihre Mitte ${middle} mm nach oben.`,
    right: (width, middle) =>
      `Einfahrt ${width} mm breit in der rechten Wand, ihre Mitte ${middle} mm nach oben.`,
    bottom: (width, middle) =>
      `Einfahrt ${width} mm breit in der unteren Wand, ihre Mitte ${middle} mm von links.`,
    top: (width, middle) =>
      `Einfahrt ${width} mm breit in der oberen Wand, ihre Mitte ${middle} mm von links.`,
  },
};
