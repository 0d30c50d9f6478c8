import { topic } from "../language.ts";

/** The leaf of Practice for tests with tape measure and stopwatch. */
export const tapeTexts = topic("tape", {
  title: "Measure your robot and ball",
  hint: (guide: string) => `Make each test at least three times, and type each one in. ${guide}`,
  test: "Test",
  add: "Add this test",
  open: "The table, one test a line: change it, or paste one from a spreadsheet",
  table: "Table of tests",
  says: "What your tests say",
  tooFew: "No test was made often enough to tell anything: make each at least three times.",
  likely: (range: string, count: number, meaning: string) =>
    `likely ${range}, from ${count} tests. ${meaning}`,
  use: "Use these in the project",
  changes: (count: number) =>
    `It changes ${count} values. How surely each mean is known stands in for how it differs from day to day: measure on several days to have both in it.`,
  held: "The project holds these values already.",
  used: "Now in the project; Ctrl+Z takes it out again. The routines are ranked anew.",
  guides: {
    straight:
      "Straight: lay a tape along the floor, start with the front at 0, tell the robot to drive 1000 mm, read where the front stops and how far left of the line it is.",
    turn: "Turn: mark where the robot looks, let it make ten quarter turns to the left: 900° commanded. Measure by how much it is off: 29° short is 871° in all, 29° too far is 929°.",
    "square-right":
      "Square to the right: four sides, four turns right, back to the start; measure how far ahead and how far left of the start it ends.",
    "square-left":
      "Square to the left: the same with left turns. Only both together tell wheels and gauge apart (Borenstein and Feng 1996).",
    roll: "Roll: give a ball a push on the bare floor, stop the time from your hand to where it rests, measure how far it rolled.",
    push: "Push: let the robot push a ball at a steady speed and stop; measure the gap between pusher and ball in the end.",
    rebound:
      "Rebound: drop the ball beside a ruler on something as hard as your walls, and see how high it comes back.",
  },
});
