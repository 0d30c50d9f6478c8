import { expect, it } from "vitest";
import { nearestWord } from "../../../src/model/suggest.ts";

const keys = ["widthMm", "heightMm", "headingDeg", "topSpeedMmPerS", "wall", "walls", "massKg", "ground"];

it.each([
  ["widthmm", "widthMm"],
  ["width", "widthMm"],
  ["widthCm", "widthMm"],
  ["hieghtMm", "heightMm"],
  ["headingRad", "headingDeg"],
  ["topSpeed", "topSpeedMmPerS"],
  ["topSpeedMPerS", "topSpeedMmPerS"],
  ["massG", "massKg"],
  ["Walls", "walls"],
  ["gruond", "ground"],
])("%s: did you mean %s?", (typed, meant) => {
  expect(nearestWord(typed, keys)).toBe(meant);
});

it.each([["colour"], ["x"], [""], ["depthMm"], ["q".repeat(100_000)]])("%.10s is near nothing", (typed) => {
  expect(nearestWord(typed, keys)).toBeUndefined();
});

it("takes two swapped neighbours for one slip, in a short word too", () => {
  expect(nearestWord("sede", ["seed", "side"])).toBe("seed");
  expect(nearestWord("dorp", ["drop"])).toBe("drop");
  expect(nearestWord("pord", ["drop"])).toBeUndefined();
});
