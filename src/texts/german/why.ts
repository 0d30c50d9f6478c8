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
  runsToLoad: "Die Läufe werden gerechnet",
};
