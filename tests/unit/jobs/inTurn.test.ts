import { expect, test } from "vitest";
import { inTurn } from "../../../src/jobs/inTurn.ts";

const pause = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 0));

test("works on everything in order, with no more at once than allowed", async () => {
  const begun: number[] = [];
  let running = 0;
  let most = 0;
  await inTurn(
    [5, 6, 7, 8, 9],
    async (item) => {
      begun.push(item);
      most = Math.max(most, ++running);
      await pause();
      running--;
    },
    2,
  );
  expect(begun).toEqual([5, 6, 7, 8, 9]);
  expect([running, most]).toEqual([0, 2]);
});

test("begins nothing new after a failure, and tells it", async () => {
  const begun: number[] = [];
  const work = async (item: number): Promise<void> => {
    begun.push(item);
    await pause();
    if (item === 1) throw new Error("no luck");
  };
  await expect(inTurn([0, 1, 2, 3, 4, 5, 6], work, 2)).rejects.toThrow("no luck");
  await pause();
  expect(begun.length).toBeLessThan(5);
});

test("of nothing is done at once", async () => {
  await expect(inTurn([], async () => {})).resolves.toBeUndefined();
});
