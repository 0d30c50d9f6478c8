import type { Catalogue } from "../catalogue.ts";

export const listingTexts: Catalogue["listing"] = {
  head: (robot, project, steps, time) => `${robot}, ${project}: ${steps} Schritte, ${time}`,
  start: (inset, aside, heading, arms) =>
    `Start: die Mitte zwischen den Antriebsrädern ${inset} mm hinter der Linie der Einfahrtswand, ${aside}; er schaut ${heading}${arms}.`,
  inMiddle: "in der Mitte der Einfahrt",
  aside: {
    left: (mm) => `${mm} mm links von der Mitte der Einfahrt, wie in der Zeichnung`,
    right: (mm) => `${mm} mm rechts von der Mitte der Einfahrt, wie in der Zeichnung`,
    up: (mm) => `${mm} mm über der Mitte der Einfahrt, wie in der Zeichnung`,
    down: (mm) => `${mm} mm unter der Mitte der Einfahrt, wie in der Zeichnung`,
  },
  straightIn: "geradeaus hinein",
  turnedIn: (isRight, deg) => `${deg} Grad nach ${isRight ? "rechts" : "links"} gegen geradeaus hinein`,
  armsOpen: "; Arme offen",
  sides: "Links und rechts sind vom Roboter aus gemeint. Probiert es zuerst mit den Ketten in der Luft.",
  asSensors: "so lange, wie seine Sensoren es bestimmen",
  wheelDegrees:
    "Radgrade dieses Roboters; sie gleichen die mittlere Abweichung aus, die in der Projektdatei steht.",
  straight:
    "Eine Gerade: Beide Räder drehen mm * WHEEL_DEG_PER_MM, jedes noch mit seinem Faktor malgenommen.",
  turn: "Eine Drehung: Ein Rad dreht deg * WHEEL_DEG_PER_TURN_DEG vor, das andere zurück.",
  atRest: (accel) =>
    `Jeder Zug beginnt und endet im Stand; die Räder beschleunigen und bremsen mit ${accel} mm/s^2.`,
  curve: "Ein Bogen: Die Grade beider Räder stehen hinter dem Schritt.",
  addUp: "Zählt jeden Zug mit: scan, fetch und go_to rechnen von da, wo der Roboter dann sein müsste.",
  write: "Schreibt diese Funktionen für euren Roboter; jede kehrt zurück, wenn ihr Zug fertig ist:",
  wheels: (step, left, right) => `${step}: Räder ${left} und ${right} Grad`,
  functions: {
    drive: "Geradeaus fahren; negativ: rückwärts. Am Ende anhalten.",
    turn: "Auf der Stelle drehen, ein Rad vor, eins zurück; positiv: nach links. Am Ende anhalten.",
    curve:
      "Einen Bogen dieser Länge fahren (negativ: rückwärts), auf dem sich der Roboter um deg dreht; positiv: nach links.",
    drive_to_wall:
      "Geradeaus fahren, mm + extra_mm weit. Unterwegs hält eine Wand den Roboter auf: weiterdrücken, bis die Zeit für die ganze Strecke um ist; mit Tastschalter auf dieser Seite aufhören, sobald er gedrückt ist.",
    drive_beside:
      "Wie drive, an einer Wand entlang: sanft so lenken, dass Abstandssensor by_sensor (gezählt ab 1, in der Reihenfolge der Projektdatei) keep_mm misst; Werte, die springen (ein Ball, eine Lücke), übergehen und auf den letzten 100 mm nur noch gerade ausrichten.",
    drive_to_wall_beside:
      "Wie drive_to_wall, an einer anderen Wand entlang: lenken wie drive_beside, bis die Wand vor ihm berührt ist.",
    wait: "Stehen bleiben.",
    open_arms: "Den Motor der Arme s Sekunden lang nach außen laufen lassen, während der Roboter steht.",
    close_arms: "Den Motor der Arme s Sekunden lang nach innen laufen lassen, während der Roboter steht.",
    scan: "Auf der Stelle um deg drehen (positiv: nach links), während der Abstandssensor misst; berichtigen, wo der Roboter jetzt sein müsste (Stelle und Richtung), bis die Wände der Karte zu dem passen, was von ihnen gemessen wurde; dann alles Gemerkte vergessen und die Stelle jedes Balls merken, der zu erkennen war: näher als die Wände und nicht auf dem Keil in dieser Ecke.",
    fetch: (knockS) =>
      `Von den gemerkten Bällen den nehmen, der am wenigsten Zeit kostet (${knockS} s mehr für jeden anderen gemerkten Ball, der unterwegs berührt wird), und ihn vergessen; hinter ihn fahren, ihn auf den Keil in dieser Ecke schieben, zurückfahren. Mit Lichtschranke: aufgeben, sobald der Ball nicht im Schieber ist. Lässt sich keiner holen: alles Gemerkte vergessen.`,
    go_to:
      "Zu einer Stelle der Zone fahren (mm von der inneren Ecke unten links, x nach rechts, y nach oben) und dort in Richtung deg stehen (0: entlang x; positiv: nach links). Keine Wand berühren, auch nicht den Keil in dieser Ecke. Wo kein Weg hinführt: stehen bleiben.",
  },
  readings: {
    balls_noted: "Wie viele Bälle gemerkt sind: von scan gemerkt, von fetch noch nicht vergessen.",
    ball_in_pusher: "Ob die Lichtschranke während des letzten Zugs irgendwann unterbrochen war.",
    over_wedge: "Ob der Bodensensor jetzt den Keil unter sich sieht.",
    front_bumped: "Ob der letzte Zug mit dem Tastschalter vorn angestoßen ist.",
    back_bumped: "Ob der letzte Zug mit dem Tastschalter hinten angestoßen ist.",
    distance_mm:
      "Was dieser Sensor jetzt misst, in mm; 100000, wo kein Echo zurückkommt. Gezählt wird ab 1, in der Reihenfolge der Projektdatei.",
    seconds_left: "Sekunden bis zum Zeitlimit.",
  },
};
