import { counterClockwise } from "../model/outline.ts";
import type { Project } from "../model/project.ts";
import type { Drift, Entry, GroundOutline, Robot, RobotShape } from "../model/robot.ts";
import type { Layout } from "../model/rules.ts";
import type { Sensor } from "../model/sensor.ts";
import type { Corner, PointMm, RectMm, Wall, Zone } from "../model/zone.ts";

/**
 * The two reflections every other one is made of: left ↔ right, and across the diagonal x = y. Each turns the
 * handedness round: the robot's left becomes its right, left turns become right turns.
 */
interface Reflection {
  readonly wall: Readonly<Record<Wall, Wall>>;
  readonly corner: Readonly<Record<Corner, Corner>>;
  readonly swapsAxes: boolean;
  /** Walls along which a growing coordinate becomes a shrinking one. */
  readonly reversed: readonly Wall[];
  readonly point: (p: PointMm, zone: Zone) => PointMm;
  readonly rect: (r: RectMm, zone: Zone) => RectMm;
}

const LEFT_RIGHT: Reflection = {
  wall: { left: "right", right: "left", bottom: "bottom", top: "top" },
  corner: {
    "lower-left": "lower-right",
    "lower-right": "lower-left",
    "upper-left": "upper-right",
    "upper-right": "upper-left",
  },
  swapsAxes: false,
  reversed: ["bottom", "top"],
  point: (p, zone) => ({ xMm: zone.widthMm - p.xMm, yMm: p.yMm }),
  rect: (r, zone) => ({ ...r, xMm: zone.widthMm - r.xMm - r.widthMm }),
};

const DIAGONAL: Reflection = {
  wall: { left: "bottom", bottom: "left", right: "top", top: "right" },
  corner: {
    "lower-left": "lower-left",
    "upper-right": "upper-right",
    "lower-right": "upper-left",
    "upper-left": "lower-right",
  },
  swapsAxes: true,
  reversed: [],
  point: (p) => ({ xMm: p.yMm, yMm: p.xMm }),
  rect: (r) => ({ xMm: r.yMm, yMm: r.xMm, widthMm: r.heightMm, heightMm: r.widthMm }),
};

/** The project seen in a mirror that swaps left and right; its own inverse up to rounding. */
export function mirroredProject(project: Project): Project {
  return reflected(project, LEFT_RIGHT);
}

/** The project with x and y swapped; its own inverse. */
export function transposedProject(project: Project): Project {
  return reflected(project, DIAGONAL);
}

function reflected(project: Project, how: Reflection): Project {
  const { zone } = project;
  return {
    ...project,
    zone: reflectedZone(zone, how),
    rules: {
      ...project.rules,
      layout: reflectedLayout(project.rules.layout, zone, how),
      wedgeCorners: project.rules.wedgeCorners.map((corner) => how.corner[corner]),
    },
    robot: reflectedRobot(project.robot, how.reversed.includes(zone.doorway.wall)),
  };
}

function reflectedZone(zone: Zone, how: Reflection): Zone {
  const { doorway, wedge } = zone;
  const length = doorway.wall === "left" || doorway.wall === "right" ? zone.heightMm : zone.widthMm;
  return {
    ...zone,
    widthMm: how.swapsAxes ? zone.heightMm : zone.widthMm,
    heightMm: how.swapsAxes ? zone.widthMm : zone.heightMm,
    doorway: {
      ...doorway,
      wall: how.wall[doorway.wall],
      centreMm: how.reversed.includes(doorway.wall) ? length - doorway.centreMm : doorway.centreMm,
    },
    wedge: {
      ...wedge,
      corner: how.corner[wedge.corner],
      legXMm: how.swapsAxes ? wedge.legYMm : wedge.legXMm,
      legYMm: how.swapsAxes ? wedge.legXMm : wedge.legYMm,
    },
    keepOuts: zone.keepOuts.map((rect) => how.rect(rect, zone)),
  };
}

function reflectedLayout(layout: Layout, zone: Zone, how: Reflection): Layout {
  switch (layout.kind) {
    case "random":
      return { ...layout, forbidden: layout.forbidden.map((rect) => how.rect(rect, zone)) };
    case "fixed":
      return { ...layout, positions: layout.positions.map((point) => how.point(point, zone)) };
    default:
      return layout satisfies never;
  }
}

function reflectedRobot(robot: Robot, alongReversed: boolean): Robot {
  return {
    ...robot,
    shape: reflectedShape(robot.shape),
    ground: reflectedGround(robot.ground),
    drift: reflectedDrift(robot.drift),
    entry: reflectedEntry(robot.entry, alongReversed),
    sensors: robot.sensors.map(reflectedSensor),
  };
}

function reflectedShape(shape: RobotShape): RobotShape {
  if (shape.kind !== "polygon") return shape;
  return counterClockwise({ ...shape, outline: shape.outline.map(leftRight) });
}

function reflectedGround(ground: GroundOutline): GroundOutline {
  if (ground.kind === "body") return ground;
  return { kind: "polygon", outline: ground.outline.map(leftRight).reverse() };
}

function reflectedDrift(drift: Drift): Drift {
  const { systematic } = drift;
  return {
    ...drift,
    systematic: { ...systematic, curvatureMeanRadPerMm: 0 - systematic.curvatureMeanRadPerMm },
  };
}

function reflectedEntry(entry: Entry, alongReversed: boolean): Entry {
  return {
    ...entry,
    alongMm: alongReversed ? 0 - entry.alongMm : entry.alongMm,
    headingRad: 0 - entry.headingRad,
  };
}

function reflectedSensor(sensor: Sensor): Sensor {
  switch (sensor.kind) {
    case "bump":
    case "gyro":
      return sensor;
    case "floor":
      return { ...sensor, acrossMm: 0 - sensor.acrossMm };
    case "distance":
    case "barrier":
      return { ...sensor, acrossMm: 0 - sensor.acrossMm, headingRad: 0 - sensor.headingRad };
    default:
      return sensor satisfies never;
  }
}

/** In the robot frame a reflection swaps left and right, whatever it does to the zone. */
function leftRight(p: PointMm): PointMm {
  return { xMm: p.xMm, yMm: 0 - p.yMm };
}
