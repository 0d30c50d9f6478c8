import { fieldTexts } from "../../texts/english/field.ts";
import type { LengthUnit } from "../../texts/lengths.ts";
import { plain } from "../../texts/numbers.ts";

/** What a typed number can be of. */
export type QuantityKind = "length" | "angle" | "speed" | "mass" | "time" | "temperature" | "share" | "plain";

interface Unit {
  readonly name: string;
  /** Multiplied with the shown number it gives the file's. */
  readonly factor: number;
}

const MM: Unit = { name: "mm", factor: 1 };
const CM: Unit = { name: "cm", factor: 10 };

const UNITS: Readonly<Record<QuantityKind, readonly Unit[]>> = {
  length: [MM, CM, { name: "m", factor: 1000 }],
  angle: [
    { name: "°", factor: 1 },
    { name: "deg", factor: 1 },
    { name: "degrees", factor: 1 },
  ],
  speed: [
    { name: "mm/s", factor: 1 },
    { name: "cm/s", factor: 10 },
    { name: "m/s", factor: 1000 },
  ],
  mass: [
    { name: "g", factor: 0.001 },
    { name: "kg", factor: 1 },
  ],
  time: [
    { name: "s", factor: 1 },
    { name: "min", factor: 60 },
  ],
  temperature: [
    { name: "°C", factor: 1 },
    { name: "C", factor: 1 },
    { name: "°", factor: 1 },
  ],
  share: [{ name: "%", factor: 0.01 }],
  plain: [{ name: "", factor: 1 }],
};

/** The unit a field shows. */
export function shownUnit(kind: QuantityKind, lengths: LengthUnit): string {
  return unitOf(kind, lengths).name;
}

function unitOf(kind: QuantityKind, lengths: LengthUnit): Unit {
  if (kind === "length") return lengths === "cm" ? CM : MM;
  if (kind === "speed") return UNITS.speed[lengths === "cm" ? 1 : 0] ?? MM;
  return UNITS[kind][0] ?? MM;
}

/** The file's number as a field shows it, without its unit: at most 4 decimals. */
export function quantityText(value: number, kind: QuantityKind, lengths: LengthUnit): string {
  return plain(Math.round((value / unitOf(kind, lengths).factor) * 1e4) / 1e4).replace("−", "-");
}

/**
 * What was typed as the file's number: "90 cm", "0.9 m", "900" and "12,5" are all read. Without a unit the shown one counts.
 * @returns null when it is no number of this kind
 */
export function readQuantity(text: string, kind: QuantityKind, lengths: LengthUnit): number | null {
  const match = /^\s*([-−+]?(?:\d+(?:[.,]\d*)?|[.,]\d+))\s*(\S*)\s*$/.exec(text);
  if (!match) return null;
  const [, digits = "", name = ""] = match;
  const unit = name === "" ? unitOf(kind, lengths) : UNITS[kind].find((each) => each.name === name);
  const value = Number(digits.replace("−", "-").replace(",", "."));
  if (!unit || !Number.isFinite(value)) return null;
  // Rounded to 12 digits, so that 0.7 m is 700 mm and not a hair beside it.
  return Number((value * unit.factor).toPrecision(12)) + 0;
}

/** What a field wants, for a sentence: "a length, like 900, 90 cm or 0.9 m". */
export function quantityExample(kind: QuantityKind): string {
  return fieldTexts.wanted[kind];
}
