import { topic } from "../language.ts";

/** What the model leaves out. */
export const limitTexts = topic("limit", {
  advice:
    "Trust the order of the routines more than a rate, and a rate more once real practice runs agree with it.",
  spin: {
    leftOut: "Balls do not spin about the upright axis and do not hop.",
    matters: "where a ball goes after a hard or slanted knock; gentle pushes hardly change",
  },
  grip: {
    leftOut: "A ball that rolls on the wedge by itself never begins to slip there for want of grip.",
    matters: "whether a ball stays on a smooth, steep wedge",
  },
  jam: {
    leftOut: "A ball that jams off the robot's middle does not turn the robot.",
    matters: "balls lost as jammed, and the moves after such a jam",
  },
  rub: {
    leftOut: "The robot rubs along walls at no cost, and walls do not give.",
    matters: "routines that lean on walls: their time and where they end",
  },
  posts: {
    leftOut:
      "Beside doorposts and keep-outs the robot is as wide as a string around it: open arms straddle nothing.",
    matters: "ways that pass a keep-out or the doorway closely with arms or a scoop",
  },
  climb: {
    leftOut: "Tracks do not climb the wedge's edge unless the file says so, and the robot never tips.",
    matters: "pushes that end at a wedge with a high edge",
  },
  floor: {
    leftOut: "The floor is level and the same everywhere; walls are straight.",
    matters: "where free balls come to rest: on a slope of half a degree a hard, smooth ball never stops",
  },
  battery: {
    leftOut: "The battery is as full at the end as at the start, and the wheels as clean.",
    matters: "routines close to the time limit, and long blind ones without a square-up",
  },
  drift: {
    leftOut: "Drift stays as described: no wheel sticks, no cable catches, nobody touches anything.",
    matters: "rates near 100 of 100: a real robot also fails for reasons no model knows",
  },
  sensors: {
    leftOut:
      "Sensors read what is nearest within their beam; echoes do not bounce on, and a robot that reads knows the map and every wall of it.",
    matters: "routines that look around: how many balls they make out, above all near walls",
  },
  guesses: {
    leftOut: "Friction, rolling and bounce that nobody measured are guesses within a stated spread.",
    matters: "every rate; the order of the routines less than the rates themselves",
  },
});
