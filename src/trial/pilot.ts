import type { Condition, Program, Step } from "../model/program.ts";
import { ballsOf, type Project } from "../model/project.ts";
import type { Move } from "../model/routine.ts";
import { type BarrierSensor, sensorOf } from "../model/sensor.ts";
import { withWedgeIn } from "../model/wedgeCorner.ts";
import type { Corner, PointMm } from "../model/zone.ts";
import { distanceToWedge } from "../model/zoneFrame.ts";
import { entryPose } from "../motion/entry.ts";
import type { PathTracer } from "../motion/path.kernel.ts";
import type { Pose } from "../motion/pose.ts";
import { Walker } from "../motion/walker.ts";
import { cos, sin } from "../num/elementary.ts";
import { RandomStream } from "../num/stream.ts";
import { FetchPlanner } from "../plan/fetch.ts";
import { isOverWedge } from "../plan/nominalMoves.ts";
import { type Command, ProgramWalk, type ProgramWorld } from "../plan/programWalk.ts";
import { bx, by, mode, OUT, radius } from "./balls.kernel.ts";
import { robot } from "./robot.kernel.ts";
import { Scanner } from "./scanner.ts";
import { STREAMS } from "./streams.ts";
import { isHome } from "./wedge.kernel.ts";

/** A noted ball this far over the wedge's edge is taken to be home, in radii. */
const HOME_RADII = 0.25;

/**
 * The robot's mind in a trial: runs a program on what the sensors read and on where it believes it is. It believes that
 * every command was carried out, walls of the map included (dead reckoning; a wall that squares it up puts it right, and so does a
 * scan by the walls it reads: scanFix.ts); the sensors read the true world. With `perfect` sight it knows its own place and that of every ball instead.
 */
export class Pilot implements ProgramWorld {
  readonly feelsBall: boolean;
  notes: PointMm[] = [];
  timeLeftS = 0;
  /** By how much the last move, a scan, has put the believed heading right. */
  headingFixRad = 0;
  private readonly project: Project;
  private readonly program: Program;
  private readonly perfect: boolean;
  private readonly balls: number;
  private readonly entry: Pose;
  private readonly walker: Walker;
  private readonly random = new RandomStream();
  /** By place in the robot's list of sensors; the first one scans. */
  private readonly eyes: ReadonlyMap<number, Scanner>;
  private readonly scanner: Scanner | null;
  private readonly barrier: BarrierSensor | undefined;
  private readonly wrongFloorFrac: number;
  private readonly planners = new Map<Corner, FetchPlanner>();
  private walk: ProgramWalk;
  private scanning: Extract<Step, { readonly kind: "scan" }> | null = null;
  private broken = false;
  private bumpedWith: "front" | "back" | null = null;

  /** @param project with the wedge where it really is */
  constructor(project: Project, program: Program, perfect: boolean) {
    const { sensors } = project.robot;
    this.project = project;
    this.program = program;
    this.perfect = perfect;
    this.entry = entryPose(project.zone, project.robot);
    this.walker = new Walker(project);
    const radii = ballsOf(project).map((ball) => ball.diameterMm / 2);
    this.eyes = new Map(
      sensors.flatMap((sensor, i) =>
        sensor.kind === "distance" ? [[i, new Scanner(sensor, project.zone, radii, this.random)]] : [],
      ),
    );
    this.scanner = [...this.eyes.values()][0] ?? null;
    this.balls = radii.length;
    this.barrier = sensorOf(sensors, "barrier");
    this.feelsBall = !perfect && this.barrier !== undefined;
    this.wrongFloorFrac = sensorOf(sensors, "floor")?.wrongFrac ?? 0;
    this.walk = new ProgramWalk(program, this);
  }

  get pose(): Pose {
    return this.walker.pose;
  }

  /** Heading that the last move was to end with, unwrapped. */
  get believedHeadingRad(): number {
    return this.walker.pose.headingRad;
  }

  /** A new run: nothing is left of the one before. */
  open(seed: number, trial: number): void {
    this.random.open(seed, trial, STREAMS.senses);
    this.walker.pose = this.entry;
    this.notes = [];
    this.scanning = null;
    this.broken = false;
    this.bumpedWith = null;
    this.walk = new ProgramWalk(this.program, this);
  }

  /** The next move and its line; null at the end of the program. */
  next(timeLeftS: number): Command | null {
    this.timeLeftS = timeLeftS;
    if (this.perfect) {
      this.walker.pose = { xMm: robot.x, yMm: robot.y, headingRad: robot.heading };
      this.lookAround();
    }
    const command = this.walk.next();
    this.broken = false;
    if (this.scanning !== null) this.scanner?.begin(this.pose);
    return command;
  }

  stepBegins(t: number): void {
    if (this.scanning !== null) this.scanner?.stepBegins(t);
  }

  stepEnded(planner: PathTracer, t: number): void {
    if (this.scanning !== null) this.scanner?.stepEnded(planner, t, this.scanning.angleRad < 0 ? -1 : 1);
    if (this.barrier !== undefined && !this.broken) this.broken = isBroken(this.barrier, this.balls);
  }

  /** The move has been driven. `ran`: with which side it ran into something. */
  moveEnded(command: Move, ran: "front" | "back" | null): void {
    this.walker.advance(command);
    this.bumpedWith = ran;
    this.headingFixRad = 0;
    if (this.scanning === null) return;
    const { corner, angleRad } = this.scanning;
    this.putRight(angleRad);
    this.scanning = null;
    this.notes =
      this.scanner === null ? [] : this.scanner.finish().filter((ball) => this.isOpen(ball, corner));
  }

  /** A scan has shown where the walls of the map are. */
  private putRight(angleRad: number): void {
    const fix = this.scanner?.fix() ?? null;
    if (fix === null) return;
    this.headingFixRad = fix.headingRad + fix.turnFrac * angleRad;
    const { xMm, yMm, headingRad } = this.walker.pose;
    this.walker.pose = {
      xMm: xMm + fix.xMm,
      yMm: yMm + fix.yMm,
      headingRad: headingRad + this.headingFixRad,
    };
  }

  answer(ask: Condition): boolean {
    switch (ask.kind) {
      case "seen":
        return this.notes.length > 0;
      case "holding":
        return this.broken !== this.isWrong(this.barrier?.wrongFrac ?? 0);
      case "overWedge": {
        const { x, y, heading } = robot;
        const over = isOverWedge(this.project, { xMm: x, yMm: y, headingRad: heading });
        return over !== this.isWrong(this.wrongFloorFrac);
      }
      case "bumped":
        return this.bumpedWith === ask.side && this.hasBump(ask.side);
      case "nearer":
        return (
          (this.eyes.get(ask.sensor)?.read(robot.x, robot.y, robot.c, robot.s) ?? ask.thanMm) < ask.thanMm
        );
      case "shortOfTime":
        return this.timeLeftS < ask.belowS;
      default:
        return ask satisfies never;
    }
  }

  scan(step: Extract<Step, { readonly kind: "scan" }>): Move | null {
    if (this.perfect) {
      this.lookAround();
      return null;
    }
    this.scanning = step;
    return { kind: "turn", angleRad: step.angleRad, rateRadPerS: step.rateRadPerS };
  }

  planner(believed: Corner): FetchPlanner {
    const corner = this.perfect ? this.project.zone.wedge.corner : believed;
    const known = this.planners.get(corner) ?? new FetchPlanner(withWedgeIn(this.project, corner));
    this.planners.set(corner, known);
    return known;
  }

  hasBump(side: "front" | "back"): boolean {
    return this.project.robot.sensors.some((sensor) => sensor.kind === "bump" && sensor.side === side);
  }

  private lookAround(): void {
    this.notes = [];
    for (let i = 0; i < this.balls; i++) {
      if (mode[i] !== OUT && !isHome(i)) this.notes.push({ xMm: bx[i] ?? 0, yMm: by[i] ?? 0 });
    }
  }

  /** On the floor of the zone and not home yet. */
  private isOpen({ xMm, yMm }: PointMm, corner: Corner): boolean {
    const { zone } = withWedgeIn(this.project, corner);
    const r = radius[0] ?? 0;
    const inset = Math.min(xMm, yMm, zone.widthMm - xMm, zone.heightMm - yMm);
    return inset > 0 && distanceToWedge(zone, xMm, yMm) > -HOME_RADII * r;
  }

  /** Draws only where there is something to draw: a sensor that never errs leaves the others' luck alone. */
  private isWrong(share: number): boolean {
    return share > 0 && this.random.uniform() < share;
  }
}

/** Whether a ball breaks the barrier's beam where the robot stands now. */
function isBroken({ alongMm, acrossMm, headingRad, lengthMm }: BarrierSensor, balls: number): boolean {
  const [ux, uy] = [cos(headingRad), sin(headingRad)];
  for (let i = 0; i < balls; i++) {
    const dx = (bx[i] ?? 0) - robot.x;
    const dy = (by[i] ?? 0) - robot.y;
    const px = robot.c * dx + robot.s * dy - alongMm;
    const py = robot.c * dy - robot.s * dx - acrossMm;
    const along = Math.max(0, Math.min(lengthMm, px * ux + py * uy));
    const [qx, qy] = [px - along * ux, py - along * uy];
    const r = radius[i] ?? 0;
    if (mode[i] !== OUT && qx * qx + qy * qy < r * r) return true;
  }
  return false;
}
