import { vi } from "vitest";
import type { Project } from "../../src/model/project.ts";
import type { Move, Routine } from "../../src/model/routine.ts";
import { sensorOf } from "../../src/model/sensor.ts";
import { RAD_PER_DEG } from "../../src/model/units.ts";
import { withWedgeIn } from "../../src/model/wedgeCorner.ts";
import type { Corner, PointMm } from "../../src/model/zone.ts";
import type { Pose } from "../../src/motion/pose.ts";
import { Walker } from "../../src/motion/walker.ts";
import { FetchPlanner } from "../../src/plan/fetch.ts";
import { KNOCK_S } from "../../src/plan/programWalk.ts";
import { compileTrial } from "../../src/trial/compile.ts";
import type { TrialOutcome } from "../../src/trial/outcome.ts";
import type { Recording } from "../../src/trial/recording.ts";
import { planFor, recordTrial } from "../../src/trial/run.ts";
import type { TeamCode } from "./programInterpreter.ts";

/** What the sensors said in a run, in order. */
export interface SensorLog {
  /** The project as it was in this run: the wedge where it was drawn. */
  readonly project: Project;
  readonly answers: readonly { readonly kind: string; readonly than: number; readonly yes: boolean }[];
  /** The notes after each scan, and where it told the robot that it is. */
  readonly notes: readonly (readonly PointMm[])[];
  readonly places: readonly Pose[];
  readonly outcome: TrialOutcome;
  readonly recording: Recording;
}

/** Runs a trial of a routine that decides, and listens to its sensors. */
export function listen(project: Project, routine: Routine, seed: number, index: number): SensorLog {
  const plan = compileTrial(project, routine);
  const used = planFor(plan, seed, index);
  const pilot = used.pilot!;
  const answer = vi.spyOn(pilot, "answer");
  const scan = vi.spyOn(pilot, "scan");
  const notes: PointMm[][] = [];
  const places: Pose[] = [];
  const ended = pilot.moveEnded.bind(pilot);
  let scans = 0;
  vi.spyOn(pilot, "moveEnded").mockImplementation((command, ran) => {
    ended(command, ran);
    if (scan.mock.calls.length === scans) return;
    scans = scan.mock.calls.length;
    notes.push([...pilot.notes]);
    places.push(pilot.pose);
  });
  const { outcome, recording } = recordTrial(plan, seed, index);
  const answers = answer.mock.calls.map(([ask], i) => ({
    kind: ask.kind,
    than: ask.kind === "nearer" ? ask.thanMm : ask.kind === "shortOfTime" ? ask.belowS : 0,
    yes: answer.mock.results[i]!.value as boolean,
  }));
  return { project: used.project, answers, notes, places, outcome, recording };
}

/** Thrown where the time limit ended the run. */
export class TimeIsUp extends Error {}

const KINDS: Readonly<Record<string, string>> = {
  balls_noted: "seen",
  ball_in_pusher: "holding",
  over_wedge: "overWedge",
  front_bumped: "bumped",
  back_bumped: "bumped",
  distance_mm: "nearer",
  seconds_left: "shortOfTime",
};

/** The functions as a team would write them, the sensors' answers taken from a run: keeps every move that is driven. */
export class ReplayTeam implements TeamCode {
  readonly moves: Move[] = [];
  readonly asked: string[] = [];
  private readonly log: SensorLog;
  private readonly walker: Walker;
  private readonly planners = new Map<string, FetchPlanner>();
  private readonly feelsBall: boolean;
  private notes: PointMm[] = [];
  private answers = 0;
  private scans = 0;

  constructor(log: SensorLog) {
    this.log = log;
    this.walker = new Walker(log.project);
    this.feelsBall = sensorOf(log.project.robot.sensors, "barrier") !== undefined;
  }

  call(name: string, args: readonly (number | string)[]): void {
    const [a = 0, b = 0, c = 0, d = 0, e = ""] = args;
    const n = Number;
    const turn = (): Move => ({
      kind: "turn",
      angleRad: n(a) * RAD_PER_DEG,
      rateRadPerS: n(b) * RAD_PER_DEG,
    });
    if (name === "drive") this.drive({ kind: "drive", distanceMm: n(a), speedMmPerS: n(b) });
    else if (name === "turn") this.drive(turn());
    else if (name === "curve")
      this.drive({ kind: "arc", distanceMm: n(a), angleRad: n(b) * RAD_PER_DEG, speedMmPerS: n(c) });
    else if (name === "drive_to_wall")
      this.drive({ kind: "toWall", distanceMm: n(a), overrunMm: n(b), speedMmPerS: n(c) });
    else if (name === "wait") this.drive({ kind: "wait", durationS: n(a) });
    else if (name === "scan") {
      this.drive(turn());
      // The walls it has read put right where it takes itself to be.
      this.walker.pose = this.log.places[this.scans]!;
      this.notes = [...this.log.notes[this.scans++]!];
    } else if (name === "fetch") this.fetch(n(a), String(b));
    else if (name === "go_to") {
      const to = { xMm: n(a), yMm: n(b), headingRad: n(c) * RAD_PER_DEG };
      for (const move of this.planner(String(e)).goTo(this.walker.pose, to, n(d)) ?? []) this.drive(move);
    } else throw new Error(`no such function: ${name}`);
  }

  read(name: string): number | boolean {
    this.asked.push(name);
    const { yes, than } = this.next(KINDS[name] ?? "");
    if (name === "balls_noted") {
      if (yes !== this.notes.length > 0) throw new Error("the notes are not those of the run");
      return this.notes.length;
    }
    return name === "distance_mm" || name === "seconds_left" ? (yes ? than - 0.5 : than) : yes;
  }

  private next(kind: string): SensorLog["answers"][number] {
    const found = this.log.answers[this.answers++];
    if (found?.kind !== kind) throw new Error(`asked for ${kind}, the run for ${found?.kind}`);
    return found;
  }

  private fetch(speedMmPerS: number, corner: string): void {
    let best: { cost: number; ball: PointMm; way: NonNullable<ReturnType<FetchPlanner["wayTo"]>> } | null =
      null;
    for (const ball of this.notes) {
      const others = this.notes.filter((other) => other !== ball);
      const way = this.planner(corner).wayTo(this.walker.pose, ball, others, speedMmPerS);
      if (way === null) continue;
      const cost = way.durationS + KNOCK_S * way.knocks;
      if (best === null || cost < best.cost) best = { cost, ball, way };
    }
    this.notes = best === null ? [] : this.notes.filter((ball) => ball !== best.ball);
    for (const [i, move] of (best?.way.moves ?? []).entries()) {
      this.drive(move);
      const mustHold = this.feelsBall && best !== null && i >= best.way.heldFrom && i < best.way.homeAt;
      if (mustHold && !this.next("holding").yes) return;
    }
  }

  private planner(constant: string): FetchPlanner {
    const corner = constant.toLowerCase().replace("_", "-") as Corner;
    const known = this.planners.get(corner) ?? new FetchPlanner(withWedgeIn(this.log.project, corner));
    this.planners.set(corner, known);
    return known;
  }

  private drive(move: Move): void {
    this.moves.push(move);
    this.walker.advance(move);
    const { executed = [] } = this.log.recording;
    const isCut = this.log.outcome.timeS >= this.log.project.rules.timeLimitS;
    if (isCut && this.moves.length === executed.length) throw new TimeIsUp();
  }
}
