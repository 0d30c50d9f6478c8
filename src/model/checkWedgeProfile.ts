import type { Issue } from "./issue.ts";
import { mm } from "./lengthText.ts";
import type { Wedge } from "./zone.ts";

/** Whether lip, rise and run make the profile that the wedge is said to have (see `Wedge`). One issue at most. */
export function checkWedgeProfile(wedge: Wedge): readonly Issue[] {
  const { profile, lipMm, riseMm } = wedge;
  switch (profile) {
    case "flat":
      return checkFlat(wedge);
    case "ramp": {
      const message = "A ramp rises from its lip to the corner: its rise must be above its lip.";
      return riseMm > lipMm ? [] : fault("riseMm", message, riseMm, `above ${mm(lipMm)}`);
    }
    case "shelf":
      return checkShelf(wedge);
    case "tray": {
      const message = "A tray falls from its lip toward the corner: its rise must be below its lip.";
      return riseMm < lipMm ? [] : fault("riseMm", message, riseMm, `below ${mm(lipMm)}`);
    }
    default:
      return profile satisfies never;
  }
}

function checkFlat({ lipMm, riseMm }: Wedge): readonly Issue[] {
  if (lipMm > 0) {
    const message = "A flat wedge is a mark without a lip; take the lip out or choose a shelf.";
    return fault("lipMm", message, lipMm, "0 mm");
  }
  const message = "A flat wedge has no rise; take it out or choose a ramp.";
  return riseMm > 0 ? fault("riseMm", message, riseMm, "0 mm") : [];
}

function checkShelf({ legXMm, legYMm, lipMm, riseMm, runMm }: Wedge): readonly Issue[] {
  if (riseMm < lipMm) {
    const message = "A shelf does not fall from its lip; for that choose a tray.";
    return fault("riseMm", message, riseMm, `at least ${mm(lipMm)}`);
  }
  if (riseMm > lipMm && runMm <= 0) {
    const message =
      "The shelf rises over no distance; give the length of its ramp, or make the lip as high as the rise.";
    return fault("runMm", message, runMm, "above 0 mm");
  }
  // From the long side to the corner.
  const depth = (legXMm * legYMm) / Math.sqrt(legXMm * legXMm + legYMm * legYMm);
  const message = "The shelf's ramp is longer than the wedge is deep; shorten it.";
  return runMm < depth ? [] : fault("runMm", message, runMm, `below ${mm(depth)}`);
}

function fault(key: string, message: string, got: number, expected: string): readonly Issue[] {
  return [{ code: "wedge-profile", path: `zone.wedge.${key}`, message, got: mm(got), expected }];
}
