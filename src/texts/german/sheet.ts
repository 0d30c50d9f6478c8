import type { Catalogue } from "../catalogue.ts";

export const sheetTexts: Catalogue["sheet"] = {
  pageTitle: (project) => `${project}: unsere Routine`,
  head: (project) => `${project}: Wie unser Roboter die Bälle ins Ziel bringt`,
  titles: {
    task: "Die Aufgabe und der Weg",
    why: "Warum diese Routine",
    evidence: "Die Belege",
    practice: "Übungsläufe gegen das Modell",
    fails: "Wo es schiefgeht",
    decided: "Was entschieden wurde, und warum",
    limits: "Was das Modell weglässt",
    again: "Zum Nachrechnen",
  },
  simply: {
    task: "Was unser Roboter tut",
    why: "Warum so und nicht anders",
    evidence: "Wie oft es klappt",
    practice: "Auf dem echten Boden",
    fails: "Was noch schiefgeht",
    decided: "Was wir unterwegs geändert haben",
    limits: "Was ein Computer nicht wissen kann",
    again: "Probiert es selbst",
  },
  appendix: "Anhang: die Schritte",
  lead: (routine, rate, range, runs) =>
    `${routine}. In ${rate} (${range}) war jeder Ball im Ziel: ${runs} simulierte Läufe, die Bälle jedes Mal anders, die Abweichung des Roboters wie in seiner Projektdatei.`,
  leadSimply: (rate, range, runs) =>
    `In ${rate} (${range}) bringt er jeden Ball ins Ziel. Das wissen wir, weil ein Computer es ${runs}-mal probiert hat, jedes Mal mit den Bällen an anderer Stelle, bevor unser Roboter das erste Mal gefahren ist.`,
  task: (size, balls, seconds) =>
    `Eine Zone von ${size}; ${balls === 1 ? "ein Ball muss" : `${balls} Bälle müssen`} in ${seconds} s auf den Keil (schraffiert).`,
  way: (robot, seconds, moves, hasAppendix) =>
    `${robot} braucht ${seconds} s für ${moves} Züge; die Nummern am Weg sind die ${hasAppendix ? "der Schritte im Anhang" : "seiner Züge"}.`,
  compared:
    "Alle wurden mit denselben Bällen und demselben Glück probiert. Wo sich die Spannen weit überlappen, kann die Reihenfolge Zufall sein.",
  comparedSimply:
    "Wir haben jede Art zu fahren an denselben Stellen suchen lassen: dieselben Bälle, dasselbe Glück. Wo sich die Spannen weit überlappen, kann die Reihenfolge Zufall sein.",
  beaten: (label) =>
    `Eine Art zu fahren brachte öfter alle Bälle ins Ziel als unsere, und zwar nicht durch Zufall: ${label}. Warum wir trotzdem unsere fahren, steht bei unseren Entscheidungen.`,
  others: (count) =>
    count === 1
      ? "Ein anderes Muster war nicht besser als diese."
      : `${count} andere Muster waren nicht besser als diese.`,
  heads: {
    routine: "Routine",
    rate: "jeder Ball im Ziel in",
    range: "wahrscheinlich zwischen",
    takes: "braucht",
  },
  between: (low, high) => `${low} und ${high}`,
  thisOne: (routine) => `Diese hier: ${routine}`,
  onAverage: (mean, balls) =>
    `Im Mittel ${mean === "1,00" ? "kam" : "kamen"} ${mean} von ${balls} ${balls === 1 ? "Ball" : "Bällen"} ins Ziel.`,
  curves: (runs) =>
    `In wie vielen der ${runs} Läufe bis dahin so viele Bälle im Ziel waren; der Schleier: was sie offenlassen.`,
  trustLess: (leftOut, matters) => `${leftOut} Betrifft: ${matters}.`,
  moreLimits: (count) => `${count} weitere Grenzen stehen auf dem langen Blatt.`,
  replay: (runs) => `Lauf Nummer N von den ${runs} oben, genau so, wie er gezählt wurde:`,
  from0: ", N ab 0.",
  caution:
    "Laufende Ketten und Arme können etwas einklemmen: Finger, Haare und Ärmel weg. Akkus werden nur geladen, wo ein Erwachsener sie sieht. Die Regeln des Wettbewerbs und die Sicherheitsregeln vor Ort gehen vor.",
  lost: (balls, why) => `${balls} ${balls === 1 ? "Ball" : "Bälle"} ${why}`,
  hardest: "Die schwerste Aufstellung",
  earlier: (count) =>
    count === 1 ? "Eine frühere steht in der Projektdatei." : `${count} frühere stehen in der Projektdatei.`,
};
