import { outlineTexts as t } from "../../texts/english/outline.ts";
import { lengthText } from "../../texts/lengths.ts";

/** Where a corner of an outline lies. Numbered as a person counts. */
export function cornerWords(index: number, xMm: number, yMm: number): string {
  const along = (xMm < 0 ? t.placeBehind : t.placeAhead)(lengthText(Math.abs(xMm)));
  const across = (yMm < 0 ? t.placeRight : t.placeLeft)(lengthText(Math.abs(yMm)));
  return [t.corner(index + 1), along, yMm === 0 ? t.placeMiddle : across].join(", ");
}

/** Share by which the wheels marked in a photo may miss the drive's gauge: a hand's care. */
const NEAR_FRAC = 0.05;

/** The marked wheels against what the drive says, and what may be wrong where they differ. */
export function gaugeWords(markedMm: number, gaugeMm: number): string {
  const near = Math.abs(markedMm - gaugeMm) <= NEAR_FRAC * gaugeMm;
  return (near ? t.gaugeNear : t.gaugeFar)(lengthText(markedMm), lengthText(gaugeMm));
}
