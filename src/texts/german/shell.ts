import type { Catalogue } from "../catalogue.ts";

export const shellTexts: Catalogue["shell"] = {
  steps: "Schritte der Arbeit",
  toMend: (count) => `${count} zu verbessern`,
  drawing: "Die Zeichnung",
  footer:
    "Alles wird in diesem Browser gerechnet, nichts wird irgendwohin geschickt. Ein Modell lässt manches weg: Probiert die Routine auf eurem echten Boden aus, bevor ihr euch auf sie verlasst.",
  pageTitle: "Wedgeward: Welche Routine bringt jeden Ball ins Ziel?",
  pageDescription:
    "Gebt eine Zone und einen Roboter ein, seht, welche Routine jeden Ball auf den Keil bringt, und seht ihr zu.",
  titles: {
    zone: "Zone",
    robot: "Roboter",
    routines: "Routinen",
    watch: "Ansehen",
    weak: "Schwächen",
    practice: "Üben",
    jury: "Jury",
  },
  words: {
    zone: "wie der Boden aussieht",
    robot: "was darauf fährt",
    routines: "was er tun könnte",
    watch: "was dann passiert",
    weak: "wo es schiefgeht",
    practice: "auf den echten Boden",
    jury: "zeigen, wie und warum",
  },
};
