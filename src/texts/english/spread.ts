import { topic } from "../language.ts";

/** What moves a rate beside chance. */
export const spreadTexts = topic("spread", {
  sampling: (points: string) =>
    `By the number of runs alone it may move by ±${points} of 100; more runs make that smaller.`,
  hardly: "Friction, rolling and bounce as far as they are unknown hardly move this rate.",
  most: (factor: string, change: string) =>
    ` Most: ${factor}, ${change} from the low to the high end of its range.`,
  unmeasured: (points: string, most: string) =>
    `What nobody measured (friction, rolling, bounce) may move it by ±${points} of 100; more runs do not help there, measuring does.${most}`,
  factors: {
    faceFriction: "friction at walls and pusher",
    floorFriction: "grip of a sliding ball on the floor",
    rollingResistance: "rolling resistance",
    restitution: "bounce",
  },
});
