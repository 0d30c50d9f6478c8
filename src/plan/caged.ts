import { cagesBalls } from "../model/arms.ts";
import { ballsOf } from "../model/project.ts";
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
  pattern: "Gather, cage and carry",
  needs: {
    fits: (project) => cagesBalls(project.robot, ballsOf(project)),
    reason: "Only for a robot whose arms swing shut around every ball.",
  },
  variants: [
    ...HERD.variants.map((each) => caged(each, "hooks", "hooks along the walls")),
    ...CARRIED_LANES.variants.map((each) => caged(each, "lanes", "lanes")),
  ],
};

function caged(of: Variant, code: string, words: string): Variant {
  return {
    ...of,
    code: coded(code, of.code),
    label: `${words}, ${of.label}`,
    params: { ...of.params, way: code },
    runs: (scene, dials) => of.runs(scene, dials).map((run) => ({ ...run, cage: true })),
  };
}
