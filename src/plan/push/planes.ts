/**
 * The large arrays of a solver, one entry for each direction and place: some 12 MB for the usual zone. One set is kept for the
 * next field of the same size: fetching fresh memory costs a third of the time that a field takes (see NOTES.md).
 */
export interface Planes {
  readonly states: number;
  readonly seconds: Float32Array;
  readonly onward: Float32Array;
  readonly carried: Float32Array;
  readonly roomy: Uint8Array;
  readonly meets: Int32Array;
}

let spare: Planes | null = null;

/** Seconds are Infinity, everything else is what it happens to be. */
export function takePlanes(states: number): Planes {
  const kept = spare;
  spare = null;
  const planes = kept?.states === states ? kept : freshPlanes(states);
  planes.seconds.fill(Number.POSITIVE_INFINITY);
  planes.onward.fill(Number.POSITIVE_INFINITY);
  planes.carried.fill(Number.POSITIVE_INFINITY);
  return planes;
}

/** Gives planes back that nothing reads any more. */
export function givePlanes(planes: Planes): void {
  spare = planes;
}

function freshPlanes(states: number): Planes {
  return {
    states,
    seconds: new Float32Array(states),
    onward: new Float32Array(states),
    carried: new Float32Array(states),
    roomy: new Uint8Array(states),
    // Nearly all states can be met by one contact, few by more: what does not fit gets a list of its own.
    meets: new Int32Array(states),
  };
}
