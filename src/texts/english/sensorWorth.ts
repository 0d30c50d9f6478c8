import { topic } from "../language.ts";

/** What each sensor would be worth, on the page. */
export const sensorWorthTexts = topic("sensorWorth", {
  title: "What a sensor is worth",
  about: "rows can be compared",
  why: "Every row runs on the same placements with the same luck, with the routine that did best for it in other runs. “Everything known” is the upper bound: no sensor can be worth more.",
  hint: "Would the robot bring more balls home if it could see them, feel them, or steer by a gyro?",
  ask: "Try every sensor",
  again: "Try every sensor again",
  working: "Trying sensors",
  stop: "Stop trying",
  stopped: "Stopped; there is nothing to compare yet.",
  fault: (words: string) => `This did not work: ${words}`,
  done: "All sensors tried.",
  own: "The robot’s own sensors, one at a time and together.",
  usual: "The robot has no sensor: these are usual ones, where such robots carry them.",
  has: "The robot has, and runs",
  home: "Every ball home",
  gain: "Against no sensor",
  ballsOf: (mean: string, of: number) => `${mean} of ${of} balls`,
});
