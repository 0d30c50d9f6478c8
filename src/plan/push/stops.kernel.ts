import type { PushLane } from "./lane.kernel.ts";
import type { PushSetup } from "./setup.ts";

/** Ways of a push that ends on the floor are tried at this step, mm. */
export const STOP_STEP_MM = 30;
/** Where a push toward the wedge takes no longer a millimetre than the way home gets shorter, any length may do, s/mm. */
const FLAT_S_PER_MM = 1e-9;

/**
 * Where pushes of one direction, contact and speed may stop. All places are one grid, so that a push of a given length moves
 * every ball by the same number of columns and rows, and the robot as well: the table is the same for all places.
 */
export class Stops {
  readonly speed: number;
  /** How far a ball runs on from the speed, mm, and seconds that both ramps take longer than the way at full speed. */
  readonly runOn: number;
  readonly ramps: number;
  /** From the push's end to where the ball comes to lie, as seen from its seat, mm. */
  shift = 0;
  /** Shortest push, mm. */
  first = 0;
  /** Bounds of the lane, see aim. */
  private homeS = 0;
  private perSlope = 0;
  private regripS = 0;
  private onwardS = 0;
  private carriedS = 0;
  /** What is added to a place to get the ball's, for each length. */
  readonly ball: Int32Array;
  /** Columns and rows that are added to the ball's place to get the robot's. */
  readonly robotColumns: Int32Array;
  readonly robotRows: Int32Array;
  private readonly setup: PushSetup;
  /** Seconds by which a place may be nearer to the wedge than the point it is rounded from. */
  private readonly roundS: number;

  constructor(setup: PushSetup, speed: number, runOn: number) {
    const { width, height, accel } = setup;
    const most = Math.ceil((width + height) / STOP_STEP_MM) + 1;
    this.setup = setup;
    this.speed = speed;
    this.runOn = runOn;
    this.ramps = speed / accel;
    this.roundS =
      (Math.abs(setup.edgeX) * setup.stepX + Math.abs(setup.edgeY) * setup.stepY) / 2 / setup.speed;
    this.ball = new Int32Array(most);
    this.robotColumns = new Int32Array(most);
    this.robotRows = new Int32Array(most);
  }

  /** Seconds of the shortest push from any contact. */
  leastTime(): number {
    return 2 * this.ramps;
  }

  /**
   * Takes up a lane.
   *
   * @param leastRegrip the least that coming back to the ball takes, s
   * @param leastOnward, leastCarried the least from where it is let go, and from where the robot has it, until it is home, s
   */
  aim(lane: PushLane, leastRegrip: number, leastOnward: number, leastCarried: number): void {
    const { speed, runOn, ramps, setup } = this;
    this.shift = runOn - lane.advance;
    this.first = Math.max(lane.advance, ramps * speed);
    const depthMm = lane.toward * this.shift - edgeOf(setup, lane.shiftX, lane.shiftY);
    this.homeS = (setup.homeDepth - depthMm - setup.runOn) / setup.speed - this.roundS;
    // A push gets longer by 1/speed a millimetre, and the way home shorter by `toward`.
    this.perSlope = 1 / Math.max(1 / speed - lane.toward / setup.speed, FLAT_S_PER_MM);
    this.regripS = leastRegrip;
    this.onwardS = Math.max(leastRegrip, leastOnward);
    this.carriedS = leastCarried;
    this.fill(lane);
  }

  /**
   * No longer push that lets go is followed by a way home of which all takes less than `limit`: after the push the robot has to
   * come back to the ball and to go what is left to the wedge, and takes as long as from the best of all places.
   *
   * @param depth of the ball's place beyond the wedge's edge, mm
   */
  mostRegrip(depth: number, limit: number): number {
    const spareS = limit - this.ramps;
    const homeS = this.homeS - depth / this.setup.speed;
    return Math.min((spareS - this.onwardS) * this.speed, (spareS - this.regripS - homeS) * this.perSlope);
  }

  /** The same for a push after which the robot turns with the ball. */
  mostCarry(depth: number, limit: number): number {
    const spareS = limit - this.ramps;
    const homeS = this.homeS - depth / this.setup.speed;
    return Math.min((spareS - this.carriedS) * this.speed, (spareS - homeS) * this.perSlope);
  }

  private fill(lane: PushLane): void {
    const { columns, stepX, stepY } = this.setup;
    const { c, s, shiftX, shiftY, touchX, touchY } = lane;
    const { ball, robotColumns, robotRows, first, shift } = this;
    const acrossX = Math.abs(c) * STOP_STEP_MM;
    const acrossY = Math.abs(s) * STOP_STEP_MM;
    const { width, height } = this.setup;
    const count = Math.min(ball.length, Math.ceil(Math.min(width / acrossX, height / acrossY)) + 1);
    for (let n = 0; n < count; n++) {
      const length = first + n * STOP_STEP_MM;
      const column = Math.floor((shiftX + c * (shift + length)) / stepX + 0.5);
      const row = Math.floor((shiftY + s * (shift + length)) / stepY + 0.5);
      ball[n] = row * columns + column;
      robotColumns[n] = Math.floor((c * length - touchX) / stepX + 0.5);
      robotRows[n] = Math.floor((s * length - touchY) / stepY + 0.5);
    }
  }
}

/** How far a shift goes out of the wedge. */
function edgeOf({ edgeX, edgeY }: PushSetup, x: number, y: number): number {
  return edgeX * x + edgeY * y;
}
