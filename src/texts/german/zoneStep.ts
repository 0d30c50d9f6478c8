import type { Catalogue } from "../catalogue.ts";

export const zoneStepTexts: Catalogue["zoneStep"] = {
  title: "Die Zone",
  hint: "Messt den echten Boden mit einem Maßband. Tippt eine Zahl ein oder zieht die Griffe in der Zeichnung.",
  walls: "Wände",
  width: "Von links nach rechts, innen",
  height: "Von vorn nach hinten, innen",
  doorway: "Einfahrt",
  doorwayWall: "In welcher Wand",
  doorwayMiddle: "Ihre Mitte, vom linken oder unteren Ende der Wand",
  doorwayWidth: "Breite",
  wedge: "Keil",
  wedgeCorner: "In welcher Ecke",
  wedgeLegX: "An der unteren oder oberen Wand",
  wedgeLegY: "An der linken oder rechten Wand",
  wedgeProfile: "Von der Seite gesehen",
  wedgeLip: "Kante an der langen Seite",
  wedgeRise: "Höhe am Ende",
  wedgeRun: "Länge der Rampe",
  keepOuts: "Sperrflächen",
  keepOut: "Sperrfläche",
  keepOutAbout: "Sperrflächen wichtig sind",
  keepOutWhy:
    "Eine Sperrfläche ist ein fester Klotz auf dem Boden, etwa ein Pfeiler: Weder Roboter noch Ball kommt hinein.",
  nameAndNotes: "Name und Notizen",
  name: "Name des Projekts",
  notes: "Notizen: wer gemessen hat, wann, was unsicher ist",
};
