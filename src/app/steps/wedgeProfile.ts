import type { WedgeProfile } from "../../model/zone.ts";
import { type Form, valueAt, withValue } from "../project/form.ts";

const WEDGE = "zone.wedge";
/** What stands there until someone measures: a low edge that a ball climbs. */
const LIP_MM = 1;
const RISE_MM = 5;
const RUN_MM = 20;

/**
 * The form with another profile, and with heights that make it one: a flat mark has none, and where the heights of the profile before
 * will not do, low ones stand in. So a choice alone never makes a zone unsound whose heights were sound.
 */
export function withProfile(form: Form, profile: WedgeProfile): Form {
  const heights = { lipMm: lengthAt(form, "lipMm"), riseMm: lengthAt(form, "riseMm") };
  const changes = { profile, ...heights, ...changedHeights(form, profile, heights) };
  return Object.entries(changes).reduce(
    (changed, [key, value]) => withValue(changed, `${WEDGE}.${key}`, value),
    form,
  );
}

interface Heights {
  readonly lipMm: number;
  readonly riseMm: number;
}

function changedHeights(form: Form, profile: WedgeProfile, { lipMm, riseMm }: Heights): object {
  switch (profile) {
    case "flat":
      return { lipMm: 0, riseMm: 0 };
    case "ramp":
      return riseMm > lipMm ? {} : { riseMm: lipMm + RISE_MM };
    case "shelf": {
      if (lipMm === 0 && riseMm === 0) return { lipMm: LIP_MM, riseMm: RISE_MM, runMm: RUN_MM };
      const runMm = Math.max(lengthAt(form, "runMm"), RUN_MM);
      return riseMm < lipMm ? { riseMm: lipMm, runMm } : { runMm };
    }
    case "tray":
      return riseMm < lipMm ? {} : { lipMm: Math.max(lipMm, LIP_MM), riseMm: 0 };
    default:
      return profile satisfies never;
  }
}

function lengthAt(form: Form, key: string): number {
  const value = valueAt(form, `${WEDGE}.${key}`);
  return typeof value === "number" ? value : 0;
}
