import { inertiaFactor } from "../model/ball.ts";
import { GRAVITY_MM_PER_S2 } from "../model/units.ts";
import {
  ballBounce,
  ballFriction,
  bx,
  by,
  decelOf,
  halt,
  inertia,
  inHand,
  mass,
  radius,
  robotBounce,
  robotFriction,
  rollCoeff,
  rollDecel,
  slideDecel,
  wallBounce,
  wallFriction,
} from "./balls.kernel.ts";
import { clearContacts } from "./contact.kernel.ts";
import { inJam } from "./jam.kernel.ts";
import type { TrialPlan } from "./plan.ts";
import { loadShape } from "./robot.kernel.ts";
import { drawSpread, SPREAD_FACTORS } from "./spread.ts";
import { settings } from "./stepLength.kernel.ts";
import { awake, useBalls } from "./wake.kernel.ts";
import { loadWalls } from "./walls.kernel.ts";
import { depthOf, edgeDepth, lean, leanAt, lipBlocks, onWedge, wedge } from "./wedge.kernel.ts";

/** Puts a plan's constants, and then a trial's balls, into the one world of this worker. */

const DEFAULT_CONTACT_STEP_S = settings.contactStepS;
const DEFAULT_RIDE_STEP_S = settings.rideStepS;
const drawn = new Float64Array(SPREAD_FACTORS.length);

let loaded: TrialPlan | null = null;

export function loadPlan(plan: TrialPlan): void {
  if (loaded === plan) return;
  loaded = plan;
  const { zone, rules } = plan.project;
  loadShape(plan.outline);
  loadWalls(zone);
  const { legXMm: a, legYMm: b, profile, lipMm, riseMm, runMm } = zone.wedge;
  const depth = (a * b) / Math.sqrt(a * a + b * b);
  const flat = profile === "flat";
  wedge.lip = flat ? 0 : lipMm;
  wedge.run = flat ? 0 : profile === "shelf" ? runMm : depth;
  wedge.slope = flat || wedge.run === 0 ? 0 : (riseMm - lipMm) / wedge.run;
  wedge.lean = Math.abs(wedge.slope) > 1 ? 1 : 1 / Math.sqrt(1 + wedge.slope * wedge.slope);
  wedge.raised = !flat && (wedge.lip > 0 || wedge.slope !== 0);
  wedge.wholly = rules.delivered === "wholly";
  settings.contactStepS = plan.contactStepS ?? DEFAULT_CONTACT_STEP_S;
  settings.rideStepS = Math.max(
    settings.contactStepS,
    plan.contactStepS === null ? DEFAULT_RIDE_STEP_S : 3 * plan.contactStepS,
  );
  useBalls(plan.kinds.length);
}

/** Lays the balls of one trial and gives them the trial's friction, rolling resistance and restitution. */
export function loadBalls(
  plan: TrialPlan,
  seed: number,
  trial: number,
  placement: readonly { xMm: number; yMm: number }[],
): void {
  const { spread, zone, robot } = plan.project;
  drawSpread(seed, trial, drawn);
  const on = plan.spread ? 1 : 0;
  const faces = 1 + on * spread.frictionFrac * drawn[0]!;
  const floor = 1 + on * spread.frictionFrac * drawn[1]!;
  const roll = 1 + on * spread.rollingResistanceFrac * drawn[2]!;
  const bounce = on * spread.restitution * drawn[3]!;
  // Nothing of the trial before may be left: a trial is a function of plan, seed and index alone.
  clearContacts(plan.kinds.length);
  const pushN = robot.drive.tractionCoeff * robot.massKg * GRAVITY_MM_PER_S2;
  for (let i = 0; i < plan.kinds.length; i++) {
    const kind = plan.kinds[i]!;
    radius[i] = kind.diameterMm / 2;
    mass[i] = kind.massKg;
    inertia[i] = inertiaFactor(kind);
    const grip = kind.floorFrictionCoeff * floor;
    // A floor brakes no ball harder than it grips.
    rollCoeff[i] = Math.min(kind.rollingResistance * roll, grip);
    rollDecel[i] = decelOf(rollCoeff[i]!);
    slideDecel[i] = decelOf(grip);
    robotBounce[i] = within(Math.min(kind.restitution, robot.surface.restitution) + bounce);
    wallBounce[i] = within(Math.min(kind.restitution, zone.walls.restitution) + bounce);
    ballBounce[i] = within(kind.restitution + bounce);
    robotFriction[i] = Math.sqrt(kind.frictionCoeff * robot.surface.frictionCoeff) * faces;
    wallFriction[i] = Math.sqrt(kind.frictionCoeff * zone.walls.frictionCoeff) * faces;
    ballFriction[i] = kind.frictionCoeff * faces;
    const at = placement[i]!;
    bx[i] = at.xMm;
    by[i] = at.yMm;
    halt(i);
    awake[i] = inHand[i] = inJam[i] = 0;
    setEdge(i, pushN);
    onWedge[i] = depthOf(i) >= edgeDepth[i]! ? 1 : 0;
    lean[i] = leanAt(i, depthOf(i));
  }
}

function within(restitution: number): number {
  return restitution < 0 ? 0 : restitution > 1 ? 1 : restitution;
}

/** Where ball i meets the lip, and whether the drive can push it over: F = m·g·√(2rh − h²)/(r − h). */
function setEdge(i: number, pushN: number): void {
  const h = wedge.lip;
  const r = radius[i]!;
  edgeDepth[i] = h === 0 ? 0 : h >= r ? -r : -Math.sqrt(2 * r * h - h * h);
  const force = h >= r ? Number.POSITIVE_INFINITY : (mass[i]! * GRAVITY_MM_PER_S2 * -edgeDepth[i]!) / (r - h);
  lipBlocks[i] = h > 0 && force > pushN ? 1 : 0;
}
