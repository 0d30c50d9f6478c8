import { CORNERS } from "../../model/choices.ts";
import type { Corner } from "../../model/zone.ts";
import { type Form, valueAt, withValue } from "../project/form.ts";

const PATH = "rules.wedgeCorners";

/** The corners beside its own in which a run may find the wedge. */
export function otherCorners(form: Form): readonly Corner[] {
  const own = valueAt(form, "zone.wedge.corner");
  const list = valueAt(form, PATH);
  return CORNERS.filter((corner) => corner !== own && Array.isArray(list) && list.includes(corner));
}

/** With one of the other corners added or taken out; its own is always among several, and alone it is not written down. */
export function withOtherCorner(form: Form, corner: Corner, may: boolean): Form {
  const own = valueAt(form, "zone.wedge.corner");
  const others = otherCorners(form).filter((each) => each !== corner);
  const all = CORNERS.filter((each) => each === own || others.includes(each) || (may && each === corner));
  return withValue(form, PATH, all.length > 1 ? all : undefined);
}
