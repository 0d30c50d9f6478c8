/** One figure of a benchmark. */
export interface BenchRow {
  readonly what: string;
  /** The median. */
  readonly value: number;
  readonly unit: string;
  readonly rounds: number;
  readonly lowest: number;
  readonly highest: number;
}

/** @param values one for each round, at least one */
export function rowOf(what: string, unit: string, values: readonly number[]): BenchRow {
  const ordered = [...values].sort((a, b) => a - b);
  const at = (place: number): number => ordered[Math.min(ordered.length - 1, Math.floor(place))] ?? 0;
  const middle = (at((ordered.length - 1) / 2) + at(ordered.length / 2)) / 2;
  const highest = at(ordered.length - 1);
  return { what, value: middle, unit, rounds: ordered.length, lowest: at(0), highest };
}

/** Seconds a piece of work takes. */
export function secondsOf(work: () => void): number {
  const start = performance.now();
  work();
  return (performance.now() - start) / 1000;
}

/** Seconds of processor time a piece of work takes, collection of garbage included: what it costs on a machine that does other things as well. */
export function cpuSecondsOf(work: () => void): number {
  const before = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1e6;
}
