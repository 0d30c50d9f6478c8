import type { Catalogue } from "../catalogue.ts";

export const calibrationTexts: Catalogue["calibration"] = {
  distance: (mm, isShort) => `Auf 1000 mm Befehl fährt er ${mm} mm zu ${isShort ? "kurz" : "weit"}.`,
  distanceScatter: (mm) => `Zwei von drei Fahrten über 1000 mm enden höchstens ${mm} mm neben dem Üblichen.`,
  turn: (degrees, isShort) => `Auf 90° Befehl dreht er ${degrees}° zu ${isShort ? "wenig" : "weit"}.`,
  turnScatter: (degrees) => `Zwei von drei Drehungen enden höchstens ${degrees}° neben dem Üblichen.`,
  curve: (degrees, isRight) =>
    `Auf 1000 mm geradeaus dreht er sich um ${degrees}° nach ${isRight ? "rechts" : "links"}.`,
  curveScatter: "Wie verschieden der Bogen von Fahrt zu Fahrt ist, ein schiefer Start mitgezählt.",
  gauge: "Rechnet Drehungen mit dieser Spurweite: Der Schlupf der Ketten steckt mit drin.",
  wheelsAlike: "Die Räder können gut gleich groß sein: Mehr Fahrten würden es zeigen.",
  largerWheel: (isRight) => `Das ${isRight ? "rechte" : "linke"} Rad wirkt wie das größere.`,
  rolls: (mm) => `Mit 300 mm/s rollt er noch ${mm} mm, bevor er liegen bleibt.`,
  bounces: (percent) => `Von einer harten Wand kommt er mit ${percent} % seiner Geschwindigkeit zurück.`,
  what: {
    distanceScale: "Strecke, gefahren gegen befohlen",
    distanceSdFrac: "Streuung der Strecke",
    turnScale: "Drehung, gedreht gegen befohlen",
    turnSdRad: "Streuung der Drehung",
    curvatureRadPerMm: "Bogen auf der Geraden, links positiv",
    curvatureSdRadPerMm: "Streuung dieses Bogens",
    effectiveGaugeMm: "wirksame Spurweite",
    wheelRatio: "rechtes gegen linkes Rad",
    rollingResistance: "Rollwiderstand des Balls",
    restitution: "Rückprall des Balls",
  },
  warnings: {
    "turns-and-squares-differ":
      "Drehungen und Quadrate widersprechen sich: Es gelten die Drehungen. War der Boden derselbe, der Akku gleich voll?",
    "sides-differ":
      "Die Quadrate haben verschiedene Seiten und zählen deshalb nicht mit: Fahrt alle gleich groß.",
    "too-few":
      "Ein Versuch wurde nur einmal gemacht, das sagt nichts über die Streuung: Macht jeden mindestens dreimal.",
  },
};
