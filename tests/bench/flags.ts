/** The whole number given as `--name=N` when the benchmark was started, or `usual`. */
export function numberFlag(name: string, usual: number): number {
  const start = `--${name}=`;
  const word = process.argv.find((each) => each.startsWith(start));
  if (word === undefined) return usual;
  const value = Number(word.slice(start.length));
  if (!Number.isSafeInteger(value) || value < 1) throw new RangeError(`${word}: a whole number ≥ 1`);
  return value;
}
