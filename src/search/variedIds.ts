import type { Project } from "../model/project.ts";
import type { Point } from "./simplex.ts";
import { Tuning } from "./tuning.ts";

/** Routines made of each one of the catalogue, beside itself. */
const VARIED = 3;
/** Steps of Roberts's sequence: powers of 1/φ₄, φ₄ the root of x⁵ = x + 1; for up to four numbers that are varied. */
const STEPS = [0.856674883854503, 0.733891856627126, 0.628706721190924, 0.538597255945084];

/**
 * Ids of routines like those given with speed and dials set elsewhere: spread evenly over the boxes of what can be
 * varied, each id's points another part of the sequence. Each id once, none that was given; a zone may have no room for some.
 *
 * Source: Roberts, The unreasonable effectiveness of quasirandom sequences, 2018 (additive recurrence); from memory.
 */
export function variedIds(project: Project, ids: readonly string[]): readonly string[] {
  const varied = new Set<string>();
  let at = 0;
  for (const id of ids) {
    const tuning = Tuning.of(project, id);
    if (tuning === null) continue;
    for (let i = 0; i < VARIED; i++) varied.add(tuning.idAt(pointAt(at++, tuning.dimensions)));
  }
  for (const id of ids) varied.delete(id);
  return [...varied];
}

function pointAt(index: number, dimensions: number): Point {
  return Array.from(
    { length: dimensions },
    (_, i) => (0.5 + (index + 1) * (STEPS[i % STEPS.length] ?? 0)) % 1,
  );
}
