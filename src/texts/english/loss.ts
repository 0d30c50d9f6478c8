import { topic } from "../language.ts";

/** Why a ball was lost. */
export const lossTexts = topic("loss", {
  ended: {
    "rolled-out": "rolled out of the doorway",
    "out-of-time": "was not home when time ran out",
    "left-wedge": "was on the wedge but left it again",
    jammed: "jammed between robot and wall",
    "left-pusher": "was touched but slipped off the pusher",
    "never-touched": "was never touched",
  },
  title: {
    "rolled-out": "rolled out of the doorway",
    "out-of-time": "out of time",
    "left-wedge": "left the wedge again",
    jammed: "jammed against a wall",
    "left-pusher": "slipped off the pusher",
    "never-touched": "never touched",
  },
  clause: {
    "rolled-out": (balls: string, many: boolean) =>
      `${many ? "balls" : "ball"} ${balls} rolled out of the doorway`,
    "out-of-time": (balls: string, many: boolean) =>
      `${many ? "balls" : "ball"} ${balls} ${many ? "were" : "was"} not home when time ran out`,
    "left-wedge": (balls: string, many: boolean) =>
      `${many ? "balls" : "ball"} ${balls} ${many ? "were" : "was"} on the wedge but left it again`,
    jammed: (balls: string, many: boolean) =>
      `${many ? "balls" : "ball"} ${balls} jammed between robot and wall`,
    "left-pusher": (balls: string, many: boolean) =>
      `${many ? "balls" : "ball"} ${balls} ${many ? "were" : "was"} touched but slipped off the pusher`,
    "never-touched": (balls: string, many: boolean) =>
      `${many ? "balls" : "ball"} ${balls} ${many ? "were" : "was"} never touched`,
  },
});
