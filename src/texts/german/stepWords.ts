import type { Catalogue } from "../catalogue.ts";

const side = (isRight: boolean): string => (isRight ? "rechts" : "links");
const way = (isBack: boolean): string => (isBack ? "rückwärts" : "vorwärts");

export const stepWordsTexts: Catalogue["stepWords"] = {
  drive: (isBack, mm, speed) => `${mm} mm ${way(isBack)} mit ${speed} mm/s`,
  turn: (isRight, deg, speed) => `${deg} Grad nach ${side(isRight)} drehen mit ${speed} Grad/s`,
  curve: (isRight, deg, mm, isBack, speed) =>
    `Bogen nach ${side(isRight)}, ${deg} Grad auf ${mm} mm ${way(isBack)} mit ${speed} mm/s`,
  toWall: (isBack, mm, overrun, speed) =>
    `${way(isBack)} bis zur Wand: ${mm} mm, dann ${overrun} mm weiterdrücken, mit ${speed} mm/s`,
  beside: (way, sensor, mm) => `${way}, dabei Abstandssensor ${sensor} auf ${mm} mm halten`,
  wait: (seconds) => `${seconds} s warten`,
  openArms: (seconds) => `Arme öffnen: ${seconds} s`,
  closeArms: (seconds) => `Arme schließen: ${seconds} s`,
  scan: (isRight, deg, speed, wedge) =>
    `umsehen: ${deg} Grad nach ${side(isRight)} drehen mit ${speed} Grad/s und jeden Ball merken (${wedge})`,
  fetch: (speed, wedge) =>
    `den gemerkten Ball holen, der am wenigsten Zeit kostet, mit ${speed} mm/s (${wedge})`,
  goTo: (x, y, deg, speed, wedge) =>
    `fahren nach x ${x} mm, y ${y} mm, Richtung ${deg} Grad, mit ${speed} mm/s (${wedge})`,
  wedgeIn: (corner) => `Keil ${corner}`,
  wedgeUnknown: "Keil unbekannt",
  repeat: (times) => `wiederholen, höchstens ${times}-mal:`,
  repeatUntil: (times, question) => `wiederholen, höchstens ${times}-mal, bis ${question}:`,
  when: (question) => `wenn ${question}:`,
  otherwise: "sonst:",
  heads: {
    step: "Schritt",
    move: "Zug",
    do: "was er tut",
    left: "linkes Rad °",
    right: "rechtes Rad °",
  },
};
