import type { LimitTable, NumberLimits } from "../../model/limits.ts";
import type { QuantityKind } from "../words/quantity.ts";

/** What a number is called, and what it does to the outcome. */
export interface NumberText {
  readonly label: string;
  readonly why: string;
}

/** One number of a form. */
export interface QuantityRow {
  /** Of the number in the project's file. */
  readonly path: string;
  readonly kind: QuantityKind;
  readonly text: NumberText;
  /** Shown where the form leaves the number out. */
  readonly fallback?: number | undefined;
  /** From the file's number to the one shown, and back. */
  readonly toShown?: (value: number) => number;
  readonly fromShown?: (value: number) => number;
}

/** Rows of one object of the file; what may be left out is shown as the limits say. */
export function rowsOf<T extends LimitTable>(
  path: string,
  limits: T,
  rows: readonly (readonly [key: keyof T & string, kind: QuantityKind, text: NumberText])[],
): readonly QuantityRow[] {
  return rows.map(([key, kind, text]) => {
    const { fallback }: NumberLimits = limits[key] ?? { min: 0, max: 0, unit: "" };
    return { path: `${path}.${key}`, kind, text, fallback };
  });
}

/** A share shown as what it makes of a whole: 0.5 % as 5 mm in a metre. */
export function shareOf(row: QuantityRow, whole: number): QuantityRow {
  return {
    ...row,
    toShown: (share) => share * whole,
    fromShown: (shown) => Number((shown / whole).toPrecision(12)),
  };
}
