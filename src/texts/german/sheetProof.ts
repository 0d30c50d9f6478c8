import type { Catalogue } from "../catalogue.ts";

export const sheetProofTexts: Catalogue["sheetProof"] = {
  decides: (robot, run, home, balls) =>
    `${robot} entscheidet unterwegs nach seinen Sensoren, jeder Lauf nimmt also einen anderen Weg. Gezeichnet ist Lauf ${run} (${home} von ${balls} Bällen im Ziel).`,
  numbers: "Die Nummern am Weg sind die der Schritte",
  inAppendix: "im Anhang.",
  asListed: "wie der Befehl „steps“ sie aufführt.",
  about: (seconds) => `etwa ${seconds} s`,
  hard: (places, rate, range) =>
    `Die schwerste Aufstellung, die gefunden wurde (x,y jedes Balls in mm, ${places}): alle Bälle im Ziel in ${rate} (${range}).`,
  hardLoss: (balls, of, loss) => `Dort am häufigsten: ${loss} (${balls} von ${of} Bällen).`,
  hardNone: (runs) => `In ${runs} Läufen mit dieser Aufstellung ging kein Ball verloren.`,
  hardAgain: (run) => `Lauf ${run} zeigt es:`,
};
