import type { Program, Question, Step } from "../model/program.ts";
import { ballsOf, type Project } from "../model/project.ts";
import type { Move, Routine } from "../model/routine.ts";
import { sensorOf } from "../model/sensor.ts";
import { PI, RAD_PER_DEG } from "../model/units.ts";
import type { Corner } from "../model/zone.ts";
import { entryAt, entryPose } from "../motion/entry.ts";
import type { Pose } from "../motion/pose.ts";
import { patternTexts } from "../texts/english/pattern.ts";
import { findProgram } from "./findCorner.ts";
import { poseFromFrame, targetFrame } from "./frame.ts";
import { lookouts } from "./lookout.ts";
import { nominalMoves } from "./nominalMoves.ts";
import { sceneOf } from "./scene.ts";
import { type SensingPlan, sensingPlan, TAILS, type Tail } from "./sensingPlan.ts";

/** Makes a blind routine by id for a project; the catalogue's maker. */
export type BlindMaker = (project: Project, id: string) => Routine | null;

/** Bearing between two readings of a scan, rad: a few of them fall on any ball in range. */
const READ_EVERY_RAD = 2 * RAD_PER_DEG;
/** Rounds of looking and fetching at one place. */
const ROUNDS = 3;
/** With less time than this left nothing new is looked for, s. */
const LAST_LOOK_S = 20;

const NONE_SEEN: Question = { ask: { kind: "seen" }, not: true };
const LATE: Question = { ask: { kind: "shortOfTime", belowS: LAST_LOOK_S }, not: false };

/** @returns null for an id that is none of the project's, or where there is no room for it */
export function makeSensing(project: Project, id: string, makeBlind: BlindMaker): Routine | null {
  const plan = sensingPlan(project, id);
  if (plan === null) return null;
  const after = (known: Project, from: Pose) => restFrom(known, plan, from, makeBlind);
  const program =
    plan.how === "look" ? lookProgram(project, plan, makeBlind) : findProgram(project, plan.how, after);
  if (program === null) return null;
  return {
    id,
    pattern: patternTexts.names[plan.how],
    label: labelOf(plan),
    params: { places: plan.places, tail: plan.tail },
    moves: nominalMoves(project, program),
    program,
  };
}

function labelOf({ how, places, tail }: SensingPlan): string {
  const parts = [
    places === 0 ? "" : patternTexts.looksFrom(places),
    tail === "none" ? "" : patternTexts.sweepsLeft(places > 0, tail),
  ].filter((part) => part !== "");
  return `${patternTexts.names[how]}: ${parts.join(", ")}`;
}

/** Looks around from each place, fetches until nothing is seen any more, and sweeps blindly from the last place. */
function lookProgram(project: Project, plan: SensingPlan, makeBlind: BlindMaker): Program | null {
  const { corner } = project.zone.wedge;
  const frame = targetFrame(project, true);
  const scene = sceneOf(frame);
  const speedMmPerS = scene.topSpeedMmPerS;
  const places = lookouts(scene, plan.places).map((place) =>
    poseFromFrame(frame, project.zone, { ...place, headingRad: scene.target.headingRad }),
  );
  if (places.length < plan.places) return null;
  const steps = places.flatMap((place) => lookSteps(project, place, corner, speedMmPerS, frame.flipped));
  const from = places[places.length - 1] ?? entryPose(project.zone, project.robot);
  const tail = plan.tail === "none" ? [] : tailMoves(project, plan.tail, from, makeBlind);
  if (tail === null) return null;
  return [
    ...steps,
    ...(places.length > 0 ? [{ kind: "goTo", ...from, speedMmPerS, corner } as const] : []),
    ...tail,
  ];
}

function lookSteps(
  project: Project,
  place: Pose,
  corner: Corner,
  speedMmPerS: number,
  flipped: boolean,
): readonly Step[] {
  const balls = ballsOf(project).length;
  const goTo: Step = { kind: "goTo", ...place, speedMmPerS, corner };
  const scan = scanStep(project, corner, flipped);
  const fetchOne: Step = { kind: "fetch", speedMmPerS, corner };
  const fetchAll: Step = { kind: "repeat", atMost: balls, until: NONE_SEEN, steps: [fetchOne] };
  const again: Step = { kind: "if", when: LATE, yes: [], no: [goTo, scan] };
  return [goTo, scan, { kind: "repeat", atMost: ROUNDS, until: NONE_SEEN, steps: [fetchAll, again] }];
}

/** Once round, slowly enough for the sensor. */
function scanStep({ robot }: Project, corner: Corner, flipped: boolean): Step {
  const readsPerS = sensorOf(robot.sensors, "distance")?.readsPerS ?? 1;
  const rateRadPerS = Math.min(robot.drive.turnRateRadPerS, READ_EVERY_RAD * readsPerS);
  return { kind: "scan", angleRad: flipped ? 2 * PI : -2 * PI, rateRadPerS, corner };
}

/** A blind sweep that starts where the robot stands instead of at the doorway. */
function tailMoves(project: Project, tail: Tail, from: Pose, makeBlind: BlindMaker): readonly Move[] | null {
  const { zone, robot, settings } = project;
  const percent = Math.round(100 * Math.max(...settings.speedFracs));
  const there = { ...project, robot: { ...robot, entry: entryAt(zone, from) } };
  return makeBlind(there, `${TAILS[tail]}-v${percent}`)?.moves ?? null;
}

/** What follows once the corner is known, from a pose. */
function restFrom(project: Project, plan: SensingPlan, from: Pose, makeBlind: BlindMaker): Program | null {
  if (plan.places > 0) return lookProgram(project, plan, makeBlind);
  return tailMoves(project, plan.tail, from, makeBlind);
}
