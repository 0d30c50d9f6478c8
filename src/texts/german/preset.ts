import type { Catalogue } from "../catalogue.ts";

export const presetTexts: Catalogue["preset"] = {
  balls: {
    "table-tennis": "Tischtennisball",
    golf: "Golfball",
    squash: "Squashball",
    tennis: "Tennisball",
    racquetball: "Hohler Gummiball (Racquetball)",
    pool: "Billardball (Pool)",
    snooker: "Billardball (Snooker)",
    perforated: "Plastikball mit Löchern",
    steel: "Stahlkugel, 1 Zoll",
  },
  sensors: {
    "contact-switch": "Tastschalter",
    "ultrasonic-echo": "Echo eines Tons",
    "infrared-triangulation": "Infrarotlicht im Winkel",
    "light-time-of-flight": "Laufzeit des Lichts",
    "rate-gyro": "Kreisel",
    "light-barrier": "Lichtschranke",
    "reflected-light": "Zurückgeworfenes Licht",
  },
  usual: { back: "Tastschalter hinten", left: "Abstand nach links" },
};
