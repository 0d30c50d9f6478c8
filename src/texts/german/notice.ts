import type { Catalogue } from "../catalogue.ts";

export const noticeTexts: Catalogue["notice"] = {
  repairs: (name, count) => `„${name}“ braucht ${count === 1 ? "eine Reparatur" : `${count} Reparaturen`}`,
  closeList: "Liste schließen",
  nothingChanged:
    "Nichts wurde geändert: Was ihr offen hattet, ist noch da. Bessert die Datei in einem Editor aus und öffnet sie dann noch einmal.",
  wholeFile: "ganze Datei",
  foundAllowed: (got, expected) => `Gefunden: ${got}. Erlaubt: ${expected}.`,
  letGo: "Loslassen, um die Projektdatei zu öffnen",
  secondsAllowed: (seconds) => `${seconds} s erlaubt`,
  details: "Einzelheiten",
  workAbout: "es so lange dauert",
  workWhy:
    "Der Anteil ist der an den Läufen, die zu machen sind; die Sekunden folgen daraus, wie schnell es bisher ging.",
  whatIsLeftOut: "Was das Modell weglässt",
  leftOut: "Weggelassen",
  trustLess: "Darum weniger vertrauen",
  allRight: "In Ordnung",
  keepsNothing: (why) =>
    `Dieser Browser sichert gerade nichts (${why}). Sichert euer Projekt als Datei, bevor ihr die Seite schließt.`,
  damaged: (name, why) =>
    `Das gespeicherte Projekt „${name}“ ist beschädigt: ${why} Es wurde so, wie es ist, beiseitegelegt.`,
  saveRest: "Sichern, was da ist",
  throwAway: "Wegwerfen",
  toMend: (count, first) =>
    `${count === 1 ? "Eine Sache" : `${count} Sachen`} zu verbessern; bis dahin bleiben Zeichnung und Läufe beim letzten gültigen Stand. ${first}`,
  tour: "Rundgang",
  tourAt: (stop, stops) => `Rundgang, ${stop} von ${stops}`,
  nextStop: "Nächster Halt",
  begin: "Anfangen",
  noTour: "Kein Rundgang",
  cancel: "Abbrechen",
  secondsLeft: (seconds) => `, noch etwa ${seconds} s`,
  paused: ", angehalten",
  goOn: "Weitermachen",
  pause: "Anhalten",
  noDrawing: (why) => `Die Zeichnung ließ sich nicht öffnen: ${why}`,
  drawing: (words) => `Zeichnung. ${words}`,
  drawingOfZone: "Zeichnung der Zone",
  theLink: "Der Link",
  parted: (name, now) =>
    `„${name}“ wurde in einem anderen Tab geändert oder weggeworfen. Das bleibt, wie es ist; was ihr hier macht, wird jetzt als „${now}“ gesichert.`,
  tourTitle: {
    routines: "Routinen werden probiert",
    watch: "Seht euch eine an",
    weak: "Seht, wo es schiefgeht",
    robot: "Gebt euren Roboter ein",
    zone: "Gebt eure Zone ein",
  },
  tourWords: {
    routines:
      "Für das Beispiel werden Routinen ausgearbeitet und Hunderte Male gefahren, jedes Mal mit den Bällen an anderer Stelle. Die beste steht oben; ihr Weg ist in der Zeichnung.",
    watch: "Drückt Abspielen. Seht dann einen Lauf an, der schiefging: Welcher Ball ist entwischt, und wann?",
    weak: "Die Karte zeigt, von wo Bälle nicht ins Ziel kommen. Zeigt darauf, um sie zu lesen.",
    robot:
      "Messt euren Roboter und wie weit er abweicht. Alle Routinen werden neu geordnet, während ihr tippt.",
    zone: "Zieht Wände, Einfahrt und Keil, bis sie wie eure sind. Von da an ist es euer Projekt: Es wird von selbst in diesem Browser gesichert.",
  },
};
