import { expect, it } from "vitest";
import { samplingWords, spreadWords } from "../../../src/report/spreadWords.ts";

it("says what the unmeasured values may do and which matters most", () => {
  const factors = [
    { factor: "faceFriction", change: 0.01, changeSe: 0.01 },
    { factor: "rollingResistance", change: -0.08, changeSe: 0.01 },
  ] as const;
  const words = spreadWords({ samplingSd: 0.01, modelSd: 0.025, modelShareFrac: 0.8, factors });
  expect(words).toContain("±4.9 of 100");
  expect(words).toContain("rolling resistance, −8.0");
});

it("says so when they hardly matter", () => {
  expect(spreadWords({ samplingSd: 0.01, modelSd: 0.001, modelShareFrac: 0.01, factors: [] })).toContain(
    "hardly",
  );
});

it("tells the doubt of few runs apart from it, as 1.96 standard deviations", () => {
  expect(samplingWords({ samplingSd: 0.02, modelSd: 0, modelShareFrac: 0, factors: [] })).toContain(
    "±3.9 of 100",
  );
});
