import type { Catalogue } from "../catalogue.ts";

export const weakTexts: Catalogue["weak"] = {
  noMove: "in keinem Zug",
  afterLast: "nach dem letzten Zug",
  inMove: (number, words) => `in Zug ${number}: ${words}`,
  inLine: (number, words) => `in Zeile ${number}: ${words}`,
  sure: (share, never, end) =>
    `Wie groß die Abweichung innerhalb dieser Grenzen auch ist: ${share} von 100 Stellen werden sicher berührt${never}.${end}`,
  never: (share) => ` und ${share} nie`,
  promisedUntil: (move, why) => ` Ab Zug ${move} ist nichts mehr versprochen: ${why}.`,
  sureOpen: (share, factor) =>
    `${share} von 100 Stellen bleiben sicher, selbst beim ${factor}-Fachen dieser Fehler.`,
  sureNone: (share) =>
    `Gar keine Abweichung darf bleiben, wenn ${share} von 100 Stellen sicher bleiben sollen.`,
  sureWithin: (share, percent) =>
    `${share} von 100 Stellen bleiben sicher, solange die Fehler höchstens ${percent} dieser Grenzen betragen.`,
  noStop:
    "Kein bester Moment zum Aufhören: Kein Zug endet rechtzeitig, oder die Routine entscheidet unterwegs.",
  when: (move, moves, seconds) => `nach Zug ${move} von ${moves}, bei ${seconds} s`,
  stopAtEnd: (when) => `Bester Moment zum Aufhören und Wegfahren: ${when}, also am Ende.`,
  stop: (when, seconds) =>
    `Bester Moment zum Aufhören und Wegfahren: ${when}; in den ${seconds} s danach kommt fast nichts dazu.`,
  ends: {
    "may-hit": "dort kann der Roboter gegen etwas fahren",
    "may-not-reach": "dort erreicht er vielleicht die Wand nicht, die er erreichen soll",
    "slanting-stop": "dort hält ihn etwas schräg auf, und wie er dann steht, hängt von der Abweichung ab",
    "arms-swing": "dort schwenken seine Arme, und der Schieber wird ein anderer",
  },
};
