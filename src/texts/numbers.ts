import { numberTexts } from "./english/number.ts";

/** Digits with the decimal mark of the language spoken now and a real minus sign. */
export function spell(digits: string): string {
  return digits.replace("-", "−").replace(".", numberTexts.decimalMark);
}

/** With so many decimals, no minus zero. */
export function fixed(value: number, decimals: number): string {
  return spell((Number(value.toFixed(decimals)) + 0).toFixed(decimals));
}

/** With as few decimals as it has. */
export function plain(value: number): string {
  return spell(String(value + 0));
}

/** "1, 2 and 5" */
export function listed(items: readonly string[]): string {
  if (items.length < 2) return items.join("");
  return `${items.slice(0, -1).join(", ")} ${numberTexts.and} ${items.at(-1)}`;
}
