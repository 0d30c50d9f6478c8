import type { Catalogue } from "../catalogue.ts";

export const spreadTexts: Catalogue["spread"] = {
  sampling: (points) =>
    `Allein durch die Zahl der Läufe kann sie um ±${points} von 100 schwanken; mehr Läufe machen das kleiner.`,
  hardly: "Reibung, Rollen und Rückprall, soweit unbekannt, ändern diese Quote kaum.",
  most: (factor, change) => ` Am meisten: ${factor}, ${change} vom unteren zum oberen Ende der Spanne.`,
  unmeasured: (points, most) =>
    `Was niemand gemessen hat (Reibung, Rollen, Rückprall), kann sie um ±${points} von 100 verschieben; da helfen keine weiteren Läufe, nur Messen.${most}`,
  factors: {
    faceFriction: "Reibung an Wänden und Schieber",
    floorFriction: "Halt eines rutschenden Balls am Boden",
    rollingResistance: "Rollwiderstand",
    restitution: "Rückprall",
  },
};
