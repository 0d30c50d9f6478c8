import type { Catalogue } from "../catalogue.ts";

export const zoneIssueTexts: Catalogue["zoneIssue"] = {
  legTooLong: {
    width: "Der Schenkel des Keils ist länger, als die Zone breit ist; macht ihn kürzer.",
    height: "Der Schenkel des Keils ist länger, als die Zone hoch ist; macht ihn kürzer.",
  },
  span: (from, to) => `von ${from} bis ${to}`,
  within: (from, to) => `innerhalb von ${from} bis ${to}`,
  box: (left, right, low, top) => `x ${left} bis ${right}, y ${low} bis ${top}`,
  withinBox: (right, top) => `innerhalb von x 0 bis ${right}, y 0 bis ${top}`,
  doorwayOutside: (length) =>
    `Die Einfahrt reicht über ihre Wand hinaus, die ${length} lang ist; verschiebt sie oder macht sie schmaler.`,
  doorwayOnWedge: "Einfahrt und Schenkel des Keils liegen am selben Stück der Wand; verschiebt die Einfahrt.",
  keepOutOutside: "Die Sperrfläche reicht aus der Zone hinaus; schneidet sie an den Wänden ab.",
  keepOutOnWedge: "Die Sperrfläche liegt über dem Keil; verschiebt sie.",
  keepOutInDoorway: "Die Sperrfläche steht in der Einfahrt; verschiebt sie.",
  clearOfWedge: "neben dem Keil",
  clearOfDoorway: "neben der Einfahrt",
  ramp: "Eine Rampe steigt von der Kante zur Ecke an: Am Ende muss sie höher sein als an der Kante.",
  tray: "Eine Mulde fällt von der Kante zur Ecke ab: Am Ende muss sie niedriger sein als an der Kante.",
  flatLip:
    "Ein flacher Keil ist nur aufgemalt und hat keine Kante; nehmt die Kante weg oder wählt einen Absatz.",
  flatRise: "Ein flacher Keil hat keine Höhe; nehmt sie weg oder wählt eine Rampe.",
  shelfFalls: "Ein Absatz fällt von der Kante nicht ab; wählt dafür eine Mulde.",
  shelfJumps:
    "Der Absatz steigt, ohne dass dafür Platz ist; gebt die Länge der Rampe an oder macht die Kante so hoch wie das Ende.",
  shelfTooLong: "Die Rampe des Absatzes ist länger, als der Keil tief ist; macht sie kürzer.",
  noBalls: "Es gibt keine Bälle; fügt mindestens eine Sorte hinzu.",
  noBall: "keine Bälle",
  tooManyBalls: (count, most) =>
    `Es sind zusammen ${count} Bälle; höchstens ${most} lassen sich durchrechnen.`,
  balls: (count) => `${count} ${count === 1 ? "Ball" : "Bälle"}`,
  ballCount: (most) => `1 bis ${most} Bälle`,
  lipTooHigh: (ball) =>
    `Kein Schub hebt den Ball „${ball}“ über eine Kante, die so hoch ist wie sein Radius: Macht die Kante niedriger.`,
  wedgeTooSmall: (ball) =>
    `Selbst ganz in der Ecke gilt ein Ball „${ball}“ nicht als im Ziel: Der Keil ist zu klein für ihn, oder die Regel, wann ein Ball zählt, ist zu streng.`,
  overWedge: { centre: "seine Mitte über dem Keil", wholly: "der ganze Ball über dem Keil" },
  diameter: (length) => `ein Durchmesser von ${length}`,
  noRoom:
    "Die Bälle lassen sich nicht hinlegen: Nehmt weniger Bälle, kleinere Abstände oder weniger Flächen ohne Bälle.",
  allRoom: "Platz für alle Bälle mit ihren Abständen",
  roomFor: (most, balls, attempts) => `Platz für ${most} von ${balls} Bällen in ${attempts} Versuchen`,
  roomSeldom: (worked, attempts) => `Platz für alle Bälle in nur ${worked} von ${attempts} Versuchen`,
  area: (needed, room) => `die Bälle mit ihren Abständen brauchen ${needed}, die Zone hat Platz für ${room}`,
  positionsCount:
    "Liegen die Bälle immer gleich, braucht jeder genau eine Stelle, in der Reihenfolge der Sorten.",
  positions: (count) => `${count} ${count === 1 ? "Stelle" : "Stellen"}`,
  ballInWall: "Der Ball ragt in eine Wand oder Sperrfläche oder liegt außerhalb der Zone.",
  inside: (length) => `seine Mitte mindestens ${length} weit innen`,
  ballOnRobot: "Der Ball liegt dort, wo der Roboter losfährt.",
  fromRobot: (length) => `seine Mitte mindestens ${length} vom Roboter weg`,
  ballsOverlap: (position) => `Der Ball überdeckt den Ball an Stelle ${position}.`,
  sideBySide: "Bälle nebeneinander",
  cornerTwice: "Eine Ecke steht zweimal da; behaltet eine.",
  cornerOnce: "jede Ecke einmal",
  cornerMissing:
    "Die eigene Ecke der Zone muss unter denen sein, in denen der Keil sein kann: Fügt sie hinzu oder legt den Keil der Zone in eine davon.",
  among: (corner) => `${corner} ist dabei`,
  cornerImpossible: (why) => `Mit dem Keil in dieser Ecke würde das Projekt nicht passen: ${why}`,
  robotTooWide:
    "Der Roboter ist breiter als die Einfahrt, durch die er kommt: Macht ihn schmaler oder lasst ihn ganz in der Zone losfahren, die Achse weiter hinter der Wandlinie.",
  across: (length) => `${length} quer zur Fahrt`,
  startInWall: "Wo er losfährt, steht der Roboter in einer Wand: Versetzt oder dreht seinen Start.",
  inDoorway: "in der Zone oder in der Einfahrt",
  startOnWedge: "Wo er losfährt, steht der Roboter auf dem Keil: Versetzt seinen Start oder den Keil.",
  onWedge: "auf dem Keil",
  startOnKeepOut: "Wo der Roboter losfährt, ist eine Sperrfläche: Verschiebt eines von beiden.",
  underRobot: "unter dem Roboter",
  clearOfStart: "neben dem Start des Roboters",
  noTurn: "Der Roboter kann in dieser Zone nirgends auf der Stelle drehen: Er ist zu groß für sie.",
  circle: (length) => `er überstreicht einen Kreis von ${length}`,
  freeCircle: "irgendwo ein so großer freier Kreis zwischen Wänden, Sperrflächen und Keil",
};
