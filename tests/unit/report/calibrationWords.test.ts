import { expect, it } from "vitest";
import { calibrate } from "../../../src/practice/calibrate.ts";
import { readMeasurements } from "../../../src/practice/measurements.ts";
import { calibrationLines, warningWords } from "../../../src/report/calibrationWords.ts";
import { PLAIN_ROBOT } from "../../support/scene.ts";

const parsed = readMeasurements(
  "straight,1000,985,0\nstraight,1000,975,0\nturn,900,855,10\nturn,900,837,10\nrebound,400,100\nrebound,400,100",
);
if (!parsed.ok) throw new Error("the table is sound");
const found = calibrate(parsed.value, PLAIN_ROBOT.drive);
const lines = new Map(calibrationLines(found).map((line) => [line.what, line]));

it("says what was measured, how sure that is, and what it means", () => {
  expect(lines.get("distance, real over commanded")).toMatchObject({
    value: "−2.00 %",
    count: 2,
    meaning: "Told to drive 1000 mm it drives 20 mm too little.",
  });
  expect(lines.get("turn, real over commanded")).toMatchObject({
    value: "−6.00 %",
    meaning: "Told to turn by 90° it turns 5.4° too little.",
  });
  expect(lines.get("effective gauge")!.value).toBe("127.7 mm");
  expect(lines.get("bounce of the ball")).toMatchObject({ value: "0.500", range: "0.500 to 0.500" });
  expect(lines.get("right over left wheel")!.value).toBe("1.0000");
});

it("leaves out what was not measured", () => {
  expect(lines.has("rolling resistance of the ball")).toBe(false);
});

it("has words for every warning", () => {
  for (const warning of ["turns-and-squares-differ", "sides-differ", "too-few"] as const) {
    expect(warningWords(warning)).toMatch(/\.$|\?$/);
  }
});
