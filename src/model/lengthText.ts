import { plain } from "../texts/numbers.ts";

/** A length for people: two digits after the point, where they are needed. */
export function mm(length: number): string {
  return `${plain(Math.round(length * 100) / 100)} mm`;
}
