import { topic } from "../language.ts";

/** The glossary and what comes first. */
export const helpTexts = topic("help", {
  word: {
    zone: "Zone",
    doorway: "Doorway",
    wedge: "Wedge",
    keepOut: "Keep-out",
    placement: "Placement",
    pusher: "Pusher",
    drift: "Drift",
    move: "Move",
    routine: "Routine",
    pattern: "Pattern",
    run: "Run",
    rate: "Success rate",
    coverage: "Coverage",
    sure: "Sure coverage",
    blind: "Blind spot",
    loss: "Loss",
    jam: "Jam",
    squaring: "Squaring up",
  },
  meaning: {
    zone: "The walled floor in which the balls lie, seen from above.",
    doorway: "The gap in a wall through which the robot drives in, and through which balls can roll out.",
    wedge: "The low triangle in a corner where every ball has to end up.",
    keepOut: "A solid block on the floor that neither robot nor ball can enter.",
    placement: "One layout of all balls at the start of a run.",
    pusher: "The edges of the robot that are meant to touch balls.",
    drift:
      "How the robot’s real way differs from what it was told: partly the same all run long, partly new in every move.",
    move: "One command: drive, turn, drive to the wall, wait, open or close the arms.",
    routine: "The list of moves that the robot runs.",
    pattern: "A recipe that makes routines, like lanes or rings.",
    run: "The routine played once on one placement, with its own small errors; it has a number and can be replayed.",
    rate: "How many of 100 runs bring every ball home, and between which two numbers the true share likely lies.",
    coverage: "The share of places where a ball can lie that the pusher touches without drift.",
    sure: "The share that is touched whatever the drift, within the bounds that are stated.",
    blind: "A place that the pusher does not touch.",
    loss: "A ball that did not get home, and why.",
    jam: "A ball held fast between the robot and a wall.",
    squaring: "Pushing against a wall until the robot stands straight to it.",
  },
  caution: {
    fingers:
      "Keep fingers, hair and sleeves away from moving tracks and arms; switch the robot off before you reach into the zone.",
    batteries:
      "Charge batteries only where an adult can see them, on something that does not burn, and never overnight.",
    rules: "The event’s own rules and the venue’s safety rules come first, whatever stands here.",
    slowly: "Try a new routine slowly first, with a hand on the switch.",
    practise: "A run that works here is a promise of the model only: practise on the real floor.",
  },
});
