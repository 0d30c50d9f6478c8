import type { Catalogue } from "../catalogue.ts";

export const zonePictureTexts: Catalogue["zonePicture"] = {
  title: "Die Zone und der Weg der Routine",
  description: (width, height, corner, wall, moves, balls) =>
    `Die Zone, ${width} mal ${height}, von oben: der Keil schraffiert in der Ecke ${corner}, die Einfahrt in der ${wall} Wand, der Roboter am Start, der Weg von ${moves === 1 ? "einem Zug" : `${moves} Zügen`}${balls > 0 ? `, dazu ${balls === 1 ? "ein Ball" : `${balls} Bälle`}` : ""}.`,
  walls: { left: "linken", right: "rechten", bottom: "unteren", top: "oberen" },
};
