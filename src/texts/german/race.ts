import type { Catalogue } from "../catalogue.ts";

export const raceTexts: Catalogue["race"] = {
  dropped: (count, most) =>
    `${count} ${count === 1 ? "Routine ist" : "Routinen sind"} früh ausgeschieden; bei höchstens ${most} von 100 Suchen scheidet dabei die beste aus.`,
  aside: (count) =>
    `${count} ${count === 1 ? "Routine wurde" : "Routinen wurden"} nach weniger Läufen zurückgestellt, weil die Zeit knapp war: Mit mehr Zeit kämen mehr davon dran.`,
  tied: (count) =>
    `${count} Routinen sind nicht zu unterscheiden; die empfohlene steht vorn, dann kommt die einfachste.`,
  clear: "Die beste ist besser als jede andere, auf denselben Aufstellungen.",
  alsoTooClose: ", nicht zu unterscheiden",
  pair: (sensing, blind, gain) =>
    `die beste Routine, die hinsieht (${sensing}), gegen die beste blinde (${blind}): ${gain}`,
  against: (first, second) => `${first} gegen ${second}`,
  tooClose: (pair) => `Nicht zu unterscheiden: ${pair}.`,
  pays: "Hinsehen lohnt sich hier",
  paysNot: "Hinsehen lohnt sich hier nicht",
  losesMore: (isBlind, loss, loser, winner) =>
    `Die ${isBlind ? "blinde" : "hinsehende"} verliert mehr Bälle durch „${loss}“: ${loser} von 100 gegen ${winner}.`,
  sensors: {
    none: "kein Sensor",
    all: "alle zusammen",
    perfect: "alles bekannt",
  },
};
