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
});
