import { fixed, plain } from "../texts/numbers.ts";

/** "12.3 s" */
export function secondsWords(timeS: number): string {
  return `${fixed(timeS, 1)} s`;
}

/** "90°", halves kept. */
export function degreesWords(angleRad: number): string {
  const degrees = Math.round((angleRad * 1800) / Math.PI) / 10;
  return `${plain(degrees)}°`;
}

/** "1 ball", "3 balls" */
export function countWords(count: number, one: string, many = `${one}s`): string {
  return `${count} ${count === 1 ? one : many}`;
}
