import { discFreeWay, discRow, type Span } from "./keepOut.kernel.ts";
import { EDGE_MM, RUN_UP_MM } from "./meet.kernel.ts";
import { DIRECTIONS } from "./room.ts";
import type { PushSetup } from "./setup.ts";

/** Slower than this along an axis is not at all: directions are exact at right angles. */
const STILL = 1e-12;
/** Kept wide by this much where an exact test follows, mm. */
const WIDE_MM = 1e-3;

/**
 * All pushes in one direction by one contact, row by row: what `meet` tells of one place, here by intervals. Every condition is
 * linear in the ball's place, so that each row has one stretch in which the push is possible, less what keep-outs block of it.
 * Checked against `meet` in tests/unit/plan/push/field.
 */
export class PushLane {
  readonly setup: PushSetup;
  /** 1 for columns of the row last asked for that keep-outs block; read only where there are keep-outs. */
  readonly blocked: Uint8Array;
  /** Stretch of the row last asked for, as columns; empty where from > to. */
  from = 0;
  to = -1;
  /** The same stretch, where it was asked for along a line, mm; empty where low > high. */
  lowX = 0;
  highX = 0;
  /** Rows outside have none. */
  firstRow = 0;
  lastRow = -1;
  d = 0;
  c = 1;
  s = 0;
  /** What has to be taken off a ball's place to get the robot's, and added to get its place in the seat; way until it is there. */
  touchX = 0;
  touchY = 0;
  shiftX = 0;
  shiftY = 0;
  advance = 0;
  /** How much of the way goes square at the wedge's edge. */
  toward = 0;
  /** Way of the ball from its seat until a wall or keep-out stops it, of the push last asked for. */
  ballFree = 0;
  /** The ways ahead of robot and ball along each axis are (stop − place) · per; Infinity where they do not move along it. */
  robotStopX = 0;
  robotStopY = 0;
  ballStopX = 0;
  ballStopY = 0;
  perX = 0;
  perY = 0;
  /** Gap of the robot to the wedge's edge: edgeX·x + edgeY·y − edgeAt, and the way until it is used up: gap · edgePer. */
  edgeAt = 0;
  edgePer = 0;
  /** Least gap at the touch, so that the run-up has room too. */
  private edgeLeast = 0;
  private leastX = 0;
  private mostX = 0;

  constructor(setup: PushSetup) {
    this.setup = setup;
    this.blocked = new Uint8Array(setup.columns);
  }

  /** Takes up direction d and contact k. */
  aim(d: number, k: number): void {
    const { setup } = this;
    const { room, width, height, radius } = setup;
    const contact = setup.contacts[k]!;
    const c = room.cos[d]!;
    const s = room.sin[d]!;
    this.d = d;
    this.c = c;
    this.s = s;
    const touchX = c * contact.touchXMm - s * contact.touchYMm;
    const touchY = s * contact.touchXMm + c * contact.touchYMm;
    const shiftX = c * contact.shiftXMm - s * contact.shiftYMm;
    const shiftY = s * contact.shiftXMm + c * contact.shiftYMm;
    this.touchX = touchX;
    this.touchY = touchY;
    this.shiftX = shiftX;
    this.shiftY = shiftY;
    this.advance = contact.advanceMm;
    this.toward = -(setup.edgeX * c + setup.edgeY * s);
    const goesX = Math.abs(c) > STILL;
    const goesY = Math.abs(s) > STILL;
    this.perX = goesX ? 1 / c : 1;
    this.perY = goesY ? 1 / s : 1;
    const never = Number.POSITIVE_INFINITY;
    this.robotStopX = goesX ? (c > 0 ? room.maxX[d]! : room.minX[d]!) + touchX : never;
    this.robotStopY = goesY ? (s > 0 ? room.maxY[d]! : room.minY[d]!) + touchY : never;
    this.ballStopX = goesX ? (c > 0 ? width - radius : radius) - shiftX : never;
    this.ballStopY = goesY ? (s > 0 ? height - radius : radius) - shiftY : never;
    const rate = room.edgeX * c + room.edgeY * s;
    this.edgeAt = room.edgeLevel[d]! + room.edgeX * touchX + room.edgeY * touchY;
    this.edgePer = rate < 0 ? -1 / rate : never;
    this.edgeLeast = Math.max(0, RUN_UP_MM * rate) - EDGE_MM;
    this.bound(d);
    if (contact.wall !== 0) this.keepToWall(contact.wall);
  }

  /** Rows and columns that the walls alone leave to the ball, the robot and its run-up. */
  private bound(d: number): void {
    const { room, radius, width, height, rows, stepY } = this.setup;
    const { c, s, touchX, touchY, shiftX, shiftY } = this;
    const lowX = Math.max(room.minX[d]! + touchX + Math.max(0, c * RUN_UP_MM), radius - shiftX);
    const highX = Math.min(room.maxX[d]! + touchX + Math.min(0, c * RUN_UP_MM), width - radius - shiftX);
    const lowY = Math.max(room.minY[d]! + touchY + Math.max(0, s * RUN_UP_MM), radius - shiftY);
    const highY = Math.min(room.maxY[d]! + touchY + Math.min(0, s * RUN_UP_MM), height - radius - shiftY);
    this.leastX = lowX - EDGE_MM;
    this.mostX = highX + EDGE_MM;
    this.firstRow = Math.max(0, Math.ceil((lowY - EDGE_MM - radius) / stepY));
    this.lastRow = Math.min(rows - 1, Math.floor((highY + EDGE_MM - radius) / stepY));
  }

  /** A push along a wall needs one beside the ball, on that side of the robot, and not the one with the doorway. */
  private keepToWall(side: number): void {
    const { rows, doorSide, width, radius } = this.setup;
    const toX = -this.s * side;
    const toY = this.c * side;
    const along = this.d % (DIRECTIONS / 4) === 0;
    if (along && toX > 0.5 && doorSide !== "right")
      this.leastX = Math.max(this.leastX, width - radius - EDGE_MM);
    else if (along && toX < -0.5 && doorSide !== "left") this.mostX = Math.min(this.mostX, radius + EDGE_MM);
    else if (along && toY > 0.5 && doorSide !== "top") this.firstRow = Math.max(this.firstRow, rows - 1);
    else if (along && toY < -0.5 && doorSide !== "bottom") this.lastRow = Math.min(this.lastRow, 0);
    else this.lastRow = -1;
  }

  /** The places of a row from which the ball can be met. A ball that has to slide in may still lack the way for it. */
  takeRow(row: number): void {
    const { room, radius, stepY, keepOuts } = this.setup;
    const y = radius + row * stepY;
    this.lowX = this.leastX;
    this.highX = this.mostX;
    this.clip(room.edgeX, room.edgeY * y - this.edgeAt - this.edgeLeast);
    this.from = this.columnAfter(this.lowX);
    this.to = this.columnBefore(this.highX);
    if (keepOuts.length > 0) this.block(y);
  }

  /** The stretch of the line at y from which a push can end with the ball beyond the wedge's edge by `depth`; wide by a hair. */
  takeHomeRow(y: number, depth: number): void {
    const { room, edgeX, edgeY, edgeOffset } = this.setup;
    const { toward } = this;
    // Depth at the seat, as b − edgeX·x; what the push adds to it is `toward` a millimetre.
    const b = edgeOffset - edgeX * this.shiftX - edgeY * (y + this.shiftY) - depth + WIDE_MM;
    this.lowX = this.leastX - WIDE_MM;
    this.highX = this.mostX + WIDE_MM;
    this.clip(room.edgeX, room.edgeY * y - this.edgeAt - this.edgeLeast + WIDE_MM);
    const along = toward * this.perX;
    const robotB = b - toward * this.advance;
    if (this.robotStopX < Number.POSITIVE_INFINITY) {
      this.clip(-edgeX - along, robotB + along * this.robotStopX);
      this.clip(-edgeX - along, b + along * this.ballStopX);
    }
    if (this.robotStopY < Number.POSITIVE_INFINITY) {
      this.clip(-edgeX, robotB + toward * this.perY * (this.robotStopY - y));
      this.clip(-edgeX, b + toward * this.perY * (this.ballStopY - y));
    }
    if (room.edgeLevel[this.d]! > Number.NEGATIVE_INFINITY && this.edgePer < Number.POSITIVE_INFINITY) {
      const perGap = toward * this.edgePer;
      this.clip(-edgeX + perGap * room.edgeX, robotB + perGap * (room.edgeY * y - this.edgeAt));
    }
  }

  /** The places of a row on which the robot itself may stand with its origin, facing direction d. */
  takeRobotRow(d: number, row: number): void {
    const { room, radius, stepY, keepOuts, blocks } = this.setup;
    const y = radius + row * stepY;
    this.from = 0;
    this.to = -1;
    if (y < room.minY[d]! - EDGE_MM || y > room.maxY[d]! + EDGE_MM) return;
    this.lowX = room.minX[d]! - EDGE_MM;
    this.highX = room.maxX[d]! + EDGE_MM;
    this.clip(room.edgeX, room.edgeY * y - room.edgeLevel[d]! + EDGE_MM);
    this.from = this.columnAfter(this.lowX);
    this.to = this.columnBefore(this.highX);
    if (keepOuts.length === 0) return;
    this.blocked.fill(0);
    for (let at = 0; at < keepOuts.length; at += 4) this.blockFrom(blocks.row(d, at / 4, y), 0);
  }

  /** Way of the robot from the touch until something stops it or the ball; −1 where a ball that slides in has none. */
  go(x: number, y: number): number {
    const { setup, touchX, touchY, shiftX, shiftY, perX, perY, advance } = this;
    const { room, keepOuts, radius } = setup;
    let robot = Math.min((this.robotStopX - x) * perX, (this.robotStopY - y) * perY);
    if (this.edgePer < Number.POSITIVE_INFINITY) {
      robot = Math.min(robot, (room.edgeX * x + room.edgeY * y - this.edgeAt) * this.edgePer);
    }
    let ball = Math.min((this.ballStopX - x) * perX, (this.ballStopY - y) * perY);
    robot = Math.max(0, robot);
    if (keepOuts.length > 0) {
      robot = setup.blocks.freeWay(this.d, x - touchX, y - touchY, robot);
      ball = discFreeWay(keepOuts, radius, x + shiftX, y + shiftY, this.c, this.s, ball);
      if (robot < 0 || ball < 0) return -1;
    }
    ball = Math.max(0, ball);
    this.ballFree = ball;
    const travel = Math.min(robot, advance + ball);
    return travel < advance ? -1 : travel;
  }

  /** The first column at x or after it, and the last one before. */
  columnAfter(x: number): number {
    return Math.max(0, Math.ceil((x - this.setup.radius) / this.setup.stepX));
  }

  columnBefore(x: number): number {
    return Math.min(this.setup.columns - 1, Math.floor((x - this.setup.radius) / this.setup.stepX));
  }

  /** Keeps what has a·x + b ≥ 0. */
  private clip(a: number, b: number): void {
    if (a > STILL) this.lowX = Math.max(this.lowX, -b / a);
    else if (a < -STILL) this.highX = Math.min(this.highX, -b / a);
    else if (b < 0) this.highX = Number.NEGATIVE_INFINITY;
  }

  private block(y: number): void {
    const { setup, blocked, c, s } = this;
    const { keepOuts, blocks, radius } = setup;
    blocked.fill(0);
    for (let at = 0; at < keepOuts.length; at += 4) {
      const robotY = y - this.touchY;
      this.blockFrom(blocks.row(this.d, at / 4, robotY), this.touchX);
      this.blockFrom(blocks.row(this.d, at / 4, robotY - s * RUN_UP_MM), this.touchX + c * RUN_UP_MM);
      this.blockFrom(discRow(keepOuts, at, radius, y + this.shiftY), -this.shiftX);
    }
  }

  private blockFrom(span: Span, offset: number): void {
    const { radius, stepX } = this.setup;
    const from = Math.max(this.from, Math.floor((span.low + offset - radius) / stepX) + 1);
    const to = Math.min(this.to, Math.ceil((span.high + offset - radius) / stepX) - 1);
    for (let column = from; column <= to; column++) this.blocked[column] = 1;
  }
}
