import type { Catalogue } from "../catalogue.ts";

export const clipTexts: Catalogue["clip"] = {
  title: "Ein Videoclip",
  cannot:
    "Dieser Browser kann keine Videos schreiben. Öffnet die Seite in einem neueren, um einen Clip zu speichern; alles andere geht auch hier.",
  show: "Zeigen",
  one: (run) => `Lauf ${run}, der gerade zu sehen ist`,
  many: (runs) => `${runs} Läufe auf einmal`,
  make: (kind) => `Clip machen und als ${kind} speichern`,
  working: "Läufe rechnen und zeichnen",
  saved: (kind, seconds, kilobytes) =>
    `Als ${kind} gespeichert: ${seconds} s, ${kilobytes} kB. Routine, Quote und Laufnummern stehen im Bild, unter der Zone.`,
  rate: (share, range, trials) => `${share} bringen jeden Ball ins Ziel (${range}; ${trials} simuliert).`,
  these: (worked, runs, range) =>
    `${worked} von diesen ${runs} Läufen bringen jeden Ball ins Ziel (von 100, ${range}).`,
  run: (run, seed, seconds, speed) =>
    `Lauf ${run}, Startzahl ${seed}, bei ${seconds} s (${speed}-mal so schnell).`,
  runs: (first, last, seed, seconds, speed) =>
    `Läufe ${first} bis ${last}, Startzahl ${seed}, bei ${seconds} s (${speed}-mal so schnell).`,
  move: (number, words) => `Zug ${number}: ${words}.`,
  end: (home, balls) => `Ende: ${home} von ${balls} ${balls === 1 ? "Ball" : "Bällen"} im Ziel.`,
  soFar: (home) => `Bis jetzt ist in ${home} jeder Ball im Ziel.`,
};
