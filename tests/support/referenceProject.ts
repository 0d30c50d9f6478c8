import type { BallKind } from "../../src/model/ball.ts";
import type { Project } from "../../src/model/project.ts";
import type { Robot } from "../../src/model/robot.ts";
import { frictionless } from "./frictionless.ts";
import { PLAIN_BALL, PLAIN_ROBOT, sceneProject } from "./scene.ts";

/**
 * What the engine and planck play against each other: three light balls in a zone of 1200 × 900 mm, an arm robot that
 * drifts a good deal. Its own values, so that no change of a shipped field turns the comparison into another one.
 */
export function referenceProject(): Project {
  const scene = sceneProject({
    zone: {
      walls: { restitution: 0.6, frictionCoeff: 0 },
      doorway: { wall: "bottom", centreMm: 160, widthMm: 250 },
    },
    robot: ROBOT,
    balls: [],
  });
  return frictionless({
    ...scene,
    balls: [{ kind: BALL, count: 3, points: 1 }],
    rules: {
      ...scene.rules,
      layout: {
        kind: "random",
        wallMarginMm: 10,
        spacingMm: 20,
        wedgeMarginMm: 20,
        robotMarginMm: 20,
        forbidden: [],
      },
    },
  });
}

const BALL: BallKind = {
  ...PLAIN_BALL,
  rollingResistance: 0.02,
  restitution: 0.9,
  floorFrictionCoeff: 0.25,
};

const ROBOT: Robot = {
  ...PLAIN_ROBOT,
  shape: {
    kind: "arms",
    bodyLengthMm: 170,
    bodyWidthMm: 150,
    axleFromRearMm: 75,
    armLengthMm: 90,
    armThicknessMm: 6,
    armAngleRad: 0.175,
  },
  surface: { restitution: 0.4, frictionCoeff: 0 },
  drive: { ...PLAIN_ROBOT.drive, topSpeedMmPerS: 250, accelMmPerS2: 500, turnRateRadPerS: 2.1 },
  drift: {
    systematic: {
      distanceScaleMean: 0,
      distanceScaleSd: 0.01,
      turnScaleMean: 0,
      turnScaleSd: 0.015,
      curvatureMeanRadPerMm: 0,
      curvatureSdRadPerMm: 9e-6,
    },
    random: { distanceSdFrac: 0.005, turnSdFrac: 0.005, turnSdRad: 0.009, curvatureSdRadPerMm: 5e-6 },
    start: { positionSdMm: 5, headingSdRad: 0.0175 },
  },
  entry: { alongMm: 0, insetMm: 85, headingRad: 0 },
};
