import type { Catalogue } from "../catalogue.ts";

export const rankingTexts: Catalogue["ranking"] = {
  title: "Routinen, die beste zuerst",
  orderAbout: "diese Reihenfolge",
  orderWhy:
    "Jede Routine fährt auf denselben Aufstellungen der Bälle mit denselben kleinen Fehlern. Schlechtere scheiden früh aus, damit die knappen die meisten Läufe bekommen; die besten werden fein eingestellt. Am Ende bekommen die besten frische Läufe, die bei der Auswahl nicht mitgeredet haben: Nur die sagen, wie gut sie wirklich sind. „Wahrscheinlich zwischen“ sagt, wie weit der wahre Anteil von dem der Läufe entfernt sein kann.",
  stopped: "Abgebrochen. Gezeigt wird, was bis dahin bekannt ist.",
  goOn: "Weitermachen",
  noRoutines: (why) => `Es ließen sich keine Routinen ausarbeiten: ${why}`,
  done: (count) => `Rangliste fertig: ${count} Routinen.`,
  rankingStopped: "Rangliste abgebrochen.",
  showBest: (count) => `Nur die ${count} besten zeigen`,
  showAll: (count) => `Alle ${count} zeigen`,
  missing: (count) => `${count} Muster hier ohne Routine`,
  onAverage: (balls, seconds) => `im Schnitt ${balls} · ${seconds} s`,
  rowAbout: "eine Zeile diese Zahlen hat",
  rowWhy:
    "Wonach die Liste geht, der Bereich, in dem der wahre Wert in 19 von 20 Fällen liegt, die Bälle im Ziel im Schnitt und die Sekunden der Züge: Das Blatt einer Routine erklärt jede.",
  mayBeBest: "· ≈\u00a0vielleicht so gut wie die beste",
  fewRuns: (runs) => `· nur ${runs} Läufe: Andere waren besser`,
  fromRuns: (runs) => `· aus ${runs} ${runs === 1 ? "Lauf" : "Läufen"}`,
  tooLong: (seconds) => `! länger als die erlaubten ${seconds} s`,
  notTested: (why) => `! konnte nicht probiert werden: ${why}`,
  waiting: "wartet auf die ersten Läufe",
  firstLook: "Erster Blick auf jedes Muster",
  moreSettings: (count) =>
    `Erster Blick auf weitere Einstellungen: bisher ${count} ${count === 1 ? "Routine" : "Routinen"}`,
  following: (count) =>
    `Die ${count === 1 ? "beste Routine wird" : `besten ${count} Routinen werden`} verfolgt`,
  fineTuning: "Die besten werden fein eingestellt",
  freshRuns: "Frische Läufe für die letzten der Auswahl",
  workingOut: "Routinen für diese Zone werden ausgearbeitet",
  bestIs: "Es zählt",
  second: "Sekunde",
  guide: {
    opening: "Das Projekt wird geöffnet …",
    zone: "Macht sie wie euren Boden, dann weiter zum Roboter.",
    robot: "Macht ihn wie euren: Die Routinen werden dabei neu geordnet.",
    practice:
      "Messen, programmieren, auf eurem Boden ausprobieren und aufschreiben, was wirklich passiert ist.",
    jury: "Zeigt, was ihr herausgefunden habt: Jede Zahl hier lässt sich nachrechnen.",
    weak: "Ändert zuerst, was die meisten Bälle kostet, und seht dann wieder hier nach.",
    failed: "Für diese Zone ließen sich keine Routinen ausarbeiten: Der Grund steht in der Liste.",
    stopped: "Abgebrochen vor den ersten Antworten. Drückt Weitermachen, um sie zu bekommen.",
    working: "Routinen für diese Zone werden ausgearbeitet. Das dauert einen Moment.",
    trying: (count) =>
      `${count} ${count === 1 ? "Routine wird" : "Routinen werden"} in dieser Zone probiert. Gleich kommen die ersten Antworten.`,
    atEnd: "Probiert jetzt die nächste Aufstellung, oder seht einen Lauf an, der schiefging: Woran lag es?",
    watched: "Achtet darauf, welcher Ball entwischt und wann. Zieht am Regler, um noch einmal nachzusehen.",
    press: "Drückt Abspielen, um diese Routine anzusehen, oder wählt eine andere aus der Liste.",
    best: (rate) =>
      `Die beste bisher bringt in ${rate} jeden Ball ins Ziel. Drückt Abspielen, um sie anzusehen.`,
  },
  aims: {
    "every-ball": "jeder Ball im Ziel",
    points: "die meisten Punkte",
    "home-by": "Bälle bis zu einer Sekunde",
  },
};
