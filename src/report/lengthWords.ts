/** "12.3 s" */
export function secondsWords(timeS: number): string {
  return `${timeS.toFixed(1)} s`;
}

/** "640 mm", whole millimetres; no minus zero. */
export function millimetresWords(lengthMm: number): string {
  return `${Math.round(lengthMm) + 0} mm`;
}

/** "90°", halves kept. */
export function degreesWords(angleRad: number): string {
  const degrees = Math.round((angleRad * 1800) / Math.PI) / 10;
  return `${degrees + 0}°`;
}

/** "1 ball", "3 balls" */
export function countWords(count: number, one: string, many = `${one}s`): string {
  return `${count} ${count === 1 ? one : many}`;
}

/** "1, 2 and 5" */
export function listWords(items: readonly string[]): string {
  if (items.length < 2) return items.join("");
  return `${items.slice(0, -1).join(", ")} and ${items.at(-1)}`;
}
