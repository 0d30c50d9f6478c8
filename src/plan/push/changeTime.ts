import { robotOutline } from "../../model/outline.ts";
import type { Project } from "../../model/project.ts";
import { reachMm } from "../../model/turningRoom.ts";
import { PI } from "../../model/units.ts";
import { turnAccelRadPerS2 } from "../../motion/duration.ts";
import { Trapezoid } from "../../motion/trapezoid.ts";
import { sin } from "../../num/elementary.ts";
import { DIRECTION_RAD, DIRECTIONS } from "./room.ts";

/** Widest angle about the ball that one straight leg may span: the leg then keeps 87 % of the distance to it. */
const LEG_RAD = PI / 3;
/** Gap kept to the ball while the robot goes round it, mm. */
const GAP_MM = 10;

/**
 * Seconds that a robot needs to leave a ball and come at it from a direction that is n steps off: back until its tips can
 * swing past the ball, along a polygon round it (forward or backward, whichever turns less), turn, and forward to the ball.
 * Ramps and turns included (motion/trapezoid), walls left out: what they cost more is found out when the sequence is built.
 *
 * @returns one entry for every number of steps 0 … DIRECTIONS/2; coming back the same way (entry 0) takes as long as one step
 */
export function regripTimes(project: Project, radiusMm: number, speedMmPerS: number): Float64Array {
  const { drive } = project.robot;
  const outline = robotOutline(project.robot);
  const round = reachMm([...outline.footprint, ...outline.ground]) + radiusMm + GAP_MM;
  const front = outline.footprint.reduce((most, p) => Math.max(most, p.xMm), 0) + radiusMm;
  const profile = new Trapezoid();
  const drivenS = (mm: number): number => profile.set(mm, speedMmPerS, drive.accelMmPerS2).durationS;
  const turnedS = (rad: number): number =>
    profile.set(rad, drive.turnRateRadPerS, turnAccelRadPerS2(drive)).durationS;
  const back = Math.max(0, round - front);
  const times = new Float64Array(DIRECTIONS / 2 + 1);
  for (let n = 1; n < times.length; n++) {
    const change = n * DIRECTION_RAD;
    const legs = Math.ceil(change / LEG_RAD - 1e-9);
    const leg = change / legs;
    // Facing the ball, the first leg goes off at 90° − leg/2; each next turns by a leg; the last turn faces the ball again.
    const off = PI / 2 - leg / 2;
    const backAndForth = 2 * drivenS(back);
    const around = legs * drivenS(2 * round * sin(leg / 2));
    times[n] = backAndForth + around + 2 * turnedS(off) + (legs - 1) * turnedS(leg);
  }
  times[0] = times[1] ?? 0;
  return times;
}
