import type { Catalogue } from "../catalogue.ts";

export const robotStepTexts: Catalogue["robotStep"] = {
  title: "Der Roboter",
  hint: "Stellt den echten Roboter auf Papier, zeichnet um ihn herum und messt die Zeichnung.",
  follows: "Was daraus folgt",
  shape: "Form, von oben gesehen",
  pushes: "Was die Bälle schiebt",
  corners: (count) => `Die ${count} Ecken, von der Mitte der Achse aus`,
  floorCorners: (count) => `Die ${count} Ecken von dem, was am Boden steht (gestrichelt): Ketten und Tiefes`,
  shapes: {
    plate: "Eine gerade Platte",
    arms: "Zwei Arme",
    hinged: "Zwei Arme, die schwenken",
    scoop: "Eine V-förmige Schaufel",
    polygon: "Ein eigener Umriss",
  },
  sketch: (length, width, ball) =>
    `Der Roboter von oben, er fährt nach rechts: ${length} lang und ${width} breit, vor ihm ein Ball von ${ball}.`,
  sketchKey: "Die dicke Linie ist der Schieber, der Punkt die Mitte zwischen den Rädern.",
  sketchHinged: (gap) =>
    `Die Arme sind offen gezeichnet und gestrichelt so, wie sie geschlossen stehen: Dann bleiben ${gap} zwischen ihren Spitzen.`,
  drive: "Antrieb",
  climbs: "Er kann auf den Keil hinauffahren",
  grip: "Haftung und Rückprall",
  start: "Wo er losfährt",
  naming: "Sein Name",
  name: "Name des Roboters",
  drift: "Wie er abweicht",
  driftHint:
    "Lasst ihn 1 m fahren und zehn Vierteldrehungen machen, je fünfmal, und messt nach. „Plus oder minus“ heißt: In zwei von drei Fällen liegt er nicht weiter daneben.",
  driftSame: "Den ganzen Lauf lang gleich",
  driftSameWhy:
    "Radgröße, Batterie und Boden ändern sich von Tag zu Tag, aber kaum in einem Lauf: Solche Fehler häufen sich.",
  driftNew: "In jedem Zug neu",
  number: {
    bodyLength: {
      label: "Rumpf, von hinten nach vorn",
      why: "Ein langer Roboter braucht mehr Platz, um an Wänden und in Ecken zu drehen.",
    },
    bodyWidth: {
      label: "Rumpf, von links nach rechts",
      why: "Er muss durch die Einfahrt passen; ein breiter nimmt auf jeder Bahn mehr mit.",
    },
    axleFromRear: {
      label: "Achse, von hinten",
      why: "Der Roboter dreht um die Achse: Was weit von ihr weg ist, schwenkt weit aus.",
    },
    plateWidth: {
      label: "Platte, von links nach rechts",
      why: "Eine breitere Platte berührt auf jeder Bahn mehr, bleibt aber in Einfahrt und Ecken hängen.",
    },
    plateReach: {
      label: "Platte, vor dem Rumpf",
      why: "Was vorragt, schiebt Bälle über die Kante des Keils, während die Ketten davor bleiben.",
    },
    armLength: {
      label: "Arme, Länge",
      why: "Längere Arme halten einen Ball beim Drehen besser und brauchen mehr Platz dazu.",
    },
    armThickness: {
      label: "Arme, Dicke",
      why: "Dicke Arme lassen weniger Platz zwischen sich und kommen nicht an einen Ball dicht an der Wand.",
    },
    armAngle: {
      label: "Arme, nach außen gedreht",
      why: "Nach außen gedreht fangen sie mehr, lassen einen Ball aber leichter los.",
    },
    hingeAside: {
      label: "Gelenke, von der Mitte",
      why: "Davon hängt ab, wie weit die Arme stehen und ob sich die geschlossenen Spitzen treffen.",
    },
    openAngle: {
      label: "Offene Arme, nach außen gedreht",
      why: "Wie breit die Bahn ist, die sie einsammeln; offen müssen sie durch die Einfahrt passen.",
    },
    closedAngle: {
      label: "Geschlossene Arme, nach außen gedreht",
      why: "Zwischen den geschlossenen Spitzen muss weniger als ein Ball Platz haben: Nur dann ist er gefangen.",
    },
    swingRate: {
      label: "Arme schwenken, ° je Sekunde",
      why: "Langsame Arme kosten bei jedem Ball Zeit; schnelle stoßen ihn weg.",
    },
    opening: {
      label: "Schaufel, Breite an den Spitzen",
      why: "Wie viel die Schaufel auf einer Bahn aufnimmt.",
    },
    depth: {
      label: "Schaufel, Tiefe",
      why: "Beim Drehen bleibt ein Ball nur, wo die Schaufel tiefer ist als sein Radius.",
    },
    sideThickness: {
      label: "Schaufel, Dicke der Seiten",
      why: "Dicke Seiten halten die Schaufel von Bällen fern, die an einer Wand liegen.",
    },
    gauge: {
      label: "Zwischen den Mitten der Ketten",
      why: "Daraus rechnet der Roboter aus, wie weit die Ketten für eine Drehung laufen müssen.",
    },
    trackContact: {
      label: "Kette auf dem Boden (0: zwei Räder)",
      why: "Lange Ketten lassen sich schwer drehen: Der Roboter richtet sich dann an einer Wand vielleicht nicht aus.",
    },
    wheelDiameter: {
      label: "Raddurchmesser",
      why: "Daraus rechnet der Roboter aus, wie weit er fährt; er steht in den Schritten zum Programmieren.",
    },
    topSpeed: {
      label: "Am schnellsten geradeaus",
      why: "Ein schneller Roboter schafft mehr in der Zeit, stößt Bälle aber härter.",
    },
    turnRate: {
      label: "Schnellste Drehung, ° je Sekunde",
      why: "Drehungen kosten viel von der Zeit; eine schnelle wirft Bälle aus dem Schieber.",
    },
    accel: {
      label: "Gewinnt oder verliert, mm/s je Sekunde",
      why: "Das kostet in jedem Zug Zeit; bei hartem Bremsen rollt ein Ball voraus.",
    },
    mass: {
      label: "Masse",
      why: "Ein schwerer Roboter wird von Bällen, die er an eine Wand drückt, nicht aufgehalten.",
    },
    traction: {
      label: "Haftung nach vorn",
      why: "Ohne Haftung kann er sich nicht an einer Wand gerade drücken. Neigt ein Brett mit dem Roboter darauf: Haftung ist Höhe durch Länge, wenn er zu rutschen beginnt.",
    },
    lateral: {
      label: "Haftung zur Seite",
      why: "Viel Haftung zur Seite hält ihn auf seinem Weg und macht es schwerer, ihn an einer Wand auszurichten.",
    },
    pusherFriction: {
      label: "Reibung Ball am Schieber",
      why: "Ein Schieber, der greift, schleift Bälle an der Wand mit oder klemmt sie dort ein.",
    },
    pusherBounce: {
      label: "Rückprall vom Schieber",
      why: "Was abprallt, läuft dem Roboter voraus, und manchmal davon.",
    },
    distanceMean: {
      label: "Nach 1 m zu weit um (zu kurz: −)",
      why: "Was immer gleich danebenliegt, lässt sich im Programm richten: Bis dahin endet jede Bahn woanders.",
    },
    curvatureMean: {
      label: "Nach 1 m zeigt er nach links um (rechts: −)",
      why: "Wer einen Bogen fährt, verlässt seine Bahn und verfehlt, was an ihrem Ende liegt.",
    },
    turnMean: {
      label: "Nach zehn Vierteldrehungen zu weit um (zu kurz: −)",
      why: "Nach ein paar Drehungen liegen alle Bahnen schief, bis er sich an einer Wand ausrichtet.",
    },
    distanceSd: {
      label: "Zu weit oder zu kurz, plus oder minus",
      why: "Es sagt, wie sicher die Zahl davor von Lauf zu Lauf ist.",
    },
    curvatureSd: {
      label: "Schräg, plus oder minus",
      why: "An einem Tag zieht er nach links, am anderen nach rechts: Keine Routine kann sich darauf verlassen.",
    },
    turnSd: {
      label: "Zehn Vierteldrehungen, plus oder minus",
      why: "Je größer, desto mehr bringt es einer Routine, sich an Wänden auszurichten.",
    },
    distanceNew: {
      label: "1 m ist jedes Mal anders um",
      why: "In jedem Zug neu, lässt es sich im Programm nicht richten; nur kürzere Wege helfen.",
    },
    curvatureNew: {
      label: "Nach 1 m zeigt er daneben um",
      why: "Lange Bahnen fächern sich dadurch auf; ein Kreisel schafft das ab.",
    },
    turnNew: {
      label: "Jede Drehung ist anders um",
      why: "Jede Drehung bringt es einmal dazu: Routinen mit wenigen Drehungen bleiben genauer.",
    },
    turnShareNew: {
      label: "… und eine lange um diesen Anteil mehr",
      why: "Eine halbe Drehung ist schlimmer als zwei Grad: Der Fehler wächst mit der Drehung.",
    },
    along: {
      label: "Neben der Mitte der Einfahrt (links, unten: −)",
      why: "Hier beginnt die erste Bahn; er darf nicht in einem Pfosten stehen.",
    },
    inset: {
      label: "Achse hinter der Wandlinie",
      why: "Wie weit drinnen der Roboter steht, wenn sein Lauf beginnt.",
    },
    heading: {
      label: "Gegen geradeaus nach links gedreht (rechts: −)",
      why: "Der erste Zug geht in diese Richtung.",
    },
    startOff: {
      label: "Danebengestellt um",
      why: "Niemand stellt ihn genau hin; alles Weitere liegt um so viel daneben, bis er an eine Wand kommt.",
    },
    startTurned: {
      label: "Verdreht um",
      why: "Ein Grad am Anfang sind 17 mm nach einem Meter.",
    },
  },
  cornerAhead: (number) => `Ecke ${number}, nach vorn`,
  cornerLeft: (number) => `Ecke ${number}, nach links`,
  floorCornerAhead: (number) => `Bodenecke ${number}, nach vorn`,
  floorCornerLeft: (number) => `Bodenecke ${number}, nach links`,
};
