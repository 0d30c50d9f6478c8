import type { Drift } from "../model/robot.ts";
import type { Move } from "../model/routine.ts";
import { moveLength } from "../motion/duration.ts";
import { RandomStream } from "../num/stream.ts";
import { STREAMS } from "./streams.ts";

/** Normals are cut off here, in standard deviations: a robot is never off by more than its worst test run. */
export const CUT_SD = 4;

/** The real motion of one move: a factor on its progress, and heading change per unit of progress added to the commanded one. */
export interface RealMotion {
  scale: number;
  kappaExtra: number;
}

/** How this trial's robot differs from the commanded one. Fixed numbers of draws, so that equal seeds mean equal luck. */
export class DriftDrawer {
  private readonly stream = new RandomStream();
  private readonly drift: Drift;
  private readonly on: boolean;
  private seed = 0;
  private trial = 0;
  private distanceScale = 0;
  private turnScale = 0;
  private curvature = 0;
  startX = 0;
  startY = 0;
  startHeading = 0;

  constructor(drift: Drift, on: boolean) {
    this.drift = drift;
    this.on = on;
  }

  /** Draws what holds all run. */
  openTrial(seed: number, trial: number): void {
    this.seed = seed;
    this.trial = trial;
    if (!this.on) return;
    const { systematic, start } = this.drift;
    this.stream.open(seed, trial, STREAMS.systematic);
    this.distanceScale =
      systematic.distanceScaleMean + systematic.distanceScaleSd * this.stream.normalCut(CUT_SD);
    this.turnScale = systematic.turnScaleMean + systematic.turnScaleSd * this.stream.normalCut(CUT_SD);
    this.curvature =
      systematic.curvatureMeanRadPerMm + systematic.curvatureSdRadPerMm * this.stream.normalCut(CUT_SD);
    this.stream.open(seed, trial, STREAMS.start);
    this.startX = start.positionSdMm * this.stream.normalCut(CUT_SD);
    this.startY = start.positionSdMm * this.stream.normalCut(CUT_SD);
    this.startHeading = start.headingSdRad * this.stream.normalCut(CUT_SD);
  }

  /** Draws one move. Straights: distance factor and curvature; turns: one factor with both random parts in it. */
  openMove(index: number, move: Move, sigma: number, out: RealMotion): void {
    out.scale = 1;
    out.kappaExtra = 0;
    if (!this.on || move.kind === "wait" || move.kind === "arms") return;
    const { random } = this.drift;
    this.stream.open(this.seed, this.trial, STREAMS.moves + index);
    const luck = this.stream.normalCut(CUT_SD);
    if (move.kind === "turn") {
      const angle = moveLength(move);
      const share = random.turnSdFrac * angle;
      const sd = Math.sqrt(share * share + random.turnSdRad * random.turnSdRad);
      if (angle > 0) out.scale = Math.max(0, 1 + this.turnScale + (sd * luck) / angle);
      return;
    }
    out.scale = Math.max(0, 1 + this.distanceScale + random.distanceSdFrac * luck);
    // Unequal wheels curve the path the same way over the ground whether it is driven forward or back.
    out.kappaExtra = sigma * this.curvature + random.curvatureSdRadPerMm * this.stream.normalCut(CUT_SD);
    // A curve is turned by the same difference of the tracks as a turn on the spot, and comes out short or long like one.
    const length = moveLength(move);
    if (move.kind === "arc" && length > 0) out.kappaExtra += (this.turnScale * move.angleRad) / length;
  }
}
