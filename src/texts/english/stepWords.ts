import { topic } from "../language.ts";

/** Steps for the coder in exact words, and the table they stand in. */
export const stepWordsTexts = topic("stepWords", {
  drive: (isBack: boolean, mm: string, speed: string) =>
    `drive ${isBack ? "backward" : "forward"} ${mm} mm at ${speed} mm/s`,
  turn: (isRight: boolean, deg: string, speed: string) =>
    `turn ${isRight ? "right" : "left"} ${deg} deg at ${speed} deg/s`,
  curve: (isRight: boolean, deg: string, mm: string, isBack: boolean, speed: string) =>
    `curve ${isRight ? "right" : "left"} ${deg} deg over ${mm} mm ${isBack ? "backward" : "forward"} at ${speed} mm/s`,
  toWall: (isBack: boolean, mm: string, overrun: string, speed: string) =>
    `drive ${isBack ? "backward" : "forward"} to the wall ${mm} mm and push on ${overrun} mm at ${speed} mm/s`,
  beside: (way: string, sensor: string, mm: string) =>
    `${way}, keeping distance sensor ${sensor} at ${mm} mm`,
  wait: (seconds: string) => `wait ${seconds} s`,
  openArms: (seconds: string) => `open the arms ${seconds} s`,
  closeArms: (seconds: string) => `close the arms ${seconds} s`,
  scan: (isRight: boolean, deg: string, speed: string, wedge: string) =>
    `look around: turn ${isRight ? "right" : "left"} ${deg} deg at ${speed} deg/s and note every ball (${wedge})`,
  fetch: (speed: string, wedge: string) =>
    `fetch the noted ball that takes least time, at ${speed} mm/s (${wedge})`,
  goTo: (x: string, y: string, deg: string, speed: string, wedge: string) =>
    `go to x ${x} mm, y ${y} mm, facing ${deg} deg, at ${speed} mm/s (${wedge})`,
  wedgeIn: (corner: string) => `wedge ${corner}`,
  wedgeUnknown: "wedge unknown",
  repeat: (times: number) => `repeat at most ${times} times:`,
  repeatUntil: (times: number, question: string) => `repeat at most ${times} times, until ${question}:`,
  when: (question: string) => `if ${question}:`,
  otherwise: "otherwise:",
  heads: {
    step: "step",
    move: "move",
    do: "do",
    left: "left wheel °",
    right: "right wheel °",
  },
});
