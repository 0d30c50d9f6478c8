export type GeometryErrorCode =
  | "not-finite"
  | "out-of-range"
  | "too-few-vertices"
  | "odd-length"
  | "no-points";

/** A caller's bug: an outline or a distance that no geometry can be done with. */
export class GeometryError extends Error {
  readonly code: GeometryErrorCode;

  constructor(code: GeometryErrorCode, message: string) {
    super(message);
    this.name = "GeometryError";
    this.code = code;
  }
}
