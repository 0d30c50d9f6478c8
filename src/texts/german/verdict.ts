import type { Catalogue } from "../catalogue.ts";

export const verdictTexts: Catalogue["verdict"] = {
  promised: (share, successes, attempts) =>
    `Das Modell hat ${share} von 100 versprochen, ihr habt ${successes} von ${attempts}`,
  tooFew: (got) => `${got}: zu wenige Läufe, um etwas zu sagen; macht mindestens fünf.`,
  fits: (got) => `${got}: Das passt. Es beweist das Modell nicht, aber nichts spricht dagegen.`,
  worse: (got, chance) =>
    `${got}: schlechter als versprochen, um mehr als der Zufall erklärt (${chance}). Wahrscheinlich weicht der Roboter stärker ab, als ihr angegeben habt: Messt Drehungen und Geraden noch einmal.`,
  better: (got, chance) =>
    `${got}: besser als versprochen, um mehr als der Zufall erklärt (${chance}). Wahrscheinlich weicht der Roboter weniger ab, als ihr angegeben habt.`,
  rare: "weniger als 1 zu 1000",
  chance: (percent) => `${percent} zu 100`,
  updated: (share, range) => `Erfolgsquote nach diesen Läufen: ${share} von 100, ${range}.`,
  brier: (score, expected) =>
    `Brier-Wert ${score} (0 ist perfekt; ${expected} bekämen richtige Versprechen).`,
  possible: (low, high) => ` (möglich sind ${low}- bis ${high}-mal)`,
  drift: (factor, range) =>
    `Am besten würde eine Abweichung, die ${factor}-mal so groß ist wie im Projekt, diese Läufe erklären${range}.`,
};
