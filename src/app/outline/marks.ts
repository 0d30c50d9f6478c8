import type { PointMm } from "../../model/zone.ts";
import type { Scaled } from "../drawing/handle.ts";

/** A place in a photo: its points from the left and, unlike on a screen, from below. */
export interface PhotoPoint {
  readonly x: number;
  readonly y: number;
}

/** What a team marks in a photo of its robot from above, so that the photo lies under the outline in size and direction. */
export interface Marks {
  /** Both ends of something whose length is known. */
  readonly ruler: readonly [PhotoPoint, PhotoPoint];
  /** That length. */
  readonly trueMm: number;
  /** Middles of the left and of the right driven wheel: the axle. */
  readonly wheels: readonly [PhotoPoint, PhotoPoint];
  /** The photo shows the robot from below, or as in a mirror. */
  readonly mirrored: boolean;
}

export type MarkId = "ruler-0" | "ruler-1" | "wheel-0" | "wheel-1";

export const MARK_IDS: readonly MarkId[] = ["ruler-0", "ruler-1", "wheel-0", "wheel-1"];

/** Marks nearer to each other say nothing about a scale or a direction, photo points. */
const LEAST_APART = 10;

export const TRUE_MM = { min: 10, max: 5000 } as const;

/** For a robot that stands upright in the middle of the photo, as long as it is. */
export function firstMarks(widthPx: number, heightPx: number, lengthMm: number): Marks {
  const at = (x: number, y: number): PhotoPoint => ({
    x: Math.round(x * widthPx),
    y: Math.round(y * heightPx),
  });
  return {
    ruler: [at(0.5, 0.15), at(0.5, 0.85)],
    trueMm: Math.min(TRUE_MM.max, Math.max(TRUE_MM.min, Math.round(lengthMm))),
    wheels: [at(0.35, 0.4), at(0.65, 0.4)],
    mirrored: false,
  };
}

export function markAt(marks: Marks, id: MarkId): PhotoPoint {
  const pair = id.startsWith("ruler") ? marks.ruler : marks.wheels;
  return id.endsWith("0") ? pair[0] : pair[1];
}

/** With one mark elsewhere; null where it would lie on its partner. */
export function withMark(marks: Marks, id: MarkId, to: PhotoPoint): Marks | null {
  const key = id.startsWith("ruler") ? "ruler" : "wheels";
  const [first, second] = marks[key];
  const pair = id.endsWith("0") ? ([to, second] as const) : ([first, to] as const);
  return apart(pair) < LEAST_APART ? null : { ...marks, [key]: pair };
}

/** Turned around: what was the left wheel is the right one. */
export function turnedAround(marks: Marks): Marks {
  return { ...marks, wheels: [marks.wheels[1], marks.wheels[0]] };
}

export function mmPerPoint(marks: Marks): number {
  return marks.trueMm / apart(marks.ruler);
}

/** Distance between the marked wheels. */
export function markedGaugeMm(marks: Marks): number {
  return apart(marks.wheels) * mmPerPoint(marks);
}

function apart([a, b]: readonly [PhotoPoint, PhotoPoint]): number {
  return Math.hypot(b.x - a.x, b.y - a.y);
}

/** The robot's axes in the photo: its axle's middle, and unit vectors forward and to the left. */
export function robotAxes({ wheels: [left, right], mirrored }: Marks) {
  const length = apart([left, right]);
  const toLeft = { x: (left.x - right.x) / length, y: (left.y - right.y) / length };
  // Seen from above, forward is a quarter turn clockwise from left; from below it is the other way round.
  const sign = mirrored ? -1 : 1;
  const forward = { x: sign * toLeft.y, y: 0 - sign * toLeft.x };
  return { origin: { x: (left.x + right.x) / 2, y: (left.y + right.y) / 2 }, forward, toLeft };
}

/** A place of the photo in the robot's frame. */
export function robotFromPhoto(marks: Marks, { x, y }: PhotoPoint): PointMm {
  const { origin, forward, toLeft } = robotAxes(marks);
  const scale = mmPerPoint(marks);
  const dx = x - origin.x;
  const dy = y - origin.y;
  return {
    xMm: scale * (forward.x * dx + forward.y * dy),
    yMm: scale * (toLeft.x * dx + toLeft.y * dy),
  };
}

/** CSS matrix that lays an image of its own size, its corner at the sheet's, under a drawing of the robot. */
export function photoMatrix(marks: Marks, heightPx: number, view: Scaled): string {
  const { forward, toLeft } = robotAxes(marks);
  const scale = mmPerPoint(marks) * view.scalePxPerMm;
  const corner = robotFromPhoto(marks, { x: 0, y: heightPx });
  const shift = [view.x(corner.xMm), view.y(corner.yMm)];
  // One point to the right in the photo, and one down.
  const right = [scale * forward.x, 0 - scale * toLeft.x];
  const down = [0 - scale * forward.y, scale * toLeft.y];
  return `matrix(${[...right, ...down, ...shift].join(", ")})`;
}
