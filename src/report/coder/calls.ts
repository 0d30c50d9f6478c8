import { degFromRad } from "../../model/degrees.ts";
import type { Step } from "../../model/program.ts";
import type { Drive } from "../../model/robot.ts";
import type { Beside } from "../../model/routine.ts";
import type { Corner } from "../../model/zone.ts";
import type { FunctionName } from "./functions.ts";
import { speedToSet } from "./speed.ts";

export interface Call {
  readonly name: FunctionName;
  /** In the order of the function's params. */
  readonly args: readonly (number | Corner)[];
}

/** A line that is no block. */
export type PlainStep = Exclude<Step, { readonly kind: "repeat" | "if" }>;

/** The call that makes a line, with the speed the drive can really give it. */
export function callOf(drive: Drive, step: PlainStep): Call {
  switch (step.kind) {
    case "drive":
      return besideCall("drive", [step.distanceMm, speedToSet(drive, step)], step.beside);
    case "turn":
      return { name: "turn", args: [degFromRad(step.angleRad), degFromRad(speedToSet(drive, step))] };
    case "arc":
      return { name: "curve", args: [step.distanceMm, degFromRad(step.angleRad), speedToSet(drive, step)] };
    case "toWall":
      return besideCall(
        "drive_to_wall",
        [step.distanceMm, step.overrunMm, speedToSet(drive, step)],
        step.beside,
      );
    case "wait":
      return { name: "wait", args: [step.durationS] };
    case "arms":
      return { name: step.to === "open" ? "open_arms" : "close_arms", args: [step.durationS] };
    case "scan": {
      const { angleRad, rateRadPerS, corner } = step;
      const speed = speedToSet(drive, { kind: "turn", angleRad, rateRadPerS });
      return { name: "scan", args: [degFromRad(angleRad), degFromRad(speed), corner] };
    }
    case "fetch":
      return { name: "fetch", args: [Math.min(step.speedMmPerS, drive.topSpeedMmPerS), step.corner] };
    case "goTo": {
      const speed = Math.min(step.speedMmPerS, drive.topSpeedMmPerS);
      return { name: "go_to", args: [step.xMm, step.yMm, degFromRad(step.headingRad), speed, step.corner] };
    }
    default:
      return step satisfies never;
  }
}

/** A straight way, or the same beside a wall; sensors are counted from 1. */
function besideCall(
  name: "drive" | "drive_to_wall",
  args: readonly number[],
  beside: Beside | undefined,
): Call {
  if (beside === undefined) return { name, args };
  return { name: `${name}_beside`, args: [...args, beside.sensor + 1, beside.readsMm] };
}
