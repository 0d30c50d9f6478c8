import type { Catalogue } from "../catalogue.ts";

export const whyTexts: Catalogue["why"] = {
  ballsHome: {
    about: "ein Durchschnitt",
    words:
      "Alle Bälle, die in allen Läufen ins Ziel kamen, geteilt durch die Zahl der Läufe: So unterscheiden sich auch Routinen, die selten alle Bälle ins Ziel bringen.",
  },
  losses: {
    about: "Bälle so gezählt werden",
    words:
      "Jeder Ball, der am Ende nicht im Ziel ist, zählt einmal, nach dem, was zuletzt mit ihm geschah; ein Lauf kann mehrere verlieren.",
  },
  map: {
    about: "eine Stelle ihr Zeichen hat",
    words:
      "Für eine Stelle zählen die Läufe, in denen dort oder nahebei ein Ball anfing; wo es zu wenige waren, steht kein Zeichen.",
  },
  home: {
    about: "die Kurven Bänder haben",
    words:
      "Mit anderen Läufen läge jede Kurve etwas anders: In 19 von 20 Fällen bleibt die wahre Kurve überall in ihrem Band.",
  },
  stop: {
    about: "das der beste Augenblick zum Aufhören ist",
    words: "Ab da kostet Weiterfahren in jedem Lauf Sekunden, bringt aber kaum noch einen Ball ins Ziel.",
  },
  budget: {
    about: "so viel Abweichung erlaubt ist",
    words:
      "Alle Fehler werden zusammen kleiner oder größer gemacht, bis neun Zehntel dessen, was der Schieber ohne Abweichung berührt, noch sicher berührt werden.",
  },
  layouts: {
    about: "diese Aufstellungen die schlimmsten sind",
    words:
      "Eine Suche verschiebt die Bälle, solange die Routine dabei schlechter wird; die Quoten kommen aus Läufen, die sie nicht kannte.",
  },
  fixes: {
    about: "da ein Bereich steht",
    words:
      "Der Strich zeigt, wie weit der wahre Unterschied von dem der Läufe entfernt sein kann; wo er über null reicht, bringt die Änderung vielleicht nichts.",
  },
  worth: {
    about: "ein Teil so viel wert ist",
    words:
      "Die Teile teilen sich alle Bälle, die ins Ziel kommen: jeder nach dem, was er im Mittel zu allen möglichen anderen Teilen hinzufügt.",
  },
  ghosts: {
    about: "diese Läufe",
    words:
      "Es sind die Läufe ab 0, jeder mit eigenen Bällen und Fehlern; ihr Anteil, der klappt, ist also eine Stichprobe der Quote in der Liste.",
  },
  against: {
    about: "es einen Unterschied gibt",
    words:
      "Beide haben dieselben Läufe mit denselben Bällen und Fehlern gemacht; was anders ist, kommt also von eurer Änderung und nicht vom Glück.",
  },
  follows: {
    about: "das folgt",
    words:
      "Es ist aus Umriss, Antrieb, Haftung und Zone gerechnet, die ihr eingetippt habt: Ändert eins davon, und es ändert sich sofort.",
  },
  moves: {
    about: "die Züge diese Zahlen haben",
    words:
      "Sie folgen aus dem Muster, der Zone und der Größe eures Roboters: Jedes Stück endet da, wo das nächste anfangen muss.",
  },
  doubt: {
    about: "es nicht sicherer ist",
    words:
      "Mehr Läufe machen den ersten Zweifel kleiner; der zweite kommt von Werten, die auf eurem Boden niemand gemessen hat, und nur Messen macht ihn kleiner.",
  },
  run: {
    about: "dieser Lauf so ausgeht",
    words:
      "Er wird Sekunde für Sekunde aus der Aufstellung und den kleinen Fehlern seiner Nummer gerechnet; ein Ball ist im Ziel, wenn er am Ende auf dem Keil liegt.",
  },
  layers: {
    touched: {
      about: "eine Stelle berührt wird",
      words:
        "Der Weg des Schiebers ohne jeden Fehler wird über den Boden gelegt: Eine Stelle zählt, wenn er einen Ball berührt, dessen Mitte dort liegt.",
    },
    sure: {
      about: "eine Stelle sicher ist",
      words:
        "Sie ist sicher, wenn keine Abweichung innerhalb der Grenzen einen Ball dort unberührt lassen kann, und offen, wenn eine es kann.",
    },
    pushes: {
      about: "eine Stelle so lange dauert",
      words:
        "Für jede Stelle wird die schnellste Kette gerader Schübe in die Ecke gesucht, mit den Wegen des Roboters dorthin: was ein Roboter braucht, der weiß, wo der Ball liegt.",
    },
    carry: {
      about: "ein Ball hier verloren gehen kann",
      words:
        "Hier bremst oder dreht der Roboter, und das Zeichen sagt, ob ein Ball bei diesem Tempo auf diesem Boden in einem Schieber dieser Form bleibt.",
    },
  },
  steps: {
    about: "die Räder sich so weit drehen",
    words:
      "Ein Rad dreht sich um seinen Weg auf dem Boden geteilt durch seinen Umfang, die mittlere Abweichung schon ausgeglichen; dreht der Roboter, fahren die Räder auf einem Kreis, so weit wie die Spurweite.",
  },
  measured: {
    about: "da ein Bereich steht",
    words:
      "Versuche fallen jedes Mal etwas anders aus; euer Mittel liegt also nur nahe am wahren Wert, der in 19 von 20 Fällen in diesem Bereich liegt.",
  },
  proposed: {
    about: "gerade diese Aufstellungen",
    words:
      "Sie sind so verteilt, dass wenige Läufe den ganzen Boden erproben, dazu einige, die für diese Routine schwer sind; die zwei Zahlen eines Balls sind seine Millimeter von der linken und von der unteren Wand.",
  },
  practised: {
    about: "Versprechen und Übung so verglichen werden",
    words:
      "Das Modell fährt zu jeder Aufstellung, die ihr versucht habt, viele Läufe und sagt, wie oft es dort klappt; die Quote nach dem Üben ist die eurer Läufe, mit einem mehr, der klappte, und einem, der nicht klappte, damit wenige Läufe weder alles noch nichts versprechen.",
  },
  decided: {
    about: "diese Zahlen zählen",
    words:
      "Vorher und nachher haben dieselben Läufe mit denselben Bällen und Fehlern gemacht, und alles, was man braucht, um sie zu wiederholen, ist hier aufgehoben.",
  },
  runsToLoad: "Die Läufe werden gerechnet",
};
