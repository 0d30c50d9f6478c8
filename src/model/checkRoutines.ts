import { issueTexts as t } from "../texts/english/issue.ts";
import { hingedArms } from "./arms.ts";
import type { Issue } from "./issue.ts";
import type { Step } from "./program.ts";
import type { Robot } from "./robot.ts";
import type { Beside, Routine } from "./routine.ts";
import { type Sensor, sideOf } from "./sensor.ts";

/** What own routines ask of a robot that cannot do it. */
export function checkRoutines(routines: readonly Routine[], robot: Robot): readonly Issue[] {
  const swings = hingedArms(robot) !== null;
  return routines.flatMap(({ moves, program }, i) => {
    const path = `routines[${i}]`;
    return [...placed(moves, `${path}.moves`), ...placed(program ?? [], `${path}.program`)].flatMap(
      ([step, at]) => {
        if (step.kind === "arms") return swings ? [] : [armsWithoutHinges(at)];
        const beside = "beside" in step ? step.beside : undefined;
        return beside === undefined ? [] : besideNothing(beside, robot.sensors, at);
      },
    );
  });
}

function armsWithoutHinges(path: string): Issue {
  return {
    code: "arms-without-hinges",
    path,
    message: t.noArms,
    got: t.armsMove,
    expected: t.possibleMoves,
  };
}

function besideNothing({ sensor }: Beside, sensors: readonly Sensor[], at: string): readonly Issue[] {
  if (sideOf(sensors[sensor]) !== 0) return [];
  const path = `${at}.beside.sensor`;
  const got = String(sensor + 1);
  return [{ code: "no-side-sensor", path, message: t.noSideSensor, got, expected: t.sideSensor }];
}

/** Every line with its place in the file, those of blocks too. */
function placed(steps: readonly Step[], path: string): readonly (readonly [Step, string])[] {
  return steps.flatMap((step, i): readonly (readonly [Step, string])[] => {
    const at = `${path}[${i}]`;
    if (step.kind === "repeat") return placed(step.steps, `${at}.steps`);
    if (step.kind === "if") return [...placed(step.yes, `${at}.yes`), ...placed(step.no, `${at}.no`)];
    return [[step, at]];
  });
}
