import type { TestName } from "../../practice/measurements.ts";

/** How each test is made, for people with a tape measure. */
export const TEST_GUIDES: Readonly<Record<TestName, string>> = {
  straight:
    "Straight: lay a tape along the floor, start with the front at 0, tell the robot to drive 1000 mm, read where the front stops and how far left of the line it is.",
  turn: "Turn: mark where the robot looks, let it make ten quarter turns, and measure which angle is left over.",
  "square-right":
    "Square to the right: four sides, four turns right, back to the start; measure how far ahead and how far left of the start it ends.",
  "square-left":
    "Square to the left: the same with left turns. Only both together tell wheels and gauge apart (Borenstein and Feng 1996).",
  roll: "Roll: give a ball a push on the bare floor, stop the time from your hand to where it rests, measure how far it rolled.",
  push: "Push: let the robot push a ball at a steady speed and stop; measure the gap between pusher and ball in the end.",
  rebound:
    "Rebound: drop the ball beside a ruler on something as hard as your walls, and see how high it comes back.",
};
