import type { Catalogue } from "../catalogue.ts";

export const zoneStepTexts: Catalogue["zoneStep"] = {
  title: "Die Zone",
  hint: "Messt den echten Boden mit einem Maßband. Tippt eine Zahl ein oder zieht die Griffe in der Zeichnung.",
  walls: "Wände",
  doorway: "Einfahrt",
  doorwayWall: "In welcher Wand",
  wedge: "Keil",
  wedgeCorner: "In welcher Ecke",
  wedgeProfile: "Von der Seite gesehen",
  keepOuts: "Sperrflächen",
  keepOut: "Sperrfläche",
  keepOutAbout: "Sperrflächen wichtig sind",
  keepOutWhy:
    "Eine Sperrfläche ist ein fester Klotz auf dem Boden, etwa ein Pfeiler: Weder Roboter noch Ball kommt hinein.",
  nameAndNotes: "Name und Notizen",
  name: "Name des Projekts",
  notes: "Notizen: wer gemessen hat, wann, was unsicher ist",
  number: {
    width: {
      label: "Von links nach rechts, innen",
      why: "Ein längerer Boden braucht mehr Bahnen und mehr Zeit.",
    },
    height: {
      label: "Von vorn nach hinten, innen",
      why: "Ein längerer Boden braucht mehr Bahnen und mehr Zeit.",
    },
    doorwayMiddle: {
      label: "Ihre Mitte, vom linken oder unteren Ende der Wand",
      why: "Hier kommt der Roboter herein, und hier können Bälle hinausrollen.",
    },
    doorwayWidth: {
      label: "Breite",
      why: "Der Roboter muss hindurchpassen; durch eine breite Einfahrt gehen mehr Bälle verloren.",
    },
    wedgeLegX: {
      label: "An der unteren oder oberen Wand entlang",
      why: "Ein größerer Keil ist leichter zu treffen und lässt dem Roboter weniger Boden.",
    },
    wedgeLegY: {
      label: "An der linken oder rechten Wand entlang",
      why: "Ein größerer Keil ist leichter zu treffen und lässt dem Roboter weniger Boden.",
    },
    wedgeLip: {
      label: "Kante an der langen Seite",
      why: "Ein Ball muss hinübergeschoben werden: Ein langsamer rollt zurück.",
    },
    wedgeRise: {
      label: "Höhe am Ende",
      why: "Am Hang rollt ein Ball: von einer Rampe zurück, in eine Mulde hinein.",
    },
    wedgeRun: {
      label: "Länge der Rampe",
      why: "Eine kurze Rampe ist steil: Ein Ball braucht mehr Schwung dafür.",
    },
    blockLeft: {
      label: "Ihre linke Seite, von links",
      why: "Davon hängt ab, auf welchem Weg der Roboter an ihr vorbeikommt.",
    },
    blockLow: {
      label: "Ihre untere Seite, von unten",
      why: "Davon hängt ab, auf welchem Weg der Roboter an ihr vorbeikommt.",
    },
    blockWidth: { label: "Von links nach rechts", why: "Wie viel Boden sie einnimmt." },
    blockHeight: { label: "Von vorn nach hinten", why: "Wie viel Boden sie einnimmt." },
    count: { label: "Wie viele", why: "Ein Lauf gilt nur als Erfolg, wenn jeder Ball im Ziel ist." },
    points: {
      label: "Punkte für jeden",
      why: "Bei verschiedenen Punkten kann die Routine besser sein, die zuerst die wertvollen heimbringt.",
    },
    diameter: {
      label: "Durchmesser",
      why: "Ein großer Ball ragt aus dem Schieber; ein kleiner versteckt sich in Ecken.",
    },
    ballMass: { label: "Masse", why: "Davon hängt ab, wie Bälle einander wegstoßen, wenn sie sich treffen." },
    rolling: {
      label: "Rollwiderstand",
      why: "Wie schnell ein rollender Ball auf eurem Boden langsamer wird: Er hält nach v² ÷ (2 · dies · 9,81 m/s²) an.",
    },
    bounce: {
      label: "Rückprall (0 tot, 1 lebhaft)",
      why: "Ein lebhafter Ball springt von Wand und Schieber ab und ist schwerer zu halten.",
    },
    wallFriction: {
      label: "Reibung an Wänden und Roboter",
      why: "Ein Ball, der greift, rollt an einer Wand hoch und klemmt zwischen Wand und Roboter.",
    },
    floorFriction: {
      label: "Reibung auf dem Boden",
      why: "Davon hängt ab, wie bald ein geschobener Ball rollt, statt zu rutschen.",
    },
    wallMargin: {
      label: "Abstand zu Wänden und Sperrflächen",
      why: "Bälle an einer Wand sind am schwersten zu holen: Bei großem Abstand gibt es keine.",
    },
    spacing: {
      label: "Abstand zwischen Bällen",
      why: "Bälle dicht beieinander stoßen sich gegenseitig weg.",
    },
    wedgeMargin: {
      label: "Abstand zum Keil",
      why: "Ein Ball neben dem Keil ist mit einem Schub im Ziel, oder man kommt schwer hinter ihn.",
    },
    robotMargin: {
      label: "Abstand zum Roboter",
      why: "Einen Ball gleich vor dem Roboter trifft schon der erste Zug.",
    },
    timeLimit: {
      label: "Erlaubte Zeit",
      why: "Was bis dahin nicht im Ziel ist, ist verloren; mit mehr Zeit gewinnen langsamere, sicherere Routinen.",
    },
  },
  mayBe: "Am Tag selbst kann er auch hier sein",
  mayBeWhy:
    "Wird die Ecke erst am Tag selbst gesagt, zieht jeder Lauf sie neu, und nur ein Roboter, der den Boden wahrnimmt, kann sie finden.",
  spotLeft: (ball) => `Ball ${ball}, von links`,
  spotLow: (ball) => `Ball ${ball}, von unten`,
  spotWhy: "Eine Routine für feste Stellen kann überall sonst nutzlos sein.",
  keepOutTake: (number) => `Sperrfläche ${number} wegnehmen`,
  keepOutAdd: "Sperrfläche hinzufügen",
  regionTake: (number) => `Fläche ${number} wegnehmen`,
  regionAdd: "Fläche hinzufügen",
  balls: "Bälle",
  kind: (number) => `Sorte ${number}`,
  ballNumbers: "Seine Zahlen",
  ballName: "Bezeichnung",
  ownBall: "Eigener Ball",
  inside: "Innen",
  takeKind: (number) => `Sorte ${number} wegnehmen`,
  addKind: "Eine weitere Sorte hinzufügen",
  layout: "Wie die Bälle hingelegt werden",
  lie: "Sie liegen",
  noBall: "Wohin kein Ball gelegt wird",
  region: "Fläche",
  shaded:
    "Schattiert ist, wo nach der Regel die Mitte eines Balls liegen darf; die Ringe sind vier Aufstellungen, die sie ergeben könnte.",
  shadedKinds:
    "Größere Bälle bleiben weiter von allem weg: Am dunkelsten ist, wo Bälle jeder Größe liegen dürfen.",
  rollsBack: (slope, stays) =>
    `! Diese Rampe steigt ${slope} mm auf je 100 mm. Ein losgelassener Ball bleibt nur liegen, wo es weniger ist (${stays}); hier rollt er also wieder herunter: Im Ziel ist nur, was der Roboter am Ende noch festhält. Bleiben Bälle auf eurer echten Rampe liegen, dann messt, wie weit sie rollen (Üben, Maßband).`,
  staysUpTo: (ball, slope) => `${ball}: höchstens etwa ${slope} mm`,
  spotsDragged: "Jeder Ball lässt sich auf der Zeichnung ziehen.",
  counts: "Was zählt",
  home: "Ein Ball ist im Ziel",
  homeAbout: "es wichtig ist, wann ein Ball im Ziel ist",
  homeWhy:
    "Das sagen die Regeln der Veranstaltung; ein Ball am Rand des Keils zählt nach der einen Regel und nach der anderen nicht.",
};
