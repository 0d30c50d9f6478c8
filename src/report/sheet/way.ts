import type { Project } from "../../model/project.ts";
import type { Move } from "../../model/routine.ts";
import type { PointMm } from "../../model/zone.ts";
import { nominalCourse } from "../../motion/course.ts";
import { robotAt } from "../../trial/playback.ts";
import type { Recording } from "../../trial/recording.ts";

/** Where the middle between the wheels goes, and which step ends where. */
export interface Way {
  readonly points: readonly PointMm[];
  /** In the order of the steps. */
  readonly ends: readonly { readonly step: number; readonly at: PointMm }[];
  readonly moves: number;
}

export const NO_WAY: Way = { points: [], ends: [], moves: 0 };

/** Straight pieces in which a curve is drawn, rad each. */
const CHORD_RAD = 0.2;
/** A driven way is drawn from place to place so many seconds apart. */
const SAMPLE_S = 0.1;

/** The way of a list of moves without drift; its steps are the moves. */
export function plannedWay(project: Project, moves: readonly Move[]): Way {
  const { pieces } = nominalCourse(project, moves);
  const points = pieces.flatMap(({ kind, from, to, centreXMm, centreYMm, angleRad }): PointMm[] => {
    if (kind === "line") return [from, to];
    const steps = Math.max(1, Math.ceil(Math.abs(angleRad) / CHORD_RAD));
    return Array.from({ length: steps + 1 }, (_, i) => {
      const angle = (angleRad * i) / steps;
      const [dx, dy] = [from.xMm - centreXMm, from.yMm - centreYMm];
      return {
        xMm: centreXMm + Math.cos(angle) * dx - Math.sin(angle) * dy,
        yMm: centreYMm + Math.sin(angle) * dx + Math.cos(angle) * dy,
      };
    });
  });
  const ends = [...new Map(pieces.map(({ move, to }) => [move + 1, to]))];
  return { points, ends: ends.map(([step, at]) => ({ step, at })), moves: moves.length };
}

/** The way of one run of a routine that decides; its steps are the lines of the program, which may come up more than once. */
export function drivenWay(recording: Recording): Way {
  const { moveStartS, lines = [] } = recording;
  const endS = moveStartS.at(-1) ?? 0;
  const samples = Math.max(1, Math.ceil(endS / SAMPLE_S));
  const points = Array.from({ length: samples + 1 }, (_, i) => robotAt(recording, (endS * i) / samples));
  // A step of several moves ends with its last one.
  const ends = lines.flatMap((line, i) =>
    lines[i + 1] === line ? [] : [{ step: line + 1, at: robotAt(recording, moveStartS[i + 1] ?? endS) }],
  );
  return { points, ends, moves: lines.length };
}
