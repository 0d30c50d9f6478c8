import type { StepId } from "../steps.ts";

/** One stop of the opening tour: where it is, and what to do there. */
export interface TourStop {
  readonly step: StepId;
  readonly title: string;
  readonly words: string;
}

/** From the example to the team's own zone. */
export const TOUR: readonly TourStop[] = [
  {
    step: "routines",
    title: "Routines are being tried",
    words:
      "For the example, routines are worked out and run hundreds of times, each time with the balls elsewhere. The best stands first; its way is on the drawing.",
  },
  {
    step: "watch",
    title: "Watch one",
    words: "Press Play. Then look at a run that failed: which ball got away, and when?",
  },
  {
    step: "weak",
    title: "See where it fails",
    words: "The map shows from where balls do not get home. Point at it to read it.",
  },
  {
    step: "robot",
    title: "Put in your robot",
    words: "Measure your robot and how far it drifts. All routines are ranked anew while you type.",
  },
  {
    step: "zone",
    title: "Put in your zone",
    words:
      "Drag the walls, the doorway and the wedge until they are like yours. From now on it is your project: it is kept in this browser by itself.",
  },
];

/** The words of this tool, each explained in a sentence. */
export const GLOSSARY: readonly (readonly [string, string])[] = [
  ["Zone", "The walled floor in which the balls lie, seen from above."],
  ["Doorway", "The gap in a wall through which the robot drives in, and through which balls can roll out."],
  ["Wedge", "The low triangle in a corner where every ball has to end up."],
  ["Keep-out", "A solid block on the floor that neither robot nor ball can enter."],
  ["Placement", "One layout of all balls at the start of a run."],
  ["Pusher", "The edges of the robot that are meant to touch balls."],
  [
    "Drift",
    "How the robot’s real way differs from what it was told: partly the same all run long, partly new in every move.",
  ],
  ["Move", "One command: drive, turn, drive to the wall, wait, open or close the arms."],
  ["Routine", "The list of moves that the robot runs."],
  ["Pattern", "A recipe that makes routines, like lanes or rings."],
  [
    "Run",
    "The routine played once on one placement, with its own small errors; it has a number and can be replayed.",
  ],
  [
    "Success rate",
    "How many of 100 runs bring every ball home, and between which two numbers the true share likely lies.",
  ],
  ["Coverage", "The share of places where a ball can lie that the pusher touches without drift."],
  ["Sure coverage", "The share that is touched whatever the drift, within the bounds that are stated."],
  ["Blind spot", "A place that the pusher does not touch."],
  ["Loss", "A ball that did not get home, and why."],
  ["Jam", "A ball held fast between the robot and a wall."],
  ["Squaring up", "Pushing against a wall until the robot stands straight to it."],
];

/** What comes first, before any routine. */
export const CAUTIONS: readonly string[] = [
  "Keep fingers, hair and sleeves away from moving tracks and arms; switch the robot off before you reach into the zone.",
  "Charge batteries only where an adult can see them, on something that does not burn, and never overnight.",
  "The event’s own rules and the venue’s safety rules come first, whatever stands here.",
  "Try a new routine slowly first, with a hand on the switch.",
  "A run that works here is a promise of the model only: practise on the real floor.",
];
