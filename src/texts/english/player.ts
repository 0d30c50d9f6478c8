import { topic } from "../language.ts";

/** The player and the run in words. */
export const playerTexts = topic("player", {
  routineRank: (rank: number, count: number) => `Routine ${rank} of ${count}`,
  ownRoutine: "Your own routine",
  pause: "Pause",
  again: "Play again",
  play: "Play",
  player: "Player",
  moveBefore: "Move before",
  moveBeforeKey: "Move before (,)",
  nextMove: "Next move",
  nextMoveKey: "Next move (.)",
  nextTroubleKey: "Next jam or loss (L)",
  nextTrouble: "Next trouble",
  speed: "Speed",
  times: (speed: number) => `${speed} × speed`,
  of: (duration: string) => `of ${duration}`,
  timeInRun: "Time in the run",
  timeOf: (time: string, duration: string) => `${time} of ${duration}`,
  touches: (ball: number) => `The robot touches ball ${ball}`,
  ontoWedge: (ball: number) => `Ball ${ball} comes onto the wedge`,
  offWedge: (ball: number) => `Ball ${ball} leaves the wedge`,
  rolledOut: (ball: number) => `Ball ${ball} rolls out of the doorway`,
  robotJams: "The robot jams",
  ballJams: (ball: number) => `Ball ${ball} jams between robot and wall`,
  stalled: "The robot is stopped by a wall and its tracks slip",
  ends: "The routine ends",
  place: (left: string, up: string) => `${left} from the left, ${up} up`,
  zone: (width: string, height: string) => `Zone ${width} wide and ${height} high, seen from above.`,
  wedge: (corner: string, legX: string, legY: string) =>
    `Wedge in the ${corner} corner, legs ${legX} and ${legY}.`,
  keepOut: (size: string, left: string, up: string) =>
    `Keep-out ${size}, its lower left corner ${left} from the left, ${up} up.`,
  endsAfter: (time: string) => `The run ends after ${time}.`,
  allMovesDone: "All moves are done; the balls come to rest.",
  moveNow: (move: number, moves: number, words: string) => `Move ${move} of ${moves}: ${words}.`,
  ballNow: (ball: number, mark: string, place: string) => `Ball ${ball} ${mark}, ${place}.`,
  robotNow: (place: string) => `Robot ${place}.`,
  allDelivered: (balls: number, last: string) =>
    `All ${balls} ${balls === 1 ? "ball" : "balls"} delivered, the last one after ${last}.`,
  someDelivered: (home: number, balls: number, lost: string) =>
    `${home} of ${balls} ${balls === 1 ? "ball" : "balls"} delivered. ${lost}`,
  walls: {
    left: "left wall",
    right: "right wall",
    bottom: "lower wall",
    top: "upper wall",
  },
  marks: {
    open: "not home yet",
    delivered: "delivered",
    lost: "lost",
  },
  doorwayIn: {
    left: (width: string, middle: string) =>
      `Doorway ${width} wide in the left wall, its middle ${middle} up.`,
    right: (width: string, middle: string) =>
      `Doorway ${width} wide in the right wall, its middle ${middle} up.`,
    bottom: (width: string, middle: string) =>
      `Doorway ${width} wide in the lower wall, its middle ${middle} from the left.`,
    top: (width: string, middle: string) =>
      `Doorway ${width} wide in the upper wall, its middle ${middle} from the left.`,
  },
});
