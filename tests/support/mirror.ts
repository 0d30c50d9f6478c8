import type { Project } from "../../src/model/project.ts";
import type { PolygonShape, Robot } from "../../src/model/robot.ts";
import type { Move } from "../../src/model/routine.ts";
import type { Sensor } from "../../src/model/sensor.ts";
import type { Corner, PointMm, RectMm, Wall, Zone } from "../../src/model/zone.ts";

/** Mirror images, left and right exchanged: zone, robot, routine and placement seen in a mirror that stands beside the zone. */

const WALLS: Readonly<Record<Wall, Wall>> = { left: "right", right: "left", bottom: "bottom", top: "top" };
const CORNERS: Readonly<Record<Corner, Corner>> = {
  "lower-left": "lower-right",
  "lower-right": "lower-left",
  "upper-left": "upper-right",
  "upper-right": "upper-left",
};

const across = (zone: Zone, point: PointMm): PointMm => ({ xMm: zone.widthMm - point.xMm, yMm: point.yMm });
const rectAcross = (zone: Zone, rect: RectMm): RectMm => ({
  ...rect,
  xMm: zone.widthMm - rect.xMm - rect.widthMm,
});
const aside = ({ xMm, yMm }: PointMm): PointMm => ({ xMm, yMm: -yMm });

export function mirroredPoints(zone: Zone, points: readonly PointMm[]): PointMm[] {
  return points.map((point) => across(zone, point));
}

function mirroredZone(zone: Zone): Zone {
  const { wall, centreMm } = zone.doorway;
  const upright = wall === "left" || wall === "right";
  return {
    ...zone,
    doorway: { ...zone.doorway, wall: WALLS[wall], centreMm: upright ? centreMm : zone.widthMm - centreMm },
    wedge: { ...zone.wedge, corner: CORNERS[zone.wedge.corner] },
    keepOuts: zone.keepOuts.map((rect) => rectAcross(zone, rect)),
  };
}

/** Turned over, an outline runs clockwise: its order is reversed, and edge i lies between other vertices. */
function mirroredShape(shape: PolygonShape): PolygonShape {
  const n = shape.outline.length;
  return {
    kind: "polygon",
    outline: shape.outline.map(aside).reverse(),
    pusherEdges: shape.pusherEdges.map((edge) => (2 * n - 2 - edge) % n).sort((a, b) => a - b),
  };
}

function mirroredRobot(robot: Robot, zone: Zone): Robot {
  const upright = zone.doorway.wall === "left" || zone.doorway.wall === "right";
  const { shape, ground, entry } = robot;
  return {
    ...robot,
    shape: shape.kind === "polygon" ? mirroredShape(shape) : shape,
    ground:
      ground.kind === "polygon" ? { kind: "polygon", outline: ground.outline.map(aside).reverse() } : ground,
    sensors: robot.sensors.map(mirroredSensor),
    entry: { ...entry, alongMm: upright ? entry.alongMm : -entry.alongMm, headingRad: -entry.headingRad },
  };
}

function mirroredSensor(sensor: Sensor): Sensor {
  if (sensor.kind === "bump" || sensor.kind === "gyro") return sensor;
  const across = { ...sensor, acrossMm: -sensor.acrossMm };
  return across.kind === "floor" ? across : { ...across, headingRad: -across.headingRad };
}

export function mirroredProject(project: Project): Project {
  const { zone, rules } = project;
  const { layout } = rules;
  return {
    ...project,
    zone: mirroredZone(zone),
    robot: mirroredRobot(project.robot, zone),
    rules: {
      ...rules,
      wedgeCorners: rules.wedgeCorners.map((corner) => CORNERS[corner]),
      layout:
        layout.kind === "fixed"
          ? { kind: "fixed", positions: mirroredPoints(zone, layout.positions) }
          : { ...layout, forbidden: layout.forbidden.map((rect) => rectAcross(zone, rect)) },
    },
  };
}

export function mirroredMove(move: Move): Move {
  return move.kind === "turn" || move.kind === "arc" ? { ...move, angleRad: -move.angleRad } : move;
}
