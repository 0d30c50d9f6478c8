/** A length for people: two digits after the point, where they are needed. */
export function mm(length: number): string {
  return `${Math.round(length * 100) / 100} mm`;
}
