import { degFromRad } from "./degrees.ts";
import type { Program, Question, Step } from "./program.ts";
import { moveForFile } from "./serialiseRoutines.ts";

/** A program as it stands in a file; see parseProgram. */
export function programForFile(program: Program): readonly object[] {
  return program.map(stepForFile);
}

function stepForFile(step: Step): object {
  switch (step.kind) {
    case "scan": {
      const { kind, angleRad, rateRadPerS, corner } = step;
      return { kind, angleDeg: degFromRad(angleRad), rateDegPerS: degFromRad(rateRadPerS), corner };
    }
    case "fetch":
      return { kind: step.kind, speedMmPerS: step.speedMmPerS, corner: step.corner };
    case "goTo": {
      const { kind, xMm, yMm, headingRad, speedMmPerS, corner } = step;
      return { kind, xMm, yMm, headingDeg: degFromRad(headingRad), speedMmPerS, corner };
    }
    case "repeat": {
      const { kind, atMost, until, steps } = step;
      return {
        kind,
        atMost,
        ...(until === null ? {} : { until: questionForFile(until) }),
        steps: programForFile(steps),
      };
    }
    case "if":
      return {
        kind: step.kind,
        when: questionForFile(step.when),
        yes: programForFile(step.yes),
        no: programForFile(step.no),
      };
    default:
      return moveForFile(step);
  }
}

function questionForFile({ ask, not }: Question): object {
  const { kind, ...rest } = ask.kind === "nearer" ? { ...ask, sensor: ask.sensor + 1 } : ask;
  return { ask: kind, ...rest, not };
}
