import type { Catalogue } from "../catalogue.ts";

export const limitTexts: Catalogue["limit"] = {
  advice:
    "Vertraut der Reihenfolge der Routinen mehr als einer Quote, und einer Quote mehr, sobald echte Übungsläufe zu ihr passen.",
  spin: {
    leftOut: "Bälle drehen sich nicht um die Hochachse und hüpfen nicht.",
    matters:
      "wohin ein Ball nach einem harten oder schrägen Stoß rollt; bei sanftem Schieben ändert sich kaum etwas",
  },
  grip: {
    leftOut: "Ein Ball, der von selbst auf dem Keil rollt, gerät dort nie aus Mangel an Halt ins Rutschen.",
    matters: "ob ein Ball auf einem glatten, steilen Keil liegen bleibt",
  },
  jam: {
    leftOut: "Ein Ball, der neben der Mitte des Roboters klemmt, dreht ihn nicht.",
    matters: "Bälle, die durch Klemmen verloren gehen, und die Züge danach",
  },
  rub: {
    leftOut: "An Wänden reibt der Roboter ohne Verlust, und Wände geben nicht nach.",
    matters: "Routinen, die sich an Wände lehnen: ihre Zeit und wo sie enden",
  },
  posts: {
    leftOut:
      "Neben Pfosten der Einfahrt und Sperrflächen ist der Roboter so breit wie eine Schnur um ihn herum: Offene Arme umgreifen nichts.",
    matters: "Wege mit Armen oder Schaufel dicht an einer Sperrfläche vorbei oder durch die Einfahrt",
  },
  climb: {
    leftOut:
      "Ketten steigen nicht über die Kante des Keils, außer die Datei sagt es, und der Roboter kippt nie.",
    matters: "Schübe, die an einem Keil mit hoher Kante enden",
  },
  floor: {
    leftOut: "Der Boden ist eben und überall gleich; Wände sind gerade.",
    matters:
      "wo freie Bälle liegen bleiben: Bei einem halben Grad Gefälle hält ein harter, glatter Ball nie an",
  },
  battery: {
    leftOut: "Der Akku ist am Ende so voll wie am Anfang, und die Räder sind so sauber.",
    matters: "Routinen nahe am Zeitlimit und lange blinde ohne Ausrichten",
  },
  drift: {
    leftOut:
      "Die Abweichung bleibt wie beschrieben: Kein Rad hakt, kein Kabel bleibt hängen, niemand fasst etwas an.",
    matters: "Quoten nahe 100 von 100: Ein echter Roboter scheitert auch aus Gründen, die kein Modell kennt",
  },
  sensors: {
    leftOut:
      "Sensoren lesen das Nächste in ihrem Kegel; Echos springen nicht weiter, und ein Roboter, der liest, kennt den Plan und jede Wand darin.",
    matters: "Routinen, die sich umsehen: wie viele Bälle sie erkennen, vor allem nahe an Wänden",
  },
  guesses: {
    leftOut:
      "Reibung, Rollen und Rückprall, die niemand gemessen hat, sind geschätzt, mit einer angegebenen Spanne.",
    matters: "jede Quote; die Reihenfolge der Routinen weniger als die Quoten selbst",
  },
};
