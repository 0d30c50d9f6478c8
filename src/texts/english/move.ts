import { topic } from "../language.ts";

/** Moves and the lines of a program. */
export const moveTexts = topic("move", {
  drive: (isBack: boolean, length: string) => `${isBack ? "back up" : "drive"} ${length}`,
  turn: (isRight: boolean, angle: string) => `turn ${isRight ? "right" : "left"} ${angle} on the spot`,
  arc: (isRight: boolean, angle: string, length: string, isBack: boolean) =>
    `curve ${isRight ? "right" : "left"} ${angle} over ${length}${isBack ? ", backward" : ""}`,
  toWall: (isBack: boolean, length: string, overrun: string) =>
    `${isBack ? "back up" : "drive"} to the wall: ${length}, then push on ${overrun}`,
  beside: (way: string, sensor: number, distance: string) =>
    `${way}, keeping distance sensor ${sensor} at ${distance}`,
  wait: (seconds: string) => `wait ${seconds} s`,
  arms: (isOpening: boolean, seconds: string) => `${isOpening ? "open" : "close"} the arms: ${seconds} s`,
  scan: (isRight: boolean, angle: string) =>
    `look around: turn ${isRight ? "right" : "left"} ${angle} and note every ball`,
  fetch: (corner: string) => `fetch the noted ball that takes least time and push it home (corner ${corner})`,
  goTo: (x: string, y: string, heading: string) => `drive to x ${x}, y ${y}, facing ${heading}`,
  repeat: (times: number) => `repeat, at most ${times} times`,
  repeatUntil: (times: number, question: string) => `repeat, at most ${times} times, until ${question}`,
  when: (question: string) => `if ${question}`,
  otherwise: "otherwise",
  corners: {
    "lower-left": "lower left",
    "lower-right": "lower right",
    "upper-left": "upper left",
    "upper-right": "upper right",
  },
  asked: {
    seen: "a ball is noted",
    notSeen: "no ball is noted",
    holding: "a ball is in the pusher",
    notHolding: "no ball is in the pusher",
    overWedge: "the floor below is the wedge",
    notOverWedge: "the floor below is plain",
    bumpedFront: "the front has run into something",
    notBumpedFront: "the front has run into nothing",
    bumpedBack: "the back has run into something",
    notBumpedBack: "the back has run into nothing",
    nearer: (sensor: number, distance: string) => `distance sensor ${sensor} reads less than ${distance}`,
    notNearer: (sensor: number, distance: string) => `distance sensor ${sensor} reads ${distance} or more`,
    shortOfTime: (seconds: string) => `less than ${seconds} s are left`,
    notShortOfTime: (seconds: string) => `${seconds} s or more are left`,
  },
});
