import type { Catalogue } from "../catalogue.ts";

export const robotFactTexts: Catalogue["robotFact"] = {
  doorway: "Passt er durch die Einfahrt?",
  spare: (width, doorway, side) =>
    `Er ist ${width} breit, die Einfahrt ${doorway}: Auf jeder Seite bleiben ${side} Platz.`,
  tooWide: (width, doorway) =>
    `Er ist ${width} breit, die Einfahrt ${doorway}: Geradeaus kommt er nicht hinein.`,
  closedWidth: (width) => `Mit geschlossenen Armen ist er ${width} breit.`,
  turn: "Kann er neben einer Wand drehen?",
  turnBack: (reach, back) =>
    `Um auf der Stelle zu drehen, muss die Mitte zwischen seinen Rädern ${reach} von jeder Wand weg sein; hat er vorn eine Wand berührt, muss er erst ${back} zurück.`,
  turnNowhere: (reach) =>
    `Um auf der Stelle zu drehen, muss die Mitte zwischen seinen Rädern ${reach} von jeder Wand weg sein, und so eine Stelle gibt es in dieser Zone nicht.`,
  carry: "Hält er einen Ball beim Drehen?",
  shallow:
    "Nein: Sein Schieber ist weniger tief als der Radius eines Balls. Ein liegender Ball wird weitergeschoben, ein rollender gleitet beim Drehen zur Seite weg.",
  caged: (rate) => `Mit geschlossenen Armen bei jedem Tempo; mit offenen bis etwa ${rate} in der Sekunde.`,
  openCage: (gap, ball) =>
    `Geschlossen lassen seine Arme ${gap} zwischen ihren Spitzen: Ein Ball von ${ball} kommt hinaus. Weiter nach innen gedreht hielten sie ihn gefangen, und Routinen, die Bälle tragen, könnten mitmachen.`,
  always: "Ja, auch wenn er dreht, so schnell er kann.",
  upTo: (rate) => `Bis etwa ${rate} in der Sekunde; dreht er schneller, läuft der Ball nach vorn hinaus.`,
  brake: "Behält er einen Ball beim Bremsen?",
  brakeAlways: "Ja, auch aus dem höchsten Tempo.",
  brakeUpTo: (speed) => `Bis etwa ${speed}; bremst er aus mehr, rollt der Ball voraus.`,
  wedge: "Kann er einen Ball auf den Keil schieben?",
  shortOfWedge: (ball, short) =>
    `Nein: Was auf dem Boden steht (gestrichelt), reicht zu weit nach vorn. Die Kante des Keils hält es auf, wenn einem Ball von ${ball} noch ${short} fehlen; dann kommt er nur hin, wenn er von selbst weiterrollt. Zeichnet diesen Umriss noch einmal, oder sagt, dass der Roboter auf den Keil fahren kann.`,
  square: "Kann er sich an einer Wand ausrichten?",
  squareBoth: (half, lever) =>
    `Ja, vorn und hinten: Die Ecken sind ${half} oder mehr von der Mitte weg; seine Ketten brauchen ${lever}, um gerade gedreht zu werden.`,
  squareFront: (half, lever) =>
    `Ja, mit der Vorderseite: Ihre Ecken sind ${half} von der Mitte weg; seine Ketten brauchen ${lever}, um gerade gedreht zu werden. Mit der Rückseite bleibt er schief stehen.`,
  squareBack: (half, lever) =>
    `Nur mit der Rückseite: Ihre Ecken sind ${half} von der Mitte weg; seine Ketten brauchen ${lever}, um gerade gedreht zu werden. Mit der Vorderseite bleibt er schief stehen.`,
  squareNot: (half, lever) =>
    `Nein: Seine Ecken sind höchstens ${half} von der Mitte weg; seine Ketten brauchen ${lever}, um gerade gedreht zu werden. So bleibt er schief stehen.`,
};
