import type { Comparison } from "../../score/compare.ts";
import { routineSheetTexts } from "../../texts/english/routineSheet.ts";

/** "+4 of 100 (likely 1 to 7)", on the runs both have made; the ends are rounded outward. */
export function differenceWords({ successDifference, trials }: Comparison): string {
  if (trials === 0) return routineSheetTexts.notCompared;
  const { value, low, high } = successDifference;
  const sign = (whole: number) => (whole > 0 ? `+${whole}` : whole < 0 ? `−${-whole}` : "0");
  const rounded = sign(Math.round(100 * value));
  return routineSheetTexts.difference(
    rounded === "0" ? "±0" : rounded,
    sign(Math.floor(100 * low)),
    sign(Math.ceil(100 * high)),
  );
}

/** Whether the same runs tell the two apart. */
export function tellsApart({ better }: Comparison): string {
  if (better === "first") return routineSheetTexts.surelyBetter;
  return better === "second" ? routineSheetTexts.surelyWorse : routineSheetTexts.tooClose;
}
