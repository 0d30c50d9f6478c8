import { numberTexts } from "../../texts/english/number.ts";

/** A number with at most so many decimals, none that say nothing: "36", "36.25", never "-0". */
export function numberText(value: number, decimals: number): string {
  const rounded = Number(value.toFixed(decimals));
  return String(rounded === 0 ? 0 : rounded);
}

/** The same in a sentence or a table for reading, with the decimal mark of the language spoken now. */
export function readNumber(value: number, decimals: number): string {
  return numberText(value, decimals).replace(".", numberTexts.decimalMark);
}

/**
 * Decimals of lengths (mm), angles (deg), speeds and seconds in a listing: with a hundred steps rounded so, the robot ends
 * within 0.1 mm of where the plan does.
 */
export const MM_DECIMALS = 3;
export const DEG_DECIMALS = 4;
export const SPEED_DECIMALS = 2;
export const SECONDS_DECIMALS = 3;

/** Decimals by what a number measures. */
export interface Places {
  readonly mm: number;
  readonly deg: number;
  readonly speed: number;
  readonly seconds: number;
}

export const EXACT: Places = {
  mm: MM_DECIMALS,
  deg: DEG_DECIMALS,
  speed: SPEED_DECIMALS,
  seconds: SECONDS_DECIMALS,
};

/** For the table that people read: finer than any robot drives. The listings and the CSV keep every digit. */
export const READABLE: Places = { mm: 1, deg: 1, speed: 0, seconds: 2 };
