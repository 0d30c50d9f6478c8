import type { Catalogue } from "../catalogue.ts";

export const tapeTexts: Catalogue["tape"] = {
  title: "Roboter und Ball vermessen",
  hint: (guide) => `Macht jeden Versuch mindestens dreimal und tippt jeden einzeln ein. ${guide}`,
  test: "Versuch",
  add: "Diesen Versuch hinzufügen",
  open: "Die Tabelle, ein Versuch je Zeile: Ändert sie, oder fügt eine aus einer Tabellenkalkulation ein",
  table: "Tabelle der Versuche",
  says: "Was eure Versuche sagen",
  tooFew: "Kein Versuch wurde oft genug gemacht, um etwas zu sagen: Macht jeden mindestens dreimal.",
  likely: (range, count, meaning) => `wahrscheinlich ${range}, aus ${count} Versuchen. ${meaning}`,
  use: "Ins Projekt übernehmen",
  changes: (count) =>
    `Das ändert ${count} ${count === 1 ? "Wert" : "Werte"}. Wie genau ein Mittelwert bekannt ist, steht hier dafür, wie verschieden er von Tag zu Tag ist: Messt an mehreren Tagen, dann ist beides darin.`,
  held: "Das Projekt hat diese Werte schon.",
  used: "Jetzt im Projekt; Strg+Z nimmt es wieder heraus. Die Routinen werden neu geordnet.",
  guides: {
    straight:
      "Gerade: Legt ein Maßband auf den Boden, stellt den Roboter vorn auf 0, lasst ihn 1000 mm fahren und lest ab, wo er vorn anhält und wie weit links von der Linie er steht.",
    turn: "Drehung: Zeichnet an, wohin der Roboter schaut, und lasst ihn zehn Vierteldrehungen nach links machen: 900° befohlen. Messt, wie weit er danebenliegt: 29° zu wenig sind im Ganzen 871°, 29° zu weit sind 929°.",
    "square-right":
      "Quadrat nach rechts: vier Seiten, vier Drehungen nach rechts, zurück zum Start; messt, wie weit vor dem Start und wie weit links davon er ankommt.",
    "square-left":
      "Quadrat nach links: dasselbe mit Drehungen nach links. Erst beide zusammen zeigen, was an den Rädern liegt und was an der Spurweite (Borenstein und Feng 1996).",
    roll: "Rollen: Stoßt einen Ball auf dem freien Boden an, stoppt die Zeit von der Hand bis zum Stillstand und messt, wie weit er gerollt ist.",
    push: "Schieben: Lasst den Roboter einen Ball gleichmäßig schieben und dann anhalten; messt am Ende die Lücke zwischen Schieber und Ball.",
    rebound:
      "Rückprall: Lasst den Ball neben einem Lineal auf etwas fallen, das so hart ist wie eure Wände, und seht, wie hoch er zurückkommt.",
  },
};
