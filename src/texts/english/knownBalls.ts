import { topic } from "../language.ts";

/** The best way home for balls whose places are known, on the page. */
export const knownBallsTexts = topic("knownBalls", {
  title: "If the robot knew where they lie",
  about: "this is worth knowing",
  why: "No blind routine can do better than a robot that sees every ball. Drag the balls and see which is fetched first, from which side, and how long it takes.",
  show: "Show the best way",
  hide: "Back to the routine",
  working: "Looking for the best way …",
  one: (ball: string, seconds: string) => `Ball ${ball}: home after ${seconds} s`,
  together: (balls: string, seconds: string) => `Balls ${balls} together: home after ${seconds} s`,
  moves: (from: number, to: number) => (from === to ? `move ${from}` : `moves ${from} to ${to}`),
  none: "No way brings a ball home from here that keeps it.",
  leftOut: (ball: number) => `Ball ${ball}: no way that keeps it, or no time.`,
  still: (home: number, of: number) => `Without drift ${home} of ${of} balls are home in the end.`,
  drifting: (home: number, of: number) => `With the drift of this run: ${home} of ${of}.`,
  exact: "No other order, grouping or side of these building blocks is quicker.",
  cut: "There are too many orders to look at all: a quicker one may exist.",
  watch: "Watch it",
  shade: "Shade how long pushing a ball home takes from every place",
  drag: "At the start the balls can be dragged on the drawing; the way changes at once.",
});
