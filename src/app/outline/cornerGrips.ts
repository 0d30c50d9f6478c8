import type { PointMm } from "../../model/zone.ts";
import { outlineTexts as t } from "../../texts/english/outline.ts";
import type { Handle } from "../drawing/handle.ts";
import { cornerWords } from "../words/outlineWords.ts";
import { type Traced, withPointAt, withPointInserted } from "./outlineForm.ts";

export interface CornerGrip extends Handle {
  readonly kind: "corner" | "add";
  /** Of the corner, or of the edge on which a corner is added. */
  readonly index: number;
}

export function cornerId(index: number): string {
  return `corner-${index}`;
}

/** What can be dragged of an outline: its corners, and between them the places where one can be added. */
export function cornerGrips(traced: Traced, points: readonly PointMm[]): readonly CornerGrip[] {
  return points.flatMap((at, index): readonly CornerGrip[] => {
    const next = points[(index + 1) % points.length] ?? at;
    return [
      {
        kind: "corner",
        index,
        id: cornerId(index),
        words: cornerWords(index, at.xMm, at.yMm),
        at,
        axis: "both",
        look: "grip",
        move: (form, to) => withPointAt(form, traced, index, to),
      },
      {
        kind: "add",
        index,
        id: `add-${index}`,
        words: t.between(index + 1, ((index + 1) % points.length) + 1),
        at: { xMm: (at.xMm + next.xMm) / 2, yMm: (at.yMm + next.yMm) / 2 },
        axis: "both",
        look: "add",
        // A key or a button adds a corner there, too.
        roomMm: Math.hypot(next.xMm - at.xMm, next.yMm - at.yMm),
        becomes: cornerId(index + 1),
        move: (form, to) => withPointInserted(form, traced, index, to),
      },
    ];
  });
}
