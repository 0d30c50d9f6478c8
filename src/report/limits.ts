/** Something the model does not do, and which results depend on it. */
export interface Limit {
  readonly leftOut: string;
  /** What to trust less because of it. */
  readonly matters: string;
}

/** Everything known to be left out; the README prints the same list. */
export const LIMITS: readonly Limit[] = [
  {
    leftOut: "Balls do not spin about the upright axis and do not hop.",
    matters: "where a ball goes after a hard or slanted knock; gentle pushes hardly change",
  },
  {
    leftOut: "A ball on the wedge always rolls; it never slips there for want of grip.",
    matters: "whether a ball stays on a smooth, steep wedge",
  },
  {
    leftOut: "A ball that jams off the robot's middle does not turn the robot.",
    matters: "balls lost as jammed, and the moves after such a jam",
  },
  {
    leftOut: "The robot rubs along walls at no cost, and walls do not give.",
    matters: "routines that lean on walls: their time and where they end",
  },
  {
    leftOut: "Tracks do not climb the wedge's edge unless the file says so, and the robot never tips.",
    matters: "pushes that end at a wedge with a high edge",
  },
  {
    leftOut: "The floor is level and the same everywhere; walls are straight.",
    matters: "where free balls come to rest: on a slope of half a degree a hard, smooth ball never stops",
  },
  {
    leftOut: "The battery is as full at the end as at the start, and the wheels as clean.",
    matters: "routines close to the time limit, and long blind ones without a square-up",
  },
  {
    leftOut: "Drift stays as described: no wheel sticks, no cable catches, nobody touches anything.",
    matters: "rates near 100 of 100: a real robot also fails for reasons no model knows",
  },
  {
    leftOut:
      "Sensors read what is nearest within their beam; echoes do not bounce on, and a robot that reads knows the map and every wall of it.",
    matters: "routines that look around: how many balls they make out, above all near walls",
  },
  {
    leftOut: "Friction, rolling and bounce that nobody measured are guesses within a stated spread.",
    matters: "every rate; the order of the routines less than the rates themselves",
  },
];

/** How to read the results in spite of it. */
export const LIMITS_ADVICE =
  "Trust the order of the routines more than a rate, and a rate more once real practice runs agree with it.";
