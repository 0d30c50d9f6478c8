import { robotOutline } from "../../src/model/outline.ts";
import type { Project } from "../../src/model/project.ts";
import type { Move } from "../../src/model/routine.ts";
import { entryPose } from "../../src/motion/entry.ts";
import { PathTracer } from "../../src/motion/path.kernel.ts";
import { surroundingsOf } from "../../src/motion/surroundings.ts";
import { PIECE, posePiece } from "../../src/motion/trace.kernel.ts";
import { motionOf } from "../../src/motion/walker.ts";
import type { DriftBounds } from "../../src/score/driftBounds.ts";
import { pusherChains } from "../../src/score/pusher.ts";

/** Poses x, y, cos, sin of a real path, close enough that a pusher corner runs nearly straight in between. */
export type Poses = readonly number[];

/** Longest rotation between two poses, rad: a corner 250 mm off strays 0.08 mm from the chord of it. */
const STEP_RAD = 0.05;

/** The real path of a robot that drifts, walls included, as the trial drives it; ball-free and without its clock. */
export class RealPath {
  private readonly tracer: PathTracer;
  private readonly project: Project;
  private readonly moves: readonly Move[];
  private readonly chains: readonly (readonly number[])[];
  private readonly box: { minX: number; maxX: number; minY: number; maxY: number };

  constructor(project: Project, moves: readonly Move[]) {
    this.project = project;
    this.moves = moves;
    this.tracer = new PathTracer(surroundingsOf(project.zone, project.robot), project.robot.drive);
    this.chains = pusherChains(robotOutline(project.robot));
    const flat = this.chains.flat();
    const xs = flat.filter((_, i) => i % 2 === 0);
    const ys = flat.filter((_, i) => i % 2 === 1);
    this.box = {
      minX: Math.min(...xs),
      maxX: Math.max(...xs),
      minY: Math.min(...ys),
      maxY: Math.max(...ys),
    };
  }

  /** @param pick numbers in [−1, 1]: how far to the ends of its bounds each error is, asked for in a fixed order */
  drive(bounds: DriftBounds, pick: () => number): Poses {
    const { tracer } = this;
    const around = ({ centre, half }: { centre: number; half: number }): number => centre + half * pick();
    const entry = entryPose(this.project.zone, this.project.robot);
    let x = entry.xMm + bounds.startMm * pick();
    let y = entry.yMm + bounds.startMm * pick();
    let heading = entry.headingRad + bounds.startRad * pick();
    const distance = around(bounds.distanceScale);
    const turn = around(bounds.turnScale);
    const curvature = around(bounds.curvatureRadPerMm);
    const poses: number[] = [x, y, Math.cos(heading), Math.sin(heading)];
    const at = new Float64Array(7);
    for (const move of this.moves) {
      const { sigma, kappa, length } = motionOf(move);
      if (move.kind === "wait" || length === 0) continue;
      let scale = 1;
      let extra = 0;
      if (move.kind === "turn") {
        const share = bounds.moveTurnFrac * length;
        scale +=
          turn + (Math.sqrt(share * share + bounds.moveTurnRad * bounds.moveTurnRad) * pick()) / length;
      } else {
        scale += distance + bounds.moveDistanceFrac * pick();
        extra = sigma * curvature + bounds.moveCurvatureRadPerMm * pick();
        if (move.kind === "arc") extra += (turn * move.angleRad) / length;
      }
      tracer.plan(x, y, Math.cos(heading), Math.sin(heading), heading, sigma, kappa + extra, length * scale);
      for (let piece = 0; piece < tracer.count; piece++) this.follow(piece, poses, at);
      tracer.poseAt(length * scale, at);
      [x = x, y = y, , , heading = heading] = at;
      poses.push(x, y, at[2] ?? 1, at[3] ?? 0);
    }
    return poses;
  }

  private follow(piece: number, poses: number[], at: Float64Array): void {
    const { pieces } = this.tracer;
    const from = pieces[piece * PIECE] ?? 0;
    const to = pieces[piece * PIECE + 1] ?? 0;
    const count = Math.max(1, Math.ceil((Math.abs(pieces[piece * PIECE + 8] ?? 0) * (to - from)) / STEP_RAD));
    for (let i = 0; i <= count; i++) {
      posePiece(pieces, piece * PIECE, from + ((to - from) * i) / count, at);
      poses.push(at[0] ?? 0, at[1] ?? 0, at[2] ?? 1, at[3] ?? 0);
    }
  }

  /** Whether the pusher comes within `radiusMm` of a point somewhere on the path. */
  touches(poses: Poses, px: number, py: number, radiusMm: number): boolean {
    const { box } = this;
    let hadX = Number.NaN;
    let hadY = Number.NaN;
    for (let i = 0; i < poses.length; i += 4) {
      const dx = px - (poses[i] ?? 0);
      const dy = py - (poses[i + 1] ?? 0);
      const c = poses[i + 2] ?? 1;
      const s = poses[i + 3] ?? 0;
      const x = c * dx + s * dy;
      const y = c * dy - s * dx;
      const fromX = i === 0 ? x : hadX;
      const fromY = i === 0 ? y : hadY;
      hadX = x;
      hadY = y;
      const isFar =
        Math.max(x, fromX) < box.minX - radiusMm ||
        Math.min(x, fromX) > box.maxX + radiusMm ||
        Math.max(y, fromY) < box.minY - radiusMm ||
        Math.min(y, fromY) > box.maxY + radiusMm;
      if (!isFar && this.nearest(fromX, fromY, x, y) <= radiusMm) return true;
    }
    return false;
  }

  /** Distance of the pusher from a segment in the robot's frame. */
  private nearest(fromX: number, fromY: number, x: number, y: number): number {
    let least = Number.POSITIVE_INFINITY;
    for (const chain of this.chains) {
      for (let k = 0; k + 3 < chain.length; k += 2) {
        const ax = chain[k] ?? 0;
        const ay = chain[k + 1] ?? 0;
        least = Math.min(least, between(fromX, fromY, x, y, ax, ay, chain[k + 2] ?? 0, chain[k + 3] ?? 0));
      }
    }
    return least;
  }
}

function toSegment(x: number, y: number, ax: number, ay: number, bx: number, by: number): number {
  const ex = bx - ax;
  const ey = by - ay;
  const square = ex * ex + ey * ey;
  const share = square === 0 ? 0 : ((x - ax) * ex + (y - ay) * ey) / square;
  const t = Math.max(0, Math.min(1, share));
  return Math.hypot(ax + t * ex - x, ay + t * ey - y);
}

/** Distance between two segments. */
function between(
  px: number,
  py: number,
  qx: number,
  qy: number,
  ax: number,
  ay: number,
  bx: number,
  by: number,
): number {
  const side = (ux: number, uy: number, vx: number, vy: number, x: number, y: number): number =>
    (vx - ux) * (y - uy) - (vy - uy) * (x - ux);
  const crosses =
    side(px, py, qx, qy, ax, ay) * side(px, py, qx, qy, bx, by) < 0 &&
    side(ax, ay, bx, by, px, py) * side(ax, ay, bx, by, qx, qy) < 0;
  if (crosses) return 0;
  return Math.min(
    toSegment(px, py, ax, ay, bx, by),
    toSegment(qx, qy, ax, ay, bx, by),
    toSegment(ax, ay, px, py, qx, qy),
    toSegment(bx, by, px, py, qx, qy),
  );
}
