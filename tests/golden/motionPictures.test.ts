import { expect, test } from "vitest";
import type { Move } from "../../src/model/routine.ts";
import { type MotionCase, motionPicture } from "../support/motionPicture.ts";
import { PLAIN_ROBOT, sceneProject } from "../support/scene.ts";

/** The pictures beside src/motion/NOTES.md, made anew by `npx vitest run --project golden tests/golden/motionPictures.test.ts -u`. */
const project = sceneProject({ balls: [{ x: 300, y: 300 }] });
/** Long tracks with much grip sideways: the push of one corner cannot turn them. */
const stiff = sceneProject({
  robot: {
    drive: { ...PLAIN_ROBOT.drive, trackContactMm: 200, lateralFrictionCoeff: 1.2, tractionCoeff: 0.3 },
  },
  balls: [{ x: 300, y: 300 }],
});
/** On two wheels the push of a corner turns the robot even at a short lever. */
const wheeled = sceneProject({
  robot: { drive: { ...PLAIN_ROBOT.drive, trackContactMm: 0 } },
  balls: [{ x: 300, y: 300 }],
});
const blocked = sceneProject({
  zone: { keepOuts: [{ xMm: 800, yMm: 620, widthMm: 100, heightMm: 100 }] },
  balls: [{ x: 300, y: 300 }],
});
const toWall = (distanceMm: number, overrunMm: number): Move => ({
  kind: "toWall",
  distanceMm,
  overrunMm,
  speedMmPerS: 100,
});
const drive = (distanceMm: number): Move => ({ kind: "drive", distanceMm, speedMmPerS: 100 });
const at = (xMm: number, yMm: number, headingRad: number) => ({ xMm, yMm, headingRad });

const CASES: Readonly<Record<string, MotionCase>> = {
  flush: {
    title: "Square up: the first corner to touch turns the robot until its face is flush",
    project,
    from: at(800, 500, 0.3),
    moves: [toWall(280, 140)],
  },
  crooked: {
    title:
      "Long stiff tracks: the push of one corner cannot turn them, the robot stalls crooked and reverses off (2)",
    project: stiff,
    from: at(800, 500, 0.2),
    moves: [toWall(280, 120), drive(-200)],
  },
  corner: {
    title:
      "Wedged into a corner: the first wall turns it until the second one holds it too; it reverses off (2)",
    project: wheeled,
    from: at(880, 560, Math.PI / 4 + 0.06),
    moves: [toWall(500, 200), drive(-200)],
  },
  side: {
    title: "At a glancing angle its side is laid along the wall and the robot slides on",
    project,
    from: at(1060, 150, 1.3),
    moves: [drive(560)],
  },
  post: {
    title:
      "A block's corner against the front turns the robot until its tracks turn no further; it reverses off (2)",
    project: blocked,
    from: at(560, 560, 0.05),
    moves: [drive(300), drive(-150)],
  },
  guided: {
    title: "A curve into a wall beside it is guided: the robot keeps its heading",
    project,
    from: at(1110, 200, Math.PI / 2),
    moves: [{ kind: "arc", distanceMm: 400, angleRad: -0.4, speedMmPerS: 100 }],
  },
  turn: {
    title: "A turn on the spot stalls where a corner meets the wall",
    project,
    from: at(1105, 400, Math.PI / 2),
    moves: [{ kind: "turn", angleRad: -Math.PI / 2, rateRadPerS: 1 }],
  },
};

test.each(Object.entries(CASES))("the picture %s shows what the path tracer does", async (name, one) => {
  const picture = motionPicture(one);
  expect(picture).toContain("<polygon");
  await expect(picture).toMatchFileSnapshot(`../../src/motion/pictures/${name}.svg`);
});
