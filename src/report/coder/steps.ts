import type { Project } from "../../model/project.ts";
import type { Move, Routine } from "../../model/routine.ts";
import { moveDurationS } from "../../motion/duration.ts";
import { type Call, callOf } from "./calls.ts";
import { DEG_DECIMALS, MM_DECIMALS, numberText, SECONDS_DECIMALS, SPEED_DECIMALS } from "./numberText.ts";
import { type WheelGain, type WheelTurns, wheelGain, wheelTurns } from "./wheels.ts";

/** One step for the coder. */
export interface CoderStep {
  /** From 1, as on the drawing. */
  readonly number: number;
  /** In neutral words, exact: "drive forward 36 mm at 200 mm/s". */
  readonly words: string;
  readonly call: Call;
  /** null where no wheel turns. */
  readonly wheels: WheelTurns | null;
  readonly durationS: number;
}

export interface StepSheet {
  readonly project: string;
  readonly routine: { readonly id: string; readonly label: string };
  readonly robot: string;
  readonly gain: WheelGain;
  /** Of each wheel, at the start and end of every move. */
  readonly accelMmPerS2: number;
  readonly steps: readonly CoderStep[];
  readonly durationS: number;
}

/** A routine as numbered steps for the person who codes the robot. */
export function stepSheet(project: Project, routine: Routine): StepSheet {
  const { robot } = project;
  const steps = routine.moves.map((move, i): CoderStep => {
    const call = callOf(robot.drive, move);
    return {
      number: i + 1,
      words: stepWords(move, call),
      call,
      wheels: wheelTurns(robot, move),
      durationS: moveDurationS(robot.drive, move),
    };
  });
  return {
    project: project.name,
    routine: { id: routine.id, label: routine.label },
    robot: robot.name,
    gain: wheelGain(robot),
    accelMmPerS2: robot.drive.accelMmPerS2,
    steps,
    durationS: steps.reduce((sum, { durationS }) => sum + durationS, 0),
  };
}

const mm = (value: number | undefined): string => `${numberText(Math.abs(value ?? 0), MM_DECIMALS)} mm`;
const deg = (value: number | undefined): string => `${numberText(Math.abs(value ?? 0), DEG_DECIMALS)} deg`;
const speed = (value: number | undefined): string => numberText(value ?? 0, SPEED_DECIMALS);
const way = (value: number | undefined): string => ((value ?? 0) < 0 ? "backward" : "forward");
const side = (value: number | undefined): string => ((value ?? 0) < 0 ? "right" : "left");

function stepWords(move: Move, { args }: Call): string {
  const [a, b, c] = args;
  switch (move.kind) {
    case "drive":
      return `drive ${way(a)} ${mm(a)} at ${speed(b)} mm/s`;
    case "turn":
      return `turn ${side(a)} ${deg(a)} at ${speed(b)} deg/s`;
    case "arc":
      return `curve ${side(b)} ${deg(b)} over ${mm(a)} ${way(a)} at ${speed(c)} mm/s`;
    case "toWall":
      return `drive ${way(a)} to the wall ${mm(a)} and push on ${mm(b)} at ${speed(c)} mm/s`;
    case "wait":
      return `wait ${numberText(a ?? 0, SECONDS_DECIMALS)} s`;
    case "arms":
      return `${move.to === "open" ? "open" : "close"} the arms ${numberText(a ?? 0, SECONDS_DECIMALS)} s`;
    default:
      return move satisfies never;
  }
}
