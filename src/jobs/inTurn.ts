/** Most tasks of one job that wait in the pool at a time: enough for any number of workers, and few enough for the longest job's memory. */
const AT_ONCE = 256;

/** Does work on items in their order, some of them side by side. The first failure ends it, and is what it rejects with. */
export async function inTurn<T>(
  items: Iterable<T>,
  work: (item: T) => Promise<void>,
  atOnce = AT_ONCE,
): Promise<void> {
  const left = items[Symbol.iterator]();
  let failed = false;
  const lane = async (): Promise<void> => {
    for (let next = left.next(); !next.done && !failed; next = left.next()) {
      try {
        await work(next.value);
      } catch (reason) {
        failed = true;
        throw reason;
      }
    }
  };
  await Promise.all(Array.from({ length: atOnce }, lane));
}
