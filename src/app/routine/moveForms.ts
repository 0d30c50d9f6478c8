import { hingedArms, swingMoveS } from "../../model/arms.ts";
import { MOVE_KINDS } from "../../model/choices.ts";
import type { Robot } from "../../model/robot.ts";
import type { Move } from "../../model/routine.ts";

type Kind = Move["kind"];

/** Where nothing swings the arms' motor is said to run for so long, s. */
const ANY_SWING_S = 0.5;

/** The kinds of moves a robot can be told: arms only where they swing, or where the move is one already. */
export function moveKindsFor(robot: Robot | null, kind: Kind): readonly Kind[] {
  const swings = robot !== null && hingedArms(robot) !== null;
  return MOVE_KINDS.filter((each) => each !== "arms" || swings || kind === "arms");
}

/**
 * What the form says of a move after it is made one of another kind; what the two have in common stays.
 *
 * @param number reads a number of the form, or gives another where there is none
 */
export function moveForm(
  kind: Kind,
  robot: Robot | null,
  number: (key: string, other: number) => number,
): Readonly<Record<string, string | number>> {
  const way = () => ({ distanceMm: number("distanceMm", 100), speedMmPerS: number("speedMmPerS", 200) });
  switch (kind) {
    case "drive":
      return { kind, ...way() };
    case "turn":
      return { kind, angleDeg: number("angleDeg", 90), rateDegPerS: 90 };
    case "arc":
      return { kind, ...way(), angleDeg: number("angleDeg", 45) };
    case "toWall": {
      const { distanceMm, speedMmPerS } = way();
      return { kind, distanceMm, speedMmPerS, overrunMm: distanceMm < 0 ? -40 : 40 };
    }
    case "wait":
      return { kind, durationS: 1 };
    case "arms": {
      const arms = robot && hingedArms(robot);
      return { kind, to: "closed", durationS: arms ? swingMoveS(arms) : ANY_SWING_S };
    }
    default:
      return kind satisfies never;
  }
}
