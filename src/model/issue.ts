/** One thing wrong with a file or a flag. All of them are returned at once; nothing is thrown. */
export interface Issue {
  /** Stable, kebab-case. */
  readonly code: string;
  /** Where, like `zone.wedge.legXMm` or `balls[1].count`; "" for the whole file. */
  readonly path: string;
  /** What is wrong and how to mend it, one sentence in plain words, units included. */
  readonly message: string;
  /** What was found, printed shortly. */
  readonly got: string;
  /** What is allowed. */
  readonly expected: string;
}

export type Parsed<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly issues: readonly Issue[] };
