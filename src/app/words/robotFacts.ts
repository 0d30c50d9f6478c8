import { cagesBalls } from "../../model/arms.ts";
import { robotOutline } from "../../model/outline.ts";
import { ballsOf, type Project } from "../../model/project.ts";
import { canTurnSomewhere, reachMm } from "../../model/turningRoom.ts";
import { carryOf, curveRate } from "../../plan/carry.ts";
import { reachOf } from "../../plan/reach.ts";
import { degreesWords, millimetresWords } from "../../report/lengthWords.ts";

/** Something that follows from a robot's measures in a zone. `good` null: neither good nor bad. */
export interface RobotFact {
  readonly good: boolean | null;
  readonly question: string;
  readonly answer: string;
}

/** What follows from the robot's measures: doorway, turning, carrying, squaring up. */
export function robotFacts(project: Project): readonly RobotFact[] {
  return [doorway(project), turning(project), carrying(project), squaring(project)];
}

/** Straight through: the outline's width across its way against the gap. */
function doorway({ zone, robot }: Project): RobotFact {
  const ys = robotOutline(robot).footprint.map((point) => point.yMm);
  const width = Math.max(...ys) - Math.min(...ys);
  const spare = zone.doorway.widthMm - width;
  const words = `It is ${millimetresWords(width)} wide, the doorway ${millimetresWords(zone.doorway.widthMm)}`;
  const left =
    spare > 0 ? `${millimetresWords(spare / 2)} to spare on each side` : "it cannot drive in straight";
  return { good: spare > 0, question: "Does it fit through the doorway?", answer: `${words}: ${left}.` };
}

function turning({ zone, robot }: Project): RobotFact {
  const { footprint } = robotOutline(robot);
  const reach = reachMm(footprint);
  const front = Math.max(...footprint.map((point) => point.xMm));
  const fits = canTurnSomewhere(zone, robot);
  const away = `To turn on the spot, the middle between its wheels must be ${millimetresWords(reach)} from every wall`;
  const back = `after touching a wall with its front it must back up ${millimetresWords(Math.max(0, reach - front))} first`;
  const answer = fits ? `${away}; ${back}.` : `${away}, and there is no such place in this zone.`;
  return { good: fits, question: "Can it turn beside a wall?", answer };
}

function carrying(project: Project): RobotFact {
  const question = "Does it hold a ball in a turn?";
  const carry = carryOf(reachOf(project.robot), project.robot.drive, ballsOf(project));
  if (!carry.holds) {
    const answer =
      "Its pusher is less deep than a ball’s radius: a rolling ball slides off sideways when it turns.";
    return { good: false, question, answer };
  }
  const rate = degreesWords(Math.floor((curveRate(carry, 0) * 180) / Math.PI) * (Math.PI / 180));
  if (cagesBalls(project.robot, ballsOf(project))) {
    const answer = `With closed arms at any speed; with open ones up to about ${rate} a second.`;
    return { good: true, question, answer };
  }
  const full = project.robot.drive.turnRateRadPerS <= curveRate(carry, 0);
  const answer = full
    ? "Yes, even when it turns as fast as it can."
    : `Up to about ${rate} a second; when it turns faster, the ball runs out forward.`;
  return { good: full ? true : null, question, answer };
}

/** The wall's push turns the robot while its lever is longer than the tracks' resistance allows (see motion/path.kernel). */
function squaring({ robot }: Project): RobotFact {
  const question = "Can it square up against a wall?";
  const { drive } = robot;
  const leverMm = (drive.lateralFrictionCoeff * drive.trackContactMm) / (4 * drive.tractionCoeff);
  const { footprint } = robotOutline(robot);
  const front = Math.max(...footprint.map((point) => point.xMm));
  const corner = footprint.filter((point) => point.xMm > front - 1).map((point) => Math.abs(point.yMm));
  const half = Math.max(0, ...corner);
  const good = half > leverMm;
  const words = `its front corners are ${millimetresWords(half)} off the middle; its tracks need ${millimetresWords(leverMm)}`;
  return {
    good,
    question,
    answer: good
      ? `Yes: ${words} to be turned straight.`
      : `No: ${words} to be turned straight, so it stops crooked.`,
  };
}
