/** Whatever is made of plain objects, lists, texts, numbers and flags. */
type Plain = string | number | boolean | readonly Plain[] | { readonly [key: string]: Plain };

/** Lists and objects of plain entries go on one line up to this length. */
const LINE_LENGTH = 90;

/**
 * Pretty JSON with keys in the order given, ending in a line break.
 * @throws RangeError when a number is not finite.
 */
export function printJson(value: object): string {
  return `${print(value as Plain, "")}\n`;
}

function print(value: Plain, indent: string): string {
  if (typeof value === "number" && !Number.isFinite(value)) {
    throw new RangeError(`a file cannot hold ${value}; expected a finite number`);
  }
  if (typeof value !== "object") return JSON.stringify(value);
  const list = isList(value);
  const inner = `${indent}  `;
  const entries = list
    ? value.map((entry) => print(entry, inner))
    : Object.entries(value).map(([key, entry]) => `${JSON.stringify(key)}: ${print(entry, inner)}`);
  const [open, close] = list ? ["[", "]"] : ["{", "}"];
  if (entries.length === 0) return open + close;
  const gap = list ? "" : " ";
  const line = `${open}${gap}${entries.join(", ")}${gap}${close}`;
  const short = line.length + indent.length <= LINE_LENGTH && !line.includes("\n");
  if (short && (isFlat(value) || list)) return line;
  return `${open}\n${entries.map((entry) => inner + entry).join(",\n")}\n${indent}${close}`;
}

function isList(value: object): value is readonly Plain[] {
  return Array.isArray(value);
}

function isFlat(value: object): boolean {
  return Object.values(value).every((entry) => typeof entry !== "object");
}
