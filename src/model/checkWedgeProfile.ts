import { issueTexts } from "../texts/english/issue.ts";
import { zoneIssueTexts as t } from "../texts/english/zoneIssue.ts";
import type { Issue } from "./issue.ts";
import { mm } from "./lengthText.ts";
import type { Wedge } from "./zone.ts";

/** Whether lip, rise and run make the profile that the wedge is said to have (see `Wedge`). One issue at most. */
export function checkWedgeProfile(wedge: Wedge): readonly Issue[] {
  const { profile, lipMm, riseMm } = wedge;
  switch (profile) {
    case "flat":
      return checkFlat(wedge);
    case "ramp":
      return riseMm > lipMm ? [] : fault("riseMm", t.ramp, riseMm, issueTexts.above(mm(lipMm)));
    case "shelf":
      return checkShelf(wedge);
    case "tray":
      return riseMm < lipMm ? [] : fault("riseMm", t.tray, riseMm, issueTexts.below(mm(lipMm)));
    default:
      return profile satisfies never;
  }
}

function checkFlat({ lipMm, riseMm }: Wedge): readonly Issue[] {
  if (lipMm > 0) return fault("lipMm", t.flatLip, lipMm, mm(0));
  return riseMm > 0 ? fault("riseMm", t.flatRise, riseMm, mm(0)) : [];
}

function checkShelf({ legXMm, legYMm, lipMm, riseMm, runMm }: Wedge): readonly Issue[] {
  if (riseMm < lipMm) return fault("riseMm", t.shelfFalls, riseMm, issueTexts.atLeast(mm(lipMm)));
  if (riseMm > lipMm && runMm <= 0) return fault("runMm", t.shelfJumps, runMm, issueTexts.above(mm(0)));
  // From the long side to the corner.
  const depth = (legXMm * legYMm) / Math.sqrt(legXMm * legXMm + legYMm * legYMm);
  return runMm < depth ? [] : fault("runMm", t.shelfTooLong, runMm, issueTexts.below(mm(depth)));
}

function fault(key: string, message: string, got: number, expected: string): readonly Issue[] {
  return [{ code: "wedge-profile", path: `zone.wedge.${key}`, message, got: mm(got), expected }];
}
