import { ARMS_LIMITS, BODY_LIMITS, HINGED_LIMITS, PLATE_LIMITS, SCOOP_LIMITS } from "../../model/limits.ts";
import { robotStepTexts as t } from "../../texts/english/robotStep.ts";
import { type QuantityRow, rowsOf } from "../inputs/quantityRow.ts";

const PATH = "robot.shape";

/** The numbers of a shape, by its kind's word in the file; none for an own outline, and for a word nobody knows. */
export function shapeRows(kind: string): readonly QuantityRow[] {
  const own = ownRows(kind);
  if (!own) return [];
  const body = rowsOf(PATH, BODY_LIMITS, [
    ["bodyLengthMm", "length", t.number.bodyLength],
    ["bodyWidthMm", "length", t.number.bodyWidth],
    ["axleFromRearMm", "length", t.number.axleFromRear],
  ]);
  return [...body, ...own];
}

function ownRows(kind: string): readonly QuantityRow[] | null {
  const { number } = t;
  switch (kind) {
    case "plate":
      return rowsOf(PATH, PLATE_LIMITS, [
        ["plateWidthMm", "length", number.plateWidth],
        ["plateReachMm", "length", number.plateReach],
      ]);
    case "arms":
      return rowsOf(PATH, ARMS_LIMITS, [
        ["armLengthMm", "length", number.armLength],
        ["armThicknessMm", "length", number.armThickness],
        ["armAngleDeg", "angle", number.armAngle],
      ]);
    case "hinged":
      return rowsOf(PATH, HINGED_LIMITS, [
        ["hingeAsideMm", "length", number.hingeAside],
        ["armLengthMm", "length", number.armLength],
        ["armThicknessMm", "length", number.armThickness],
        ["openAngleDeg", "angle", number.openAngle],
        ["closedAngleDeg", "angle", number.closedAngle],
        ["swingRateDegPerS", "angle", number.swingRate],
      ]);
    case "scoop":
      return rowsOf(PATH, SCOOP_LIMITS, [
        ["openingMm", "length", number.opening],
        ["depthMm", "length", number.depth],
        ["sideThicknessMm", "length", number.sideThickness],
      ]);
    default:
      return null;
  }
}
