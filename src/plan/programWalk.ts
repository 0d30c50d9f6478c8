import { type Condition, linesOf, type Program, type Question, type Step } from "../model/program.ts";
import type { Move } from "../model/routine.ts";
import type { Corner, PointMm } from "../model/zone.ts";
import type { Pose } from "../motion/pose.ts";
import type { Fetch, FetchPlanner } from "./fetch.ts";

/** What a program can know and do while it runs: the robot of a trial, or one that meets nothing. */
export interface ProgramWorld {
  /** Where the robot believes it is. */
  readonly pose: Pose;
  readonly timeLeftS: number;
  /** Balls made out by the last scan and not fetched yet; changed by the walk. */
  notes: PointMm[];
  answer(ask: Condition): boolean;
  /** The turn to be driven while the sensor reads, after which `notes` is new; null when nothing has to be turned. */
  scan(step: Extract<Step, { readonly kind: "scan" }>): Move | null;
  planner(corner: Corner): FetchPlanner;
  /** It can tell whether a ball is in the pusher. */
  readonly feelsBall: boolean;
}

/** The next move, and the line of the program it belongs to. */
export interface Command {
  readonly move: Move;
  readonly line: number;
}

/** Lines looked at in one run before it is taken for an endless loop without a move. */
const MAX_LOOKS = 20_000;
/** What touching another ball on the way is worth, s: it rolls off to where it was not seen. */
export const KNOCK_S = 8;
/** Moves in one run: beyond any time limit with moves that take time. */
const MAX_COMMANDS = 5000;

/**
 * Runs a program line by line: each `next()` is the next move to drive; when it comes back for more, the move has been
 * driven and the world's pose, time and readings are those after it. Ends by itself; endless loops are cut off.
 */
export class ProgramWalk {
  private readonly world: ProgramWorld;
  private readonly sizes = new Map<Step, number>();
  private readonly commands: Generator<Command, void, void>;
  private looks = 0;
  private given = 0;

  constructor(program: Program, world: ProgramWorld) {
    this.world = world;
    this.commands = this.block(program, 0);
  }

  /** null when the program is over. */
  next(): Command | null {
    if (this.given >= MAX_COMMANDS) return null;
    const { done, value } = this.commands.next();
    if (done) return null;
    this.given++;
    return value;
  }

  private *block(steps: readonly Step[], firstLine: number): Generator<Command, void, void> {
    let line = firstLine;
    for (const step of steps) {
      if (this.looks++ > MAX_LOOKS) return;
      yield* this.line(step, line);
      line += this.sizeOf(step);
    }
  }

  private *line(step: Step, line: number): Generator<Command, void, void> {
    switch (step.kind) {
      case "scan": {
        const move = this.world.scan(step);
        if (move !== null) yield { move, line };
        return;
      }
      case "fetch":
        yield* this.bringHome(step.corner, step.speedMmPerS, line);
        return;
      case "goTo": {
        const moves = this.world.planner(step.corner).goTo(this.world.pose, step, step.speedMmPerS);
        for (const move of moves ?? []) yield { move, line };
        return;
      }
      case "repeat":
        for (let round = 0; round < step.atMost && this.looks < MAX_LOOKS; round++) {
          this.looks++;
          if (step.until !== null && this.holds(step.until)) return;
          yield* this.block(step.steps, line + 1);
        }
        return;
      case "if": {
        const isYes = this.holds(step.when);
        const after = line + 1 + (isYes ? 0 : step.yes.reduce((sum, inner) => sum + this.sizeOf(inner), 0));
        yield* this.block(isYes ? step.yes : step.no, after);
        return;
      }
      default:
        yield { move: step, line };
    }
  }

  private holds({ ask, not }: Question): boolean {
    return this.world.answer(ask) !== not;
  }

  private *bringHome(corner: Corner, speedMmPerS: number, line: number): Generator<Command, void, void> {
    const chosen = this.cheapest(corner, speedMmPerS);
    if (chosen === null) return;
    const { moves, heldFrom, homeAt } = chosen;
    for (const [i, move] of moves.entries()) {
      yield { move, line };
      const mustHold = this.world.feelsBall && i >= heldFrom && i < homeAt;
      if (mustHold && !this.world.answer({ kind: "holding" })) return;
    }
  }

  /** Strikes the chosen ball off the notes; all of them when none can be fetched. */
  private cheapest(corner: Corner, speedMmPerS: number): Fetch | null {
    const { world } = this;
    const planner = world.planner(corner);
    let best: Fetch | null = null;
    let bestBall: PointMm | null = null;
    for (const ball of world.notes) {
      const others = world.notes.filter((other) => other !== ball);
      const way = planner.wayTo(world.pose, ball, others, speedMmPerS);
      if (way === null || (best !== null && priceS(way) >= priceS(best))) continue;
      best = way;
      bestBall = ball;
    }
    world.notes = best === null ? [] : world.notes.filter((ball) => ball !== bestBall);
    return best;
  }

  private sizeOf(step: Step): number {
    const known = this.sizes.get(step);
    if (known !== undefined) return known;
    const size = linesOf([step]).length;
    this.sizes.set(step, size);
    return size;
  }
}

function priceS({ durationS, knocks }: Fetch): number {
  return durationS + KNOCK_S * knocks;
}
