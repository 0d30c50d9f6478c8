import type { Catalogue } from "../catalogue.ts";

export const decisionTexts: Catalogue["decision"] = {
  better: (name) => `${name} ist besser, um mehr als der Zufall erklärt.`,
  difference: (first, second, gain, verdict) =>
    `„${first}“ gegen „${second}“: ${gain} mit jedem Ball im Ziel. ${verdict}`,
  counts: (trials, both, onlyFirst, onlySecond, neither) =>
    `Auf denselben ${trials} Aufstellungen mit demselben Glück: beide ${both}, nur die erste ${onlyFirst}, nur die zweite ${onlySecond}, keine ${neither}.`,
  measured: (what, value, range, count) => `${what}: ${value}, wahrscheinlich ${range} (${count} Versuche).`,
  before: (rate, range) => ` Vorher: ${rate} (${range}).`,
  runsEach: (fix, before, trials) => `${fix}.${before} Je ${trials} Läufe, auf denselben Aufstellungen.`,
};
