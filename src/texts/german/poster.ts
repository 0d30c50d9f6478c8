import type { Catalogue } from "../catalogue.ts";

export const posterTexts: Catalogue["poster"] = {
  moves: (seconds, moves) => `${seconds} s für ${moves} Züge`,
  decides: (run) => `entscheidet nach seinen Sensoren; sein Weg in Lauf ${run}`,
  label: (project, rate) => `${project}: jeder Ball im Ziel in ${rate}`,
  rate: (rate) => `In ${rate}`,
  bring: (range) => `kommt jeder Ball ins Ziel (${range})`,
  scene: (balls, size, way) => `${balls} ${balls === 1 ? "Ball" : "Bälle"}, ${size}, ${way}`,
  from: (runs) => `Aus ${runs} simulierten Läufen, die Bälle jedes Mal anders; ein Modell lässt manches weg.`,
};
