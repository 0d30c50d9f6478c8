import { cagesBalls, hingedArms, tipGapMm, withArmsAt } from "../../model/arms.ts";
import { robotOutline } from "../../model/outline.ts";
import { ballsOf, type Project } from "../../model/project.ts";
import type { Robot } from "../../model/robot.ts";
import { canTurnSomewhere, reachMm } from "../../model/turningRoom.ts";
import type { PointMm } from "../../model/zone.ts";
import { brakingSpeed, type Carry, carryOf, curveRate } from "../../plan/carry.ts";
import { reachOf } from "../../plan/reach.ts";
import { degreesWords } from "../../report/lengthWords.ts";
import { robotFactTexts as t } from "../../texts/english/robotFact.ts";
import { lengthText, speedText } from "../../texts/lengths.ts";

/** Something that follows from a robot's measures in a zone. `good` null: neither good nor bad. */
export interface RobotFact {
  readonly good: boolean | null;
  readonly question: string;
  readonly answer: string;
}

/** What follows from the robot's measures: doorway, turning, carrying, braking, squaring up. */
export function robotFacts(project: Project): readonly RobotFact[] {
  const carry = carryOf(reachOf(project.robot), project.robot.drive, ballsOf(project));
  return [
    doorway(project),
    turning(project),
    carrying(project, carry),
    ...(carry.holds ? [braking(project, carry)] : []),
    squaring(project),
    ...shortOfWedge(project),
  ];
}

/** Steps along an edge at which a ball may touch it. */
const TOUCH_STEPS = 32;

/** Where the middle of a ball straight ahead comes to lie before the robot, mm before the axle's middle. */
function heldAtMm(footprint: readonly PointMm[], radiusMm: number): number {
  let held = Number.NEGATIVE_INFINITY;
  for (const [i, from] of footprint.entries()) {
    const to = footprint[(i + 1) % footprint.length] ?? from;
    for (let step = 0; step < TOUCH_STEPS; step++) {
      const share = step / TOUCH_STEPS;
      const yMm = from.yMm + share * (to.yMm - from.yMm);
      const rest = radiusMm * radiusMm - yMm * yMm;
      if (rest > 0) held = Math.max(held, from.xMm + share * (to.xMm - from.xMm) + Math.sqrt(rest));
    }
  }
  return held;
}

/** Told only where it is so: what stands on the floor is stopped by the wedge's edge while a ball is not over it yet. */
function shortOfWedge({ zone, robot, rules, balls }: Project): readonly RobotFact[] {
  if (robot.climbsWedge || zone.wedge.profile === "flat") return [];
  const { footprint, ground } = robotOutline(robot);
  const lowMm = Math.max(...ground.map((point) => point.xMm));
  const shortMm = balls.map(({ kind }) => {
    const radius = kind.diameterMm / 2;
    return lowMm - heldAtMm(footprint, radius) + (rules.delivered === "wholly" ? radius : 0);
  });
  const most = Math.max(...shortMm);
  if (most <= 0) return [];
  const diameter = balls[shortMm.indexOf(most)]?.kind.diameterMm ?? 0;
  return [
    { good: false, question: t.wedge, answer: t.shortOfWedge(lengthText(diameter, 1), lengthText(most)) },
  ];
}

/** Straight through: the outline's width across its way against the gap. */
function doorway({ zone, robot }: Project): RobotFact {
  const widthMm = widthOf(robot);
  const spare = zone.doorway.widthMm - widthMm;
  const width = lengthText(widthMm);
  const gap = lengthText(zone.doorway.widthMm);
  const words = spare > 0 ? t.spare(width, gap, lengthText(spare / 2)) : t.tooWide(width, gap);
  const arms = hingedArms(robot);
  const closed = arms ? [t.closedWidth(lengthText(widthOf(withArmsAt(robot, arms.closedAngleRad))))] : [];
  return { good: spare > 0, question: t.doorway, answer: [words, ...closed].join(" ") };
}

function widthOf(robot: Robot): number {
  const ys = robotOutline(robot).footprint.map((point) => point.yMm);
  return Math.max(...ys) - Math.min(...ys);
}

function turning({ zone, robot }: Project): RobotFact {
  const { footprint } = robotOutline(robot);
  const reach = reachMm(footprint);
  const front = Math.max(...footprint.map((point) => point.xMm));
  const fits = canTurnSomewhere(zone, robot);
  const away = lengthText(reach);
  const answer = fits ? t.turnBack(away, lengthText(Math.max(0, reach - front))) : t.turnNowhere(away);
  return { good: fits, question: t.turn, answer };
}

function carrying(project: Project, carry: Carry): RobotFact {
  const question = t.carry;
  if (!carry.holds) return { good: false, question, answer: t.shallow };
  const rate = degreesWords(Math.floor((curveRate(carry, 0) * 180) / Math.PI) * (Math.PI / 180));
  if (cagesBalls(project.robot, ballsOf(project))) return { good: true, question, answer: t.caged(rate) };
  const full = project.robot.drive.turnRateRadPerS <= curveRate(carry, 0);
  const answer = [full ? t.always : t.upTo(rate), ...openCage(project)].join(" ");
  return { good: full ? true : null, question, answer };
}

/** Arms that swing shut and yet let the smallest ball out: what would have to change. */
function openCage(project: Project): readonly string[] {
  const arms = hingedArms(project.robot);
  const smallestMm = Math.min(...ballsOf(project).map(({ diameterMm }) => diameterMm));
  const gapMm = arms ? tipGapMm(arms, arms.closedAngleRad) : 0;
  return gapMm < smallestMm ? [] : [t.openCage(lengthText(gapMm), lengthText(smallestMm, 1))];
}

function braking({ robot }: Project, carry: Carry): RobotFact {
  const speed = brakingSpeed(carry);
  const full = robot.drive.topSpeedMmPerS <= speed;
  const answer = full ? t.brakeAlways : t.brakeUpTo(speedText(speed));
  return { good: full ? true : null, question: t.brake, answer };
}

/** The wall's push turns the robot while its lever is longer than the tracks' resistance allows (see motion/path.kernel). */
function squaring({ robot }: Project): RobotFact {
  const { drive } = robot;
  const leverMm = (drive.lateralFrictionCoeff * drive.trackContactMm) / (4 * drive.tractionCoeff);
  const { footprint } = robotOutline(robot);
  const front = faceHalfMm(footprint, 1);
  const back = faceHalfMm(footprint, -1);
  const lever = lengthText(leverMm);
  const [good, answer] =
    front > leverMm && back > leverMm
      ? [true, t.squareBoth(lengthText(Math.min(front, back)), lever)]
      : front > leverMm
        ? [true, t.squareFront(lengthText(front), lever)]
        : back > leverMm
          ? [null, t.squareBack(lengthText(back), lever)]
          : [false, t.squareNot(lengthText(Math.max(front, back)), lever)];
  return { good, question: t.square, answer };
}

/** How far off the middle the outermost points of the front (1) or the back (−1) are. */
function faceHalfMm(footprint: readonly PointMm[], side: 1 | -1): number {
  const farthest = Math.max(...footprint.map((point) => side * point.xMm));
  const face = footprint.filter((point) => side * point.xMm > farthest - 1);
  return Math.max(0, ...face.map((point) => Math.abs(point.yMm)));
}
