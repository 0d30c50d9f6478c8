import type { Catalogue } from "../catalogue.ts";

export const sensorWorthTexts: Catalogue["sensorWorth"] = {
  title: "Was ein Sensor wert ist",
  about: "die Zeilen vergleichbar sind",
  why: "Jede Zeile läuft auf denselben Aufstellungen mit demselben Glück, mit der Routine, die dafür in anderen Läufen am besten war. „Alles bekannt“ ist die Obergrenze: Mehr kann kein Sensor wert sein.",
  hint: "Brächte der Roboter mehr Bälle ins Ziel, wenn er sie sehen, fühlen oder nach einem Kreisel steuern könnte?",
  ask: "Alle Sensoren ausprobieren",
  again: "Alle Sensoren noch einmal ausprobieren",
  working: "Sensoren werden ausprobiert",
  stop: "Aufhören",
  stopped: "Angehalten; es gibt noch nichts zu vergleichen.",
  fault: (words) => `Das ging nicht: ${words}`,
  done: "Alle Sensoren ausprobiert.",
  own: "Die eigenen Sensoren des Roboters, einzeln und zusammen.",
  usual: "Der Roboter hat keinen Sensor: Das sind übliche, dort, wo solche Roboter sie tragen.",
  has: "Der Roboter hat und fährt",
  home: "Alle Bälle im Ziel",
  gain: "Gegenüber keinem Sensor",
  ballsOf: (mean, of) => `${mean} von ${of} Bällen`,
};
