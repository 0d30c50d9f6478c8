import { afterEach, expect, it } from "vitest";
import type { Fix } from "../../../src/jobs/fixes.ts";
import { calibrate } from "../../../src/practice/calibrate.ts";
import { readMeasurements } from "../../../src/practice/measurements.ts";
import { calibrationFigures, fixFigures, haveSameNumbers } from "../../../src/report/decisionFigures.ts";
import { speak } from "../../../src/texts/language.ts";
import { shippedProject } from "../../support/projectFiles.ts";

const { drive } = shippedProject().robot;
const rate = { value: 0.52, low: 0.484, high: 0.556, trials: 600 };
const fix: Omit<Fix, "title"> = {
  ...{ id: "softer", about: "pusher", ballsGain: 0.1, verdict: "helps", costsS: -3.25, trials: 600 },
  gain: { value: 0.061, low: 0.04, high: 0.08 },
};
const list = {
  status: "done",
  trials: 600,
  successRate: rate,
  fixes: [],
  leftOut: [],
  worths: null,
  dependence: null,
} as const;

function figuresOf(table: string, title: string): readonly string[] {
  const read = readMeasurements(table);
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  return [...calibrationFigures(calibrate(read.value, drive)), ...fixFigures({ ...fix, title }, list)];
}

const TABLE = "turn;900;871;10\nturn;900;869,5;10\nstraight;1000;981,5;-4\nstraight;1000;984;2\n";

afterEach(() => speak("en"));

it("figures said in two languages hold the same numbers, those of other results do not", async () => {
  const english = figuresOf(TABLE, "a softer pusher: bounce 0.2 less");
  await speak("de");
  const german = figuresOf(TABLE, "ein weicherer Schieber: Rückprall 0,2 weniger");
  expect(german.filter((figure, i) => figure === english[i])).toEqual([]);
  expect(german.join(" ")).toContain("−");
  expect(haveSameNumbers(german, english)).toBe(true);
  expect(haveSameNumbers(figuresOf(TABLE.replace("871", "872"), "0,2"), english)).toBe(false);
});
