import { type BallKind, inertiaFactor } from "../../model/ball.ts";
import { robotOutline } from "../../model/outline.ts";
import { ballsOf, type Project } from "../../model/project.ts";
import { GRAVITY_MM_PER_S2 } from "../../model/units.ts";
import type { Wall, Zone } from "../../model/zone.ts";
import { turnAccelRadPerS2 } from "../../motion/duration.ts";
import { wedgeEdge } from "../../motion/obstacles.ts";
import { brakingSpeed, type Carry, carryOf, curveRate, runOnMm, turnsOnSpot } from "../carry.ts";
import { reachOf } from "../reach.ts";
import { regripTimes } from "./changeTime.ts";
import { type Contact, contactsOf, wallContactsOf } from "./contacts.ts";
import { HullBlocks } from "./keepOut.kernel.ts";
import { profileOf } from "./profile.ts";
import { type Room, roomOf } from "./room.ts";

/** Widest gap between two places of a ball in the field, mm. */
export const CELL_MM = 10;

/** Everything the field's kernel reads: plain numbers and flat arrays. */
export interface PushSetup {
  readonly kind: BallKind;
  readonly radius: number;
  readonly width: number;
  readonly height: number;
  /** Places of the ball's centre: columns × rows from (radius, radius) to (width − radius, height − radius), walls included. */
  readonly columns: number;
  readonly rows: number;
  readonly stepX: number;
  readonly stepY: number;
  readonly room: Room;
  readonly contacts: readonly Contact[];
  /** Four numbers a keep-out: minX, minY, maxX, maxY. */
  readonly keepOuts: Float64Array;
  /** What they leave the robot. */
  readonly blocks: HullBlocks;
  readonly speed: number;
  readonly accel: number;
  /** The slower speed for pushes that end on the floor, and how far a ball runs on from each. */
  readonly slowSpeed: number;
  readonly runOn: number;
  readonly slowRunOn: number;
  /** Deceleration of the rolling ball, mm/s². */
  readonly ballDecel: number;
  /** Seconds to let go of a ball and take it from another side, by steps of direction. */
  readonly regrip: Float64Array;
  readonly carry: Carry;
  /** Index of the contact in which a ball is carried through turns; −1: this robot cannot. */
  readonly carryContact: number;
  readonly carryTurnRate: number;
  /** Acceleration of turns on the spot, rad/s². */
  readonly turnAccel: number;
  /** Depth beyond the wedge's edge at which a ball counts as home, and where it stays by itself. */
  readonly homeDepth: number;
  readonly levelDepth: number;
  /** Speed² along the depth that takes a ball from the lip up to the level part, (mm/s)². */
  readonly climbSpeed2: number;
  /** The wall with the doorway: no ball is pushed along it. */
  readonly doorSide: Wall;
  readonly edgeX: number;
  readonly edgeY: number;
  readonly edgeOffset: number;
}

/** The ball the field is made for: the largest, which fits where all others do not. */
export function fieldBall(project: Project): BallKind {
  const [first, ...others] = ballsOf(project);
  if (first === undefined)
    throw new RangeError("a project without balls has no push field: at least one ball");
  return others.reduce((best, kind) => (kind.diameterMm > best.diameterMm ? kind : best), first);
}

/** @param clearanceMm gap the robot keeps to walls */
export function pushSetup(project: Project, kind: BallKind, clearanceMm: number): PushSetup {
  const { zone, robot, settings } = project;
  const radius = kind.diameterMm / 2;
  const profile = profileOf(robotOutline(robot).footprint, radius);
  const wallGrip = Math.sqrt(kind.frictionCoeff * zone.walls.frictionCoeff);
  const robotGrip = Math.sqrt(kind.frictionCoeff * robot.surface.frictionCoeff);
  const contacts = [...contactsOf(profile), ...wallContactsOf(profile, Math.min(wallGrip, robotGrip))];
  const carry = carryOf(reachOf(robot), robot.drive, [kind]);
  const speed = robot.drive.topSpeedMmPerS * Math.max(...settings.speedFracs);
  const slowSpeed = carry.holds ? Math.min(speed, brakingSpeed(carry)) : SLOW_SHARE * speed;
  const spanX = zone.widthMm - 2 * radius;
  const spanY = zone.heightMm - 2 * radius;
  const columns = Math.ceil(spanX / CELL_MM - 1e-9) + 1;
  const rows = Math.ceil(spanY / CELL_MM - 1e-9) + 1;
  const edge = wedgeEdge(zone);
  const room = roomOf(project, clearanceMm);
  const keepOuts = rectsOf(zone);
  return {
    kind,
    radius,
    width: zone.widthMm,
    height: zone.heightMm,
    columns,
    rows,
    stepX: spanX / (columns - 1),
    stepY: spanY / (rows - 1),
    room,
    contacts,
    keepOuts,
    blocks: new HullBlocks(room, keepOuts),
    speed,
    accel: robot.drive.accelMmPerS2,
    slowSpeed,
    runOn: runOnMm(carry, speed),
    slowRunOn: runOnMm(carry, slowSpeed),
    ballDecel: carry.ballDecelMmPerS2,
    regrip: regripTimes(project, radius, speed),
    carry,
    carryContact: turnsOnSpot(carry) ? deepest(contacts) : -1,
    carryTurnRate: Math.min(robot.drive.turnRateRadPerS, carry.holds ? curveRate(carry, 0) : 0),
    turnAccel: turnAccelRadPerS2(robot.drive),
    ...wedgeDepths(project, kind),
    doorSide: zone.doorway.wall,
    edgeX: edge.nx,
    edgeY: edge.ny,
    edgeOffset: edge.offset,
  };
}

function rectsOf({ keepOuts }: Zone): Float64Array {
  return Float64Array.from(
    keepOuts.flatMap(({ xMm, yMm, widthMm, heightMm }) => [xMm, yMm, xMm + widthMm, yMm + heightMm]),
  );
}

/** Share of the top speed for a slow push by a pusher that holds nothing. */
const SLOW_SHARE = 0.4;

function deepest(contacts: readonly Contact[]): number {
  let best = -1;
  contacts.forEach((contact, i) => {
    const other = contacts[best];
    if (contact.advanceMm > 0 || contact.wall !== 0) return;
    if (other === undefined || contact.depthMm > other.depthMm + 1e-9) best = i;
  });
  return best;
}

/**
 * Where on the wedge a pushed ball stays. Flat and tray: once over the edge. Shelf: where it is level; before that it must
 * still have the speed to climb there, ½(1+k)v² = g·height (references P4). Ramp: as deep as the rule asks; what rolls back
 * from it later is the trial's to tell.
 */
function wedgeDepths(
  project: Project,
  kind: BallKind,
): Pick<PushSetup, "homeDepth" | "levelDepth" | "climbSpeed2"> {
  const { wedge } = project.zone;
  const radius = kind.diameterMm / 2;
  const homeDepth = project.rules.delivered === "wholly" ? radius : 0;
  if (wedge.profile !== "shelf") return { homeDepth, levelDepth: homeDepth, climbSpeed2: 0 };
  const climb = Math.max(0, wedge.riseMm - wedge.lipMm);
  return {
    homeDepth,
    levelDepth: Math.max(homeDepth, wedge.runMm),
    climbSpeed2: (2 * GRAVITY_MM_PER_S2 * climb) / (1 + inertiaFactor(kind)),
  };
}
