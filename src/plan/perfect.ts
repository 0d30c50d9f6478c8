import { ballsOf, type Project } from "../model/project.ts";
import type { Routine } from "../model/routine.ts";
import { patternTexts } from "../texts/english/pattern.ts";

/** Fetches at most so many times as often as there are balls: some get away and have to be fetched again. */
const TRIES = 3;

/**
 * Fetches one ball after the other for as long as any can be fetched. Run with perfect sight (trial/compile.ts) it is what
 * the robot could do if it knew its own place and every ball's.
 */
export function perfectRoutine(project: Project): Routine {
  const { corner } = project.zone.wedge;
  const { robot, settings } = project;
  const speedMmPerS = robot.drive.topSpeedMmPerS * Math.max(...settings.speedFracs);
  return {
    id: "all-known",
    get pattern() {
      return patternTexts.names.known;
    },
    label: patternTexts.fetchesAll,
    params: {},
    moves: [],
    program: [
      {
        kind: "repeat",
        atMost: TRIES * ballsOf(project).length,
        until: { ask: { kind: "seen" }, not: true },
        steps: [{ kind: "fetch", speedMmPerS, corner }],
      },
    ],
  };
}
