import type { PointMm } from "../../model/zone.ts";
import type { Form } from "../project/form.ts";

/** Something on the drawing that can be dragged, or moved with the arrow keys. */
export interface Handle {
  /** Stable while the thing exists. */
  readonly id: string;
  /** What it is and where it stands, for people who do not see the drawing. */
  readonly words: string;
  readonly at: PointMm;
  /** Ways it can go. */
  readonly axis: "x" | "y" | "both";
  /** grip: on an edge or a point; body: the thing itself; ghost: a thing that is drawn already. */
  readonly look: "grip" | "body" | "ghost";
  /** The form after the thing has been moved to a place; whether that can be is for the check to say. */
  readonly move: (form: Form, to: PointMm) => Form;
}

/** Dragged lengths are whole multiples of this, mm: nobody measures a floor finer. */
export const SNAP_MM = 5;

export function snap(lengthMm: number): number {
  return Math.round(lengthMm / SNAP_MM) * SNAP_MM;
}
