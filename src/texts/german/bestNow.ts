import type { Catalogue } from "../catalogue.ts";

export const bestNowTexts: Catalogue["bestNow"] = {
  title: "Was eine Änderung bewirkt",
  best: "Beste Routine",
  soFar: "Beste bisher",
  before: "Vor der Änderung",
  trying: "läuft, wie es jetzt ist …",
  none: "hier gelingt keine Routine",
  range: (low, high) => `(${low} bis ${high})`,
  from: (runs) => `· aus ${runs} ${runs === 1 ? "Lauf" : "Läufen"}`,
  about: "sich diese Zahlen ändern",
  why: "Nach jeder Änderung laufen sofort die besten Routinen von vorher in eurer Zone mit eurem Roboter, wie sie jetzt sind, danach Hunderte andere. Der Balken ist die Spanne, in der der wahre Wert in 19 von 20 Fällen liegt; er wird schmaler, während Läufe dazukommen. Solange noch ausgewählt wird, hat die Beste bisher etwas Glück gehabt: Ihre Zahl sinkt oft, bis frische Läufe sie festlegen. Balken, die sich nicht überlappen, sagen, dass die Änderung etwas ausmacht; überlappen sie sich, vergleicht beide auf denselben Läufen, im Schritt Routinen.",
  spoken: (now, before) => `Nach der Änderung: ${now}. Vorher: ${before}.`,
  spokenAlone: (now) => `Beste Routine: ${now}.`,
};
