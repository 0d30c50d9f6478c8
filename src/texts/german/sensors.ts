import type { Catalogue } from "../catalogue.ts";

export const sensorsTexts: Catalogue["sensors"] = {
  title: "Was er wahrnimmt",
  hint: "Schaltet ein, was euer Roboter hat. Routinen, die vor dem Fahren nachsehen, nehmen dann an der Rangliste teil, mit denselben Aufstellungen wie alle anderen.",
  hintCorner:
    "Die Ecke des Keils wird für jeden Lauf neu gezogen: Ohne Blick auf den Boden findet sie keine Routine.",
  more: (name) => `Mehr: ${name}`,
  principle: "Wie er arbeitet",
  other: "Ein weiterer Sensor",
  take: (name) => `„${name}“ wegnehmen`,
  named: "Bezeichnung",
  source: "Die Zahlen sind üblich, ohne Quelle: Messt selbst nach.",
  twoEyes: "Routinen sehen mit dem ersten Abstandssensor der Liste.",
  slot: {
    "bump-front": {
      name: "Tastschalter vorn",
      use: "Er meldet sofort, dass der Roboter angestoßen ist: Eine Fahrt zur Wand endet dann dort.",
    },
    "bump-back": { name: "Tastschalter hinten", use: "Dasselbe beim Rückwärtsfahren." },
    ahead: {
      name: "Abstand nach vorn",
      use: "Er sieht sich um und merkt sich, wo Bälle liegen: Dann holt der Roboter einen nach dem anderen.",
    },
    aside: {
      name: "Abstand zur Seite",
      use: "Mit ihm hält der Roboter an einer Wand seinen Abstand und damit seinen Weg. Lasst ihn aus der Mitte schauen: Direkt an der Wand ist sie ihm zu nah.",
    },
    gyro: {
      name: "Kreisel",
      use: "Er hält die Richtung: Drehungen und Geraden weichen viel weniger ab.",
    },
    barrier: {
      name: "Ball im Schieber",
      use: "Eine Lichtschranke quer vor dem Schieber: Sie sagt, ob der Ball wirklich gefangen ist.",
    },
    floor: {
      name: "Helligkeit des Bodens",
      use: "Er merkt, wann der Roboter über dem Keil ist: So findet er eine Ecke, die man erst am Tag selbst kennt.",
    },
  },
  preset: {
    "contact-switch": "Ein Tastschalter",
    "ultrasonic-echo": "Echo eines Tons",
    "infrared-triangulation": "Infrarotlicht im Winkel",
    "light-time-of-flight": "Laufzeit des Lichts",
    "rate-gyro": "Ein Drehratenkreisel",
    "light-barrier": "Eine Lichtschranke",
    "reflected-light": "Zurückgeworfenes Licht",
    own: "Eigene Zahlen",
  },
  number: {
    alongMm: {
      label: "Vor der Achse",
      why: "Von dort sieht er: Was hinter etwas anderem liegt, sieht er nicht.",
    },
    acrossMm: { label: "Links von der Mitte", why: "Von dort sieht er; nach rechts ist negativ." },
    headingDeg: {
      label: "Sieht nach links um",
      why: "0 ist geradeaus, 90 nach links, −90 nach rechts.",
    },
    beamHalfDeg: {
      label: "Strahl, halbe Breite",
      why: "Ein breiter Strahl verpasst nichts, hält aber zwei Bälle nebeneinander für einen.",
    },
    nearestMm: { label: "Am nächsten, was er sieht", why: "Was näher ist, sieht er nicht." },
    rangeMm: {
      label: "Am weitesten, was er sieht",
      why: "Bei kurzer Reichweite muss der Roboter von mehr Orten aus nachsehen, und das kostet Zeit.",
    },
    noiseSdMm: {
      label: "Daneben um, plus oder minus",
      why: "Der Roboter fährt dorthin, wo er den Ball vermutet: Bei großem Fehler verfehlt er ihn.",
    },
    noiseSdFrac: {
      label: "… und um diesen Anteil des Abstands",
      why: "Was weit weg ist, kennt er weniger genau.",
    },
    missFrac: {
      label: "Verpasste Echos",
      why: "Ein Ball, dessen Echo ausbleibt, wird diesmal nicht geholt.",
    },
    readsPerS: {
      label: "Messungen je Sekunde",
      why: "Bei wenigen muss er langsam drehen, sonst dreht er an einem Ball vorbei.",
    },
    airC: {
      label: "Luft, in der er fährt",
      why: "Das Echo eines Tons gilt wie in Luft von 20 °C. In der Kälte ist Schall langsamer: In einer Halle mit 10 °C scheint alles 1,75 % weiter weg, 17,5 mm auf 1 m. Bei Licht bleibt es bei 20.",
    },
    errorSdDeg: {
      label: "Jeder Zug daneben um",
      why: "Was mit Kreisel vom Drehfehler übrig bleibt.",
    },
    driftSdDegPerMin: {
      label: "Wandert in einer Minute um",
      why: "Es häuft sich: In einem langen Lauf drehen sich alle Bahnen langsam.",
    },
    lengthMm: { label: "Länge des Strahls", why: "Ein Ball neben dem Strahl wird nicht bemerkt." },
    wrongFrac: {
      label: "Falsche Messungen",
      why: "Eine falsche schickt den Roboter ohne seinen Ball los.",
    },
  },
};
