import type { Catalogue } from "../catalogue.ts";

export const carryMapTexts: Catalogue["carryMap"] = {
  layer: "Wo ein Ball im Schieber verloren gehen kann",
  decides: (run) =>
    `Wo ein Ball im Schieber verloren gehen kann: Diese Routine fährt in jedem Lauf anders, also gibt es davon nicht die eine Karte. Für Lauf ${run} steht es unter Üben, unter den Schritten zum Programmieren.`,
  brakes: "Balken quer zum Weg: Hier bremst der Roboter, und der Ball kann weiterrollen",
  turns: "offene Raute: In dieser Drehung kann ein Ball herausrutschen; langsamer bleibt er drin",
  never: "volle Raute: In dieser Drehung behält dieser Schieber bei keinem Tempo einen Ball",
  nowhere: "Ein Ball im Schieber bleibt in jeder Drehung und bei jedem Halt darin.",
  nothingHere: "Hier geht durch Drehen oder Bremsen kein Ball verloren.",
  brakesAt: (move) => `Zug ${move}, beim Anhalten`,
  turnsAt: (move) => `Zug ${move}, in der Drehung`,
  limit: (where, reached, safe) => `${where}: erreicht ${reached}, bis ${safe} bleibt ein Ball im Schieber`,
  noLimit: (where, reached) =>
    `${where}: erreicht ${reached}, bei keinem Tempo bleibt ein Ball in diesem Schieber`,
  degPerS: (value) => `${value} Grad/s`,
};
