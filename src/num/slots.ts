/**
 * Sizes of the engine's arrays, larger than what is in them: V8 keeps an array of up to 64 bytes on its moving heap, where
 * compiled code must look up its place at every access; that of a larger one is a constant of the code. Trials take 4 % less
 * time (ten patterns in turns with the arrays as small as they could be, 18 rounds, the fastest of each).
 */

/** Entries of an array with a place for each ball, and one that playing back borrows. */
export const SLOTS = 72;
/** Entries of an array of doubles that hands a few numbers over. */
export const SCRATCH = 9;
