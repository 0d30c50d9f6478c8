import type { PointMm } from "../../model/zone.ts";
import { type Form, valueAt, withValue } from "../project/form.ts";

/** Where an outline stands in a project's form: its points, and the list of its pusher edges, if it has one. */
export interface Traced {
  readonly points: string;
  readonly pushers: string | null;
}

/** At ball height: what touches balls. */
export const FOOTPRINT: Traced = { points: "robot.shape.outlineMm", pushers: "robot.shape.pusherEdges" };
/** On the floor: tracks and whatever is low. */
export const GROUND: Traced = { points: "robot.ground.outlineMm", pushers: null };

/** The points of an outline; null where what stands there is none, because something else was typed. */
export function pointsAt(form: Form, { points }: Traced): readonly PointMm[] | null {
  const list = valueAt(form, points);
  if (!Array.isArray(list)) return null;
  const read = list.map((entry: unknown): PointMm | null => {
    if (!Array.isArray(entry)) return null;
    const [x, y]: readonly unknown[] = entry;
    return typeof x === "number" && typeof y === "number" ? { xMm: x, yMm: y } : null;
  });
  return read.every((point) => point !== null) ? read : null;
}

/** Numbers of the edges meant to touch balls; edge i runs from point i to the next. */
export function pushersAt(form: Form, { pushers }: Traced): readonly number[] {
  const list = pushers === null ? [] : valueAt(form, pushers);
  return Array.isArray(list) ? list.filter((edge) => Number.isInteger(edge)) : [];
}

export function withPointAt(form: Form, { points }: Traced, index: number, to: PointMm): Form {
  return withValue(form, `${points}[${index}]`, [to.xMm, to.yMm]);
}

/** Puts a point on an edge: both halves are of the edge's sort. */
export function withPointInserted(form: Form, traced: Traced, edge: number, to: PointMm): Form {
  const points = pointsAt(form, traced) ?? [];
  const pushers = pushersAt(form, traced).flatMap((each) => {
    if (each === edge) return [each, each + 1];
    return each > edge ? [each + 1] : [each];
  });
  return written(form, traced, [...points.slice(0, edge + 1), to, ...points.slice(edge + 1)], pushers);
}

/** Takes a point out: its two edges become one, a pusher if either was. */
export function withoutPoint(form: Form, traced: Traced, index: number): Form {
  const points = pointsAt(form, traced) ?? [];
  const merged = (index + points.length - 1) % points.length;
  const renumbered = pushersAt(form, traced).map((edge) => (edge === index ? merged : edge));
  const pushers = renumbered.map((edge) => (edge > index ? edge - 1 : edge));
  return written(
    form,
    traced,
    points.filter((_, i) => i !== index),
    [...new Set(pushers)],
  );
}

export function withPusher(form: Form, traced: Traced, edge: number, pushes: boolean): Form {
  const others = pushersAt(form, traced).filter((each) => each !== edge);
  return written(form, traced, pointsAt(form, traced) ?? [], pushes ? [...others, edge] : others);
}

/** @param edges true for each edge that touches balls */
export function withOutline(
  form: Form,
  traced: Traced,
  points: readonly PointMm[],
  edges: readonly boolean[],
): Form {
  const pushers = edges.flatMap((pushes, edge) => (pushes ? [edge] : []));
  return written(form, traced, points, pushers);
}

function written(form: Form, traced: Traced, points: readonly PointMm[], pushers: readonly number[]): Form {
  const next = withValue(
    form,
    traced.points,
    points.map(({ xMm, yMm }) => [xMm, yMm]),
  );
  if (traced.pushers === null) return next;
  return withValue(
    next,
    traced.pushers,
    [...pushers].sort((a, b) => a - b),
  );
}
