import { topic } from "../language.ts";

/** Moves changed by hand. */
export const editMovesTexts = topic("editMoves", {
  meetsWall: "! it meets a wall here",
  earlier: "Earlier",
  later: "Later",
  double: "Double",
  newAfter: "New move after it",
  takeAway: "Take away",
  newMove: "New move",
  move: "Move",
  way: "Way (backward: −)",
  turnLeft: "Turn left (right: −)",
  pushOn: "Then push on",
  speed: "Speed",
  turning: "Turning, ° in a second",
  howLong: "How long",
  againstOrigin: "Against the routine it came from:",
  againstBefore: "Against what it was before:",
  beingScored: "Being scored anew, on the same placements as all others…",
  itsName: "Its name",
  keepIt: "Keep it and go on with a variant",
  throwAway: "Throw it away",
  itsMoves: "Its moves",
  openOne: "Open one to change it; the ends of its stretch can be dragged on the drawing.",
  kinds: {
    drive: "Drive straight",
    turn: "Turn on the spot",
    arc: "Drive a curve",
    toWall: "Drive to the wall",
    wait: "Wait",
  },
});
