import type { Catalogue } from "../catalogue.ts";

export const robotIssueTexts: Catalogue["robotIssue"] = {
  axleAhead: "Die Achse liegt vor dem Rumpf; gemessen wird sie von seinem hinteren Ende.",
  armsMeet:
    "Die Arme treffen sich, kein Ball passt dazwischen: Macht sie kürzer oder dünner oder dreht sie nach außen.",
  tooClose: (length) => `${length} zu nah`,
  aGap: "ein Abstand über 0 mm",
  armsTooShort: "Die Arme sind dicker als lang, ihre Spitzen liegen im Rumpf: Macht sie länger.",
  hingeBeside: "Die Gelenke liegen neben dem Rumpf; sie sitzen vorn an ihm, von seiner Mitte aus gemessen.",
  armsStayShut: "Offene Arme müssen weiter nach außen gedreht sein als geschlossene.",
  openClosed: (open, closed) => `${open}° offen, ${closed}° geschlossen`,
  scoopTooThick:
    "Die Seiten der Schaufel sind zu dick für ein so flaches V: Am Rumpf wären sie breiter als er. Macht sie dünner oder die Schaufel tiefer.",
  tooFewPoints: "Ein Umriss braucht mindestens 3 Punkte.",
  points: (count) => `${count} ${count === 1 ? "Punkt" : "Punkte"}`,
  pointTwice:
    "Nach diesem Punkt kommt derselbe noch einmal; jeder steht nur einmal da, auch der erste am Ende nicht wieder.",
  twice: (point) => `${point} zweimal`,
  onceEach: "jeder Punkt einmal",
  crosses:
    "Der Umriss kreuzt oder berührt sich selbst; gebt seine Punkte in der Reihenfolge an, in der sie um den Roboter herum liegen.",
  crossing: (count) => `${count} Punkte, die sich kreuzen`,
  aSimpleOne: "ein einfacher Umriss",
  tooSmall: "Der Umriss ist zu klein für einen Roboter; Längen sind in mm.",
  edges: (last) => `Nummern von Seiten von 0 bis ${last}, jede einmal`,
  noPusher:
    "Keine Seite soll Bälle berühren; gebt mindestens eine an (Seite 0 geht von Punkt 0 bis Punkt 1).",
  noEdge: "Eine Seite mit dieser Nummer gibt es nicht.",
  edgeTwice: "Eine Seite steht zweimal da; behaltet eine.",
  seesNothing: "Der Sensor sieht gar nichts: Seine Reichweite endet vor dem, was er am nächsten sieht.",
  sensorTwice: "Einen Sensor dieser Art gibt es schon; behaltet einen.",
  sameAs: (path) => `derselbe wie ${path}`,
  one: "einer",
};
