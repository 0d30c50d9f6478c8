import type { Catalogue } from "../catalogue.ts";

export const carryTexts: Catalogue["carry"] = {
  limits: "Wo ein Ball im Schieber verloren gehen kann, und was ihn hält",
  limitsInRun: (run) => `Wo ein Ball im Schieber in Lauf ${run} verloren gehen könnte, und was ihn hält`,
  staysEverywhere: "Ein Ball im Schieber bleibt dort in jeder Drehung und bei jedem Anhalten.",
  canBeLost: "Ein Ball im Schieber kann verloren gehen:",
  whenStopping: "beim Anhalten",
  inTurn: "beim Drehen",
  keptAt: (speed) => `bleibt drin bei höchstens ${speed}`,
  neverKept: "dieser Schieber hält beim Drehen keinen",
  line: (noun, number, when, reached, kept) => `  ${noun} ${number}, ${when}: erreicht ${reached}, ${kept}`,
  nouns: {
    step: "Schritt",
    move: "Zug",
  },
};
