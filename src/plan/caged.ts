import { cagesBalls } from "../model/arms.ts";
import { ballsOf } from "../model/project.ts";
import { patternTexts } from "../texts/english/pattern.ts";
import { CARRIED_LANES } from "./carriedLanes.ts";
import { coded, type Family, type Variant } from "./family.ts";
import { HERD } from "./herd.ts";

/**
 * For arms that swing: hooks and lanes whose catch is caged through every corner. With open arms along the walls, closed before
 * the robot turns, opened again after it, so that turns need not be slow and lose nothing; open for the push onto the wedge and
 * on the way back, so that nothing is taken off it again.
 */
export const CAGED: Family = {
  id: "cage",
  get pattern() {
    return patternTexts.names.cage;
  },
  needs: {
    fits: (project) => cagesBalls(project.robot, ballsOf(project)),
    get reason() {
      return patternTexts.cageNeeds;
    },
  },
  variants: [
    ...HERD.variants.map((each) => caged(each, "hooks", () => patternTexts.hooks)),
    ...CARRIED_LANES.variants.map((each) => caged(each, "lanes", () => patternTexts.lanes)),
  ],
};

function caged(of: Variant, code: string, say: () => string): Variant {
  return {
    ...of,
    code: coded(code, of.code),
    get label() {
      return `${say()}, ${of.label}`;
    },
    params: { ...of.params, way: code },
    runs: (scene, dials) => of.runs(scene, dials).map((run) => ({ ...run, cage: true })),
  };
}
