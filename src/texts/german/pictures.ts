import type { Catalogue } from "../catalogue.ts";

export const picturesTexts: Catalogue["pictures"] = {
  poster: "Ein Plakat",
  none: "Sobald eine Routine gewählt und gefahren ist, steht hier ihr Plakat.",
  saveSvg: "Als SVG sichern",
  savePng: "Als PNG sichern",
  posterIs: "Das Plakat: Zone, Weg und Erfolgsquote",
  noPicture: (why) => `Dieser Browser konnte das Bild nicht machen: ${why}`,
  noCanvas: "es gibt keine Fläche zum Zeichnen",
  empty: "heraus kam nichts",
};
