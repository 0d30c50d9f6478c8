/** Standard coefficients: reflection, expansion, contraction, shrinking. */
const REFLECT = 1;
const EXPAND = 2;
const CONTRACT = 0.5;
const SHRINK = 0.5;

/** Edges of the simplices one after the other, times the first: near and far, to either side. */
const EDGES = [1, -0.5, 1.6, -1];

export type Point = readonly number[];

export interface SimplexOptions {
  /** Where it begins; every coordinate in [0, 1], as all of the search. */
  readonly start: Point;
  /** Edge of the first simplex. */
  readonly size: number;
  /** A simplex smaller than this has ended: the search starts over around the best point, if evaluations are left. */
  readonly smallest: number;
  /** Most points that are asked for. */
  readonly evaluations: number;
}

export interface Optimum {
  readonly point: Point;
  /** Value there; smaller is better. */
  readonly value: number;
  readonly evaluations: number;
  readonly restarts: number;
}

interface Vertex {
  readonly point: Point;
  readonly value: number;
}

/** Points to be evaluated go out, their values come back in the same order. */
export type Asking<T> = Generator<readonly Point[], T, readonly number[]>;

/**
 * Nelder and Mead's downhill simplex in the unit box, started over around its best point in another size, turned the
 * other way, whenever it has collapsed. Points outside are put on the box's edge. Uses comparisons alone: values may
 * have plateaus, and infinity where there is no value. Deterministic; whoever runs the generator does the evaluations,
 * several at once where they do not depend on each other.
 *
 * Source: Nelder and Mead, Computer J. 7 (1965) 308–313; from memory. Checked on standard functions in tests/unit/search.
 */
export function* simplexSearch(options: SimplexOptions): Asking<Optimum> {
  const { start, size, smallest, evaluations } = options;
  let used = 0;
  let restarts = 0;
  let best: Vertex = { point: start, value: Number.POSITIVE_INFINITY };
  function* ask(points: readonly Point[]): Asking<readonly Vertex[]> {
    const allowed = points.slice(0, evaluations - used);
    used += allowed.length;
    const values = allowed.length === 0 ? [] : yield allowed;
    const vertices = allowed.map((point, i) => ({ point, value: values[i] ?? Number.POSITIVE_INFINITY }));
    for (const vertex of vertices) if (vertex.value < best.value) best = vertex;
    return vertices;
  }
  while (used < evaluations) {
    const edge = size * (EDGES[restarts % EDGES.length] ?? 1);
    const first = yield* ask(firstSimplex(best.point, edge));
    if (first.length <= start.length) break;
    yield* descend([...first], smallest, ask, () => used >= evaluations);
    restarts++;
  }
  return { point: best.point, value: best.value, evaluations: used, restarts: Math.max(0, restarts - 1) };
}

type Ask = (points: readonly Point[]) => Asking<readonly Vertex[]>;

/** One simplex down to its smallest size, or until nothing may be asked any more. */
function* descend(simplex: Vertex[], smallest: number, ask: Ask, isOver: () => boolean): Asking<void> {
  while (!isOver()) {
    simplex.sort((a, b) => a.value - b.value);
    const [lowest] = simplex;
    const worst = simplex[simplex.length - 1];
    const second = simplex[simplex.length - 2];
    if (!lowest || !worst || !second || diameter(simplex) < smallest) return;
    const centre = centroid(simplex.slice(0, -1).map(({ point }) => point));
    const along = (step: number): Point =>
      centre.map((c, i) => clamped(c + step * (c - (worst.point[i] ?? 0))));
    const [reflected] = yield* ask([along(REFLECT)]);
    if (!reflected) return;
    if (reflected.value < lowest.value) {
      const [expanded] = yield* ask([along(EXPAND)]);
      simplex[simplex.length - 1] = expanded && expanded.value < reflected.value ? expanded : reflected;
    } else if (reflected.value < second.value) {
      simplex[simplex.length - 1] = reflected;
    } else {
      const outside = reflected.value < worst.value;
      const [contracted] = yield* ask([along(outside ? CONTRACT : -CONTRACT)]);
      if (contracted && contracted.value < Math.min(worst.value, reflected.value)) {
        simplex[simplex.length - 1] = contracted;
        continue;
      }
      const shrunk = yield* ask(
        simplex
          .slice(1)
          .map(({ point }) =>
            point.map((x, i) => (lowest.point[i] ?? 0) + SHRINK * (x - (lowest.point[i] ?? 0))),
          ),
      );
      simplex.splice(1, shrunk.length, ...shrunk);
    }
  }
}

/** The point and one more along each axis, turned inward where it would leave the box. */
function firstSimplex(from: Point, edge: number): readonly Point[] {
  const moved = from.map((_, axis) =>
    from.map((x, i) => {
      if (i !== axis) return x;
      return x + edge >= 0 && x + edge <= 1 ? x + edge : clamped(x - edge);
    }),
  );
  return [from, ...moved];
}

function centroid(points: readonly Point[]): readonly number[] {
  const [first = []] = points;
  return first.map((_, i) => points.reduce((sum, point) => sum + (point[i] ?? 0), 0) / points.length);
}

/** Largest extent along any axis. */
function diameter(simplex: readonly Vertex[]): number {
  const axes = simplex[0]?.point ?? [];
  return axes.reduce((most, _, i) => {
    const xs = simplex.map(({ point }) => point[i] ?? 0);
    return Math.max(most, Math.max(...xs) - Math.min(...xs));
  }, 0);
}

function clamped(x: number): number {
  return Math.min(1, Math.max(0, x));
}
