import type { Catalogue } from "../catalogue.ts";

export const numberTexts: Catalogue["number"] = {
  decimalMark: ",",
  and: "und",
  ofHundred: (share) => `${share} von 100`,
  range: (low, high) => `${low} bis ${high}`,
};
