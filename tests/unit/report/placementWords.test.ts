import { expect, it } from "vitest";
import { kindWords, placesWords } from "../../../src/report/placementWords.ts";
import { shippedProject } from "../../support/projectFiles.ts";

const at = (...places: readonly (readonly [number, number])[]) => places.map(([xMm, yMm]) => ({ xMm, yMm }));

it("says which kind of ball lies where, if there are several kinds", () => {
  const alike = shippedProject();
  expect(kindWords(alike)).toEqual([]);
  expect(placesWords(alike, at([450.4, 90], [510, 1090], [20, 30]))).toBe("450, 90 · 510, 1090 · 20, 30");
  const [first, ...rest] = alike.balls;
  if (!first) throw new Error("no balls");
  const large = { ...first, count: 2, kind: { ...first.kind, name: "Our ball", diameterMm: 67 } };
  const mixed = { ...alike, balls: [{ ...first, count: 1 }, large, ...rest] };
  expect(kindWords(mixed)).toEqual(["Table-tennis ball (40 mm)", "Our ball (67 mm)", "Our ball (67 mm)"]);
  expect(placesWords(mixed, at([1, 2], [3, 4], [5, 6]))).toBe(
    "Table-tennis ball (40 mm): 1, 2; Our ball (67 mm): 3, 4 · 5, 6",
  );
});
