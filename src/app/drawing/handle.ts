import type { PointMm } from "../../model/zone.ts";
import type { Form } from "../project/form.ts";

/** Something on a drawing that can be dragged, or moved with the arrow keys. */
export interface Grip {
  /** Stable while the thing exists. */
  readonly id: string;
  /** What it is and where it stands, for people who do not see the drawing. */
  readonly words: string;
  readonly at: PointMm;
  /** Ways it can go. */
  readonly axis: "x" | "y" | "both";
  /** grip: on an edge or a point; body: the thing itself; ghost: a thing that is drawn already; add: a place where something new begins. */
  readonly look: "grip" | "body" | "ghost" | "add";
  /** Id of the grip with which a drag goes on once it has moved this one: what an "add" has made. */
  readonly becomes?: string;
  /** Room between its neighbours: where it is too narrow for a third grip, this one is not shown. */
  readonly roomMm?: number;
}

/** A grip whose move changes the project's form. */
export interface Handle extends Grip {
  /** The form after the thing has been moved to a place; whether that can be is for the check to say. */
  readonly move: (form: Form, to: PointMm) => Form;
}

/** From millimetres to the pixels of a drawing; y runs up in the first, down in the second. */
export interface Scaled {
  readonly scalePxPerMm: number;
  x(xMm: number): number;
  y(yMm: number): number;
}

/** What a drag and an arrow key go by, mm. */
export interface Steps {
  /** Dragged lengths are whole multiples of this. */
  readonly snapMm: number;
  /** One press of an arrow key; with Shift the smaller one. */
  readonly coarseMm: number;
  readonly fineMm: number;
}

/** Nobody measures a floor finer than 5 mm. */
export const FLOOR_STEPS: Steps = { snapMm: 5, coarseMm: 10, fineMm: 1 };

export function snap(lengthMm: number, stepMm: number): number {
  return Math.round(lengthMm / stepMm) * stepMm;
}

/** A place as far as an axis lets something go there. */
export function alongAxis({ axis, at }: Grip, to: PointMm): PointMm {
  return { xMm: axis === "y" ? at.xMm : to.xMm, yMm: axis === "x" ? at.yMm : to.yMm };
}
