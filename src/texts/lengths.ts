import { plain } from "./numbers.ts";

/** How lengths are said: as the page was told to, millimetres until then. Sums and files stay in millimetres. */
export type LengthUnit = "mm" | "cm";

let unit: LengthUnit = "mm";

/** Says lengths in this unit from now on; what was already said stays as it is. */
export function sayLengthsIn(wanted: LengthUnit): void {
  unit = wanted;
}

/**
 * "640 mm" or "64 cm", no minus zero.
 * @param decimals kept of millimetres at most
 */
export function lengthText(lengthMm: number, decimals = 0): string {
  return `${said(Number(lengthMm.toFixed(decimals)), decimals)} ${unit}`;
}

/** "900 × 1200 mm" or "90 × 120 cm" */
export function sizeText(widthMm: number, heightMm: number): string {
  return `${said(Math.round(widthMm), 0)} × ${lengthText(heightMm)}`;
}

/** "250 mm/s" or "25 cm/s", rounded down: a limit. */
export function speedText(mmPerS: number): string {
  return `${said(Math.floor(mmPerS), 0)} ${unit}/s`;
}

function said(mm: number, decimals: number): string {
  return plain(unit === "mm" ? mm : Number((mm / 10).toFixed(decimals + 1)));
}
