import type { Catalogue } from "../catalogue.ts";

export const posterTexts: Catalogue["poster"] = {
  moves: (seconds, moves) => `${seconds} s für ${moves} Züge`,
  decides: (run) => `entscheidet nach seinen Sensoren; sein Weg in Lauf ${run}`,
};
