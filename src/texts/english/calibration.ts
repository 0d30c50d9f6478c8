import { topic } from "../language.ts";

/** What a tape measure's tests tell. */
export const calibrationTexts = topic("calibration", {
  distance: (mm: string, isShort: boolean) =>
    `Told to drive 1000 mm it drives ${mm} mm too ${isShort ? "little" : "far"}.`,
  distanceScatter: (mm: string) =>
    `Two of three runs of 1000 mm end within ${mm} mm of what is usual for it.`,
  turn: (degrees: string, isShort: boolean) =>
    `Told to turn by 90° it turns ${degrees}° too ${isShort ? "little" : "far"}.`,
  turnScatter: (degrees: string) => `Two of three turns end within ${degrees}° of what is usual for it.`,
  curve: (degrees: string, isRight: boolean) =>
    `On a straight of 1000 mm its heading turns ${degrees}° to the ${isRight ? "right" : "left"}.`,
  curveScatter: "How differently it curves from run to run, a crooked start included.",
  gauge: "Reckon turns with this gauge: it has the slip of the tracks in it.",
  wheelsAlike: "The wheels may well be of one size: more runs would tell.",
  largerWheel: (isRight: boolean) => `The ${isRight ? "right" : "left"} wheel acts as the larger one.`,
  rolls: (mm: string) => `From 300 mm/s it rolls ${mm} mm before it stops.`,
  bounces: (percent: string) => `It comes off a hard wall with ${percent} % of its speed.`,
  what: {
    distanceScale: "distance, real over commanded",
    distanceSdFrac: "scatter of a distance",
    turnScale: "turn, real over commanded",
    turnSdRad: "scatter of a turn",
    curvatureRadPerMm: "curve on a straight, left positive",
    curvatureSdRadPerMm: "scatter of that curve",
    effectiveGaugeMm: "effective gauge",
    wheelRatio: "right over left wheel",
    rollingResistance: "rolling resistance of the ball",
    restitution: "bounce of the ball",
  },
  warnings: {
    "turns-and-squares-differ":
      "Turns and squares contradict each other: the turns are taken. Was the floor the same, the battery as full?",
    "sides-differ": "The squares have different sides, so they are left out: drive them all of one size.",
    "too-few":
      "Some test was made only once, which tells nothing about scatter: make each at least three times.",
  },
});
