import type { Catalogue } from "../catalogue.ts";

export const clipTexts: Catalogue["clip"] = {
  title: "Ein Videoclip",
  cannot:
    "Dieser Browser kann keine Videos schreiben. Öffnet die Seite in einem neueren, um einen Clip zu sichern; alles andere geht auch hier.",
  show: "Zu sehen",
  one: (run) => `Lauf ${run}, der gerade zu sehen ist`,
  many: (runs) => `${runs} Läufe gleichzeitig`,
  make: (kind) => `Clip machen und als ${kind} sichern`,
  working: "Läufe werden gerechnet und gezeichnet",
  saved: (kind, seconds, kilobytes) =>
    `Als ${kind} gesichert: ${seconds} s, ${kilobytes} kB. Routine, Quote und Laufnummern stehen im Bild, unter der Zone.`,
  rate: (share, range, trials) => `In ${share} kommt jeder Ball ins Ziel (${range}; ${trials} simuliert).`,
  these: (worked, runs, range) =>
    `${worked} von diesen ${runs} Läufen bringen jeden Ball ins Ziel (von 100, ${range}).`,
  run: (run, seed, seconds, speed) =>
    `Lauf ${run}, Startzahl ${seed}, bei ${seconds} s (${speed}-faches Tempo).`,
  runs: (first, last, seed, seconds, speed) =>
    `Läufe ${first} bis ${last}, Startzahl ${seed}, bei ${seconds} s (${speed}-faches Tempo).`,
  move: (number, words) => `Zug ${number}: ${words}.`,
  end: (home, balls) => `Ende: ${home} von ${balls} ${balls === 1 ? "Ball" : "Bällen"} im Ziel.`,
  noVideo: "dieser Browser kann keine Videos schreiben, ein anderer schon",
  noPictures: "dieser Browser kann die Bilder eines Videos nicht zeichnen",
  empty: "das Video kam leer heraus",
  soFar: (home) => `Bis jetzt ist in ${home} jeder Ball im Ziel.`,
};
