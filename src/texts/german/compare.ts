import type { Catalogue } from "../catalogue.ts";

export const compareTexts: Catalogue["compare"] = {
  title: "Vergleichen",
  about: "das sagt, was besser ist",
  why: "Beide laufen auf denselben Aufstellungen mit demselben Glück; es zählen also nur die Läufe, in denen die eine alle Bälle ins Ziel bringt und die andere nicht. Das Urteil am Ende ist ein exakter Test, doppelt so streng, sooft ihr weitermacht: Gleiche werden in höchstens 5 von 100 Vergleichen unterschieden, wie oft das auch ist. Was unterwegs gesagt wird, hat einen strengeren Test, der gilt, so oft ihr auch hinseht.",
  with: "Womit",
  choose: "wählt, womit",
  anotherRoutine: "eine andere Routine, hier",
  anotherProject: "dieselbe Routine, in einem anderen Projekt",
  before: "Dieses Projekt vor seiner letzten Änderung",
  go: "Vergleichen",
  goOn: (runs) => `${runs} Läufe vergleichen`,
  working: "Es wird verglichen",
  stop: "Aufhören",
  fault: (words) => `Das ging nicht: ${words}`,
  uneven: (here, there) =>
    `Hier sind es ${here} Bälle und dort ${there}: Vergleichen lassen sich nur Läufe mit gleich vielen.`,
  noRoom: "Dort ist für diese Routine kein Platz.",
  gone: "Dieses Projekt ist nicht mehr lesbar.",
  counts: (runs, both, first, second, neither) =>
    `In je ${runs} Läufen kamen alle Bälle ins Ziel: bei beiden ${both}-mal, nur hier ${first}-mal, nur beim anderen ${second}-mal, bei keinem ${neither}-mal.`,
  difference: (words) => `Das hier gegenüber dem anderen: ${words}.`,
  tooClose: (share) =>
    `Nicht zu unterscheiden: Gleiche würden sich in ${share} von 100 solchen Vergleichen so sehr unterscheiden.`,
  better: (share) =>
    `Das hier ist besser: Gleiche würden sich in ${share} von 100 solchen Vergleichen so sehr unterscheiden.`,
  worse: (share) =>
    `Das andere ist besser: Gleiche würden sich in ${share} von 100 solchen Vergleichen so sehr unterscheiden.`,
  lessThan: (share) => `weniger als ${share}`,
  settledThis: "Entschieden, so oft ihr auch hinseht: Das hier ist besser.",
  settledOther: "Entschieden, so oft ihr auch hinseht: Das andere ist besser.",
  unsettled: "Noch nicht entschieden.",
  more: (runs) =>
    `Ist der Unterschied so groß wie gesehen, würden etwa ${runs} weitere Läufe von jedem ihn in neun von zehn Fällen zeigen.`,
  noMore: "Es war kein Unterschied zu sehen; wie viele weitere Läufe einen fänden, lässt sich nicht sagen.",
  done: "Verglichen.",
};
