import type { Catalogue } from "../catalogue.ts";

export const verdictTexts: Catalogue["verdict"] = {
  promised: (share, successes, attempts) =>
    `Das Modell hat ${share} von 100 versprochen, ihr habt ${successes} von ${attempts}`,
  tooFew: (got) => `${got}: zu wenige Läufe, um etwas zu sagen; macht mindestens fünf.`,
  fits: (got) => `${got}: Das passt. Es beweist das Modell nicht, aber nichts spricht dagegen.`,
  worse: (got, chance) => `${got}: schlechter als versprochen, um mehr als der Zufall erklärt (${chance}).`,
  better: (got, chance) => `${got}: besser als versprochen, um mehr als der Zufall erklärt (${chance}).`,
  rare: "weniger als 1 zu 1000",
  chance: (percent) => `${percent} zu 100`,
  updated: (share, range) => `Erfolgsquote nach diesen Läufen: ${share} von 100, ${range}.`,
  day: (day, successes, runs) => `${day}: ${successes} von ${runs}`,
  daysDiffer: (counts, chance, spread, low, high) =>
    `Eure Tage unterscheiden sich um mehr, als der Zufall erklärt (${chance}): ${counts}. Von Tag zu Tag liegt die Quote um etwa ±${spread} von 100 daneben (möglich: ${low} bis ${high}); Läufe eines Tages sagen also wenig über den nächsten, und die Wahrscheinlichkeit oben, die alle Tage für gleich hält, ist zu klein: Sucht, was anders war, etwa Akku, Boden oder wer die Bälle gelegt hat.`,
  daysAlike: (counts, chance, high) =>
    `Eure Tage unterscheiden sich nicht mehr, als der Zufall erklärt (${chance}): ${counts}. Mit so wenigen Läufen bleiben bis zu ±${high} von 100 von Tag zu Tag möglich.`,
  brier: (score, expected) =>
    `Brier-Wert ${score} (0 ist perfekt; ${expected} bekämen richtige Versprechen).`,
  possible: (low, high, orLess, orMore) =>
    ` (möglich: ${low}${orLess ? " oder weniger" : ""} bis ${high}${orMore ? " oder mehr" : ""})`,
  times: (factor) => `${factor}-mal`,
  drift: (straights, turns) =>
    `Am besten erklären diese Läufe Geraden, die ${straights}, und Drehungen, die ${turns} so stark abweichen wie im Projekt.`,
  blame: {
    straights: "Drehungen allein würden sie nicht erklären: Messt die Geraden noch einmal.",
    turns: "Geraden allein würden sie nicht erklären: Messt die Drehungen noch einmal.",
    both: "Weder Geraden noch Drehungen allein würden sie erklären: Messt beide noch einmal.",
    either:
      "Auch eins von beiden allein würde sie erklären: Läufe können Geraden und Drehungen hier nicht unterscheiden, das Maßband kann es.",
    none: "Keine andere Abweichung erklärt diese Läufe deutlich besser als die des Projekts: Sucht einen anderen Grund, etwa die Bälle, den Boden oder wie der Roboter am Anfang hingestellt wird.",
  },
};
