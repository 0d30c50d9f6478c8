import type { Catalogue } from "../catalogue.ts";

export const runNoticeTexts: Catalogue["runNotice"] = {
  failed: (why) => `Das hat nicht geklappt: ${why}`,
  beatsStill: "Eine Aufstellung, an der die Routine auch ohne Abweichung scheitert.",
  hard: "Eine Aufstellung, die der Routine schwerfällt.",
  variant: (label, number) => `${label} (Variante ${number})`,
  noRun: {
    failed: (limit) => `Unter den ${limit} durchgesehenen Läufen ging keiner schief.`,
    worked: (limit) => `Unter den ${limit} durchgesehenen Läufen klappte keiner.`,
  },
};
