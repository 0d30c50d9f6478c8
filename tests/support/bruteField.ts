import { robotOutline } from "../../src/model/outline.ts";
import type { Project } from "../../src/model/project.ts";
import type { PointMm } from "../../src/model/zone.ts";
import { distanceToRect, distanceToWedge } from "../../src/model/zoneFrame.ts";
import type { Contact } from "../../src/plan/push/contacts.ts";
import { RUN_UP_MM } from "../../src/plan/push/meet.kernel.ts";
import type { PushSetup } from "../../src/plan/push/setup.ts";
import { STOP_STEP_MM } from "../../src/plan/push/stops.kernel.ts";

/**
 * The push field the slow way: robot and ball are marched along every push in small steps and their corners looked at one
 * by one, and the chains come from plain value iteration over all states, with no bound, band or order. It shares with the
 * field what the model is (contacts, speeds, costs of letting go), not how it is worked out.
 */
const DIRECTIONS = 72;
const MARCH_MM = 8;
const TINY_MM = 1e-6;

interface Marched {
  readonly travel: number;
  readonly ball: PointMm;
  readonly ballFree: number;
}

export class BruteField {
  readonly seconds: Float64Array;
  private readonly project: Project;
  private readonly setup: PushSetup;
  private readonly outline: readonly PointMm[];
  private readonly ground: readonly PointMm[];
  private readonly places: number;

  constructor(project: Project, setup: PushSetup) {
    this.project = project;
    this.setup = setup;
    const { footprint, ground } = robotOutline(project.robot);
    this.outline = [...footprint, ...ground];
    this.ground = project.robot.climbsWedge || project.zone.wedge.profile === "flat" ? [] : ground;
    this.places = setup.columns * setup.rows;
    this.seconds = new Float64Array(this.places * DIRECTIONS).fill(Number.POSITIVE_INFINITY);
  }

  /** Least seconds per place; 0 on the wedge. */
  solve(): Float64Array {
    for (let gained = true; gained; ) {
      gained = false;
      for (let place = 0; place < this.places; place++) {
        if (this.isHome(this.at(place))) continue;
        for (let d = 0; d < DIRECTIONS; d++) {
          const found = this.bestOf(place, d);
          if (found >= this.seconds[place * DIRECTIONS + d]! - 1e-9) continue;
          this.seconds[place * DIRECTIONS + d] = found;
          gained = true;
        }
      }
    }
    return Float64Array.from({ length: this.places }, (_, place) =>
      this.isHome(this.at(place))
        ? 0
        : Math.min(...this.seconds.subarray(place * DIRECTIONS, (place + 1) * DIRECTIONS)),
    );
  }

  private at(place: number): PointMm {
    const { columns, radius, stepX, stepY } = this.setup;
    return {
      xMm: radius + (place % columns) * stepX,
      yMm: radius + Math.floor(place / columns) * stepY,
    };
  }

  private isHome({ xMm, yMm }: PointMm): boolean {
    return -distanceToWedge(this.project.zone, xMm, yMm) >= this.setup.homeDepth;
  }

  private readonly marches = new Map<string, Marched | null>();

  private bestOf(place: number, d: number): number {
    const { setup } = this;
    let best = Number.POSITIVE_INFINITY;
    let homeFound = false;
    let levelFound = false;
    for (const [k, contact] of setup.contacts.entries()) {
      const key = `${place} ${d} ${k}`;
      if (!this.marches.has(key)) this.marches.set(key, this.march(this.at(place), d, contact));
      const marched = this.marches.get(key);
      if (!marched) continue;
      if (!homeFound) {
        const home = this.homeSeconds(marched, d, contact);
        if (home < Number.POSITIVE_INFINITY) homeFound = true;
        best = Math.min(best, home);
      }
      if (levelFound) continue;
      if (contact.advanceMm === 0) levelFound = true;
      for (const [speed, runOn] of [
        [setup.speed, setup.runOn],
        [setup.slowSpeed, setup.slowRunOn],
      ] as const) {
        best = Math.min(best, this.stopSeconds(marched, d, contact, speed, runOn));
      }
    }
    return best;
  }

  private homeSeconds(marched: Marched, d: number, contact: Contact): number {
    const { setup, project } = this;
    const a = (d * Math.PI) / 36;
    const rolled = marched.travel - contact.advanceMm;
    const x = marched.ball.xMm + rolled * Math.cos(a);
    const y = marched.ball.yMm + rolled * Math.sin(a);
    const depth = -distanceToWedge(project.zone, x, y);
    if (depth < setup.homeDepth) return Number.POSITIVE_INFINITY;
    const further = -distanceToWedge(project.zone, x + Math.cos(a), y + Math.sin(a)) - depth;
    if (further <= 0) return Number.POSITIVE_INFINITY;
    const reached = Math.min(setup.speed, Math.sqrt(2 * setup.accel * marched.travel));
    if (depth < setup.levelDepth && (reached * further) ** 2 < setup.climbSpeed2)
      return Number.POSITIVE_INFINITY;
    const ramp = Math.min(marched.travel, setup.speed ** 2 / (2 * setup.accel));
    return Math.sqrt((2 * ramp) / setup.accel) + (marched.travel - ramp) / setup.speed;
  }

  private stopSeconds(marched: Marched, d: number, contact: Contact, speed: number, runOn: number): number {
    const { setup } = this;
    const a = (d * Math.PI) / 36;
    let best = Number.POSITIVE_INFINITY;
    const first = Math.max(contact.advanceMm, speed ** 2 / setup.accel);
    for (let length = first; length <= marched.travel; length += STOP_STEP_MM) {
      const rolled = length - contact.advanceMm + runOn;
      if (rolled > marched.ballFree) continue;
      const column = Math.round(
        (marched.ball.xMm + rolled * Math.cos(a) - setup.radius) / setup.stepX - 1e-9,
      );
      const row = Math.round((marched.ball.yMm + rolled * Math.sin(a) - setup.radius) / setup.stepY - 1e-9);
      const place = row * setup.columns + column;
      for (let to = 0; to < DIRECTIONS; to++) {
        const off = Math.min(Math.abs(to - d), DIRECTIONS - Math.abs(to - d));
        const on = (this.seconds[place * DIRECTIONS + to] ?? Infinity) + (setup.regrip[off] ?? Infinity);
        best = Math.min(best, length / speed + speed / setup.accel + on);
      }
    }
    return best;
  }

  private march(from: PointMm, d: number, contact: Contact): Marched | null {
    const a = (d * Math.PI) / 36;
    const c = Math.cos(a);
    const s = Math.sin(a);
    const turned = (x: number, y: number): PointMm => ({ xMm: c * x - s * y, yMm: s * x + c * y });
    const touch = turned(contact.touchXMm, contact.touchYMm);
    const shift = turned(contact.shiftXMm, contact.shiftYMm);
    const robot = { xMm: from.xMm - touch.xMm, yMm: from.yMm - touch.yMm };
    const ball = { xMm: from.xMm + shift.xMm, yMm: from.yMm + shift.yMm };
    if (contact.wall !== 0 && !this.wallBeside(from, turned(0, contact.wall))) return null;
    const robotFree = (way: number): boolean => this.robotFits(robot, c, s, way);
    const ballFits = (way: number): boolean => this.ballFits(ball.xMm + way * c, ball.yMm + way * s);
    if (!robotFree(0) || !robotFree(-RUN_UP_MM) || !ballFits(0)) return null;
    const ballFree = farthest(ballFits);
    const travel = Math.min(farthest(robotFree), contact.advanceMm + ballFree);
    return travel < contact.advanceMm ? null : { travel, ball, ballFree };
  }

  private robotFits(from: PointMm, c: number, s: number, way: number): boolean {
    const { zone } = this.project;
    const place = (p: PointMm): PointMm => ({
      xMm: from.xMm + way * c + c * p.xMm - s * p.yMm,
      yMm: from.yMm + way * s + s * p.xMm + c * p.yMm,
    });
    const inside = this.outline.every((p) => {
      const { xMm, yMm } = place(p);
      return (
        xMm > -TINY_MM && yMm > -TINY_MM && xMm < zone.widthMm + TINY_MM && yMm < zone.heightMm + TINY_MM
      );
    });
    return inside && this.ground.every((p) => distanceToWedge(zone, place(p).xMm, place(p).yMm) > -TINY_MM);
  }

  private ballFits(x: number, y: number): boolean {
    const { zone } = this.project;
    const r = this.setup.radius - TINY_MM;
    return (
      x > r &&
      y > r &&
      x < zone.widthMm - r &&
      y < zone.heightMm - r &&
      zone.keepOuts.every((rect) => distanceToRect(rect, x, y) > r)
    );
  }

  private wallBeside(from: PointMm, toward: PointMm): boolean {
    if (Math.max(Math.abs(toward.xMm), Math.abs(toward.yMm)) < 1 - 1e-9) return false;
    const behind = this.ballFits(from.xMm + 0.01 * toward.xMm, from.yMm + 0.01 * toward.yMm);
    const { wall } = this.project.zone.doorway;
    const atDoor =
      (wall === "left" && toward.xMm < -0.5) ||
      (wall === "right" && toward.xMm > 0.5) ||
      (wall === "bottom" && toward.yMm < -0.5) ||
      (wall === "top" && toward.yMm > 0.5);
    return !behind && !atDoor;
  }
}

/** The way up to which a condition that holds at 0 goes on holding: steps, then halving. */
function farthest(holds: (way: number) => boolean): number {
  let low = 0;
  while (holds(low + MARCH_MM)) low += MARCH_MM;
  let high = low + MARCH_MM;
  for (let n = 0; n < 34; n++) {
    const middle = (low + high) / 2;
    if (holds(middle)) low = middle;
    else high = middle;
  }
  return low;
}
