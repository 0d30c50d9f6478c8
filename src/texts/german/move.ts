import type { Catalogue } from "../catalogue.ts";

export const moveTexts: Catalogue["move"] = {
  drive: (isBack, length) => `${length} ${isBack ? "zurück" : "vor"}`,
  turn: (isRight, angle) => `auf der Stelle ${angle} nach ${isRight ? "rechts" : "links"} drehen`,
  arc: (isRight, angle, length, isBack) =>
    `Bogen nach ${isRight ? "rechts" : "links"}, ${angle} auf ${length}${isBack ? ", rückwärts" : ""}`,
  toWall: (isBack, length, overrun) =>
    `${isBack ? "zurück" : "vor"} bis zur Wand: ${length}, dann ${overrun} weiterdrücken`,
  beside: (way, sensor, distance) => `${way}, dabei Abstandssensor ${sensor} auf ${distance} halten`,
  wait: (seconds) => `${seconds} s warten`,
  arms: (isOpening, seconds) => `Arme ${isOpening ? "öffnen" : "schließen"}: ${seconds} s`,
  scan: (isRight, angle) =>
    `umsehen: ${angle} nach ${isRight ? "rechts" : "links"} drehen und jeden Ball merken`,
  fetch: (corner) =>
    `den gemerkten Ball holen, der am wenigsten Zeit kostet, und ins Ziel schieben (Ecke ${corner})`,
  goTo: (x, y, heading) => `fahren nach x ${x}, y ${y}, Richtung ${heading}`,
  repeat: (times) => `wiederholen, höchstens ${times}-mal`,
  repeatUntil: (times, question) => `wiederholen, höchstens ${times}-mal, bis ${question}`,
  when: (question) => `wenn ${question}`,
  otherwise: "sonst",
  corners: {
    "lower-left": "unten links",
    "lower-right": "unten rechts",
    "upper-left": "oben links",
    "upper-right": "oben rechts",
  },
  asked: {
    seen: "ein Ball gemerkt ist",
    notSeen: "kein Ball gemerkt ist",
    holding: "ein Ball im Schieber ist",
    notHolding: "kein Ball im Schieber ist",
    overWedge: "der Boden darunter der Keil ist",
    notOverWedge: "der Boden darunter leer ist",
    bumpedFront: "er vorn angestoßen ist",
    notBumpedFront: "er vorn nicht angestoßen ist",
    bumpedBack: "er hinten angestoßen ist",
    notBumpedBack: "er hinten nicht angestoßen ist",
    nearer: (sensor, distance) => `Abstandssensor ${sensor} weniger als ${distance} misst`,
    notNearer: (sensor, distance) => `Abstandssensor ${sensor} ${distance} oder mehr misst`,
    shortOfTime: (seconds) => `weniger als ${seconds} s übrig sind`,
    notShortOfTime: (seconds) => `${seconds} s oder mehr übrig sind`,
  },
};
