import { describe, expect, it } from "vitest";
import { PLACE_STATES, pushField } from "../../../src/plan/push/pushField.ts";
import { fieldAt, fieldMarks } from "../../../src/view/fieldMarks.ts";
import { shippedProject } from "../../support/projectFiles.ts";

const field = pushField(shippedProject());

describe("the marks of the map of pushes", () => {
  it("hide no pocket: wherever a place is dead or has no push, its cell says so", () => {
    for (const leastMm of [field.stepXMm, 35]) {
      const marks = fieldMarks(field, leastMm);
      const reach = Math.max(leastMm, field.stepXMm) * 1.1;
      let checked = 0;
      for (let place = 0; place < field.state.length; place++) {
        const state = PLACE_STATES[field.state[place] ?? 255];
        if (state !== "dead" && state !== "no-push") continue;
        const x = field.radiusMm + (place % field.columns) * field.stepXMm;
        const y = field.radiusMm + Math.floor(place / field.columns) * field.stepYMm;
        const near = marks.filter((m) => Math.abs(m.xMm - x) <= reach && Math.abs(m.yMm - y) <= reach);
        expect(near.some(({ kind }) => kind === state || (state === "no-push" && kind === "dead"))).toBe(
          true,
        );
        checked++;
      }
      expect(checked).toBeGreaterThan(0);
    }
  });

  it("grow with the seconds, up to the slowest place, and never overlap", () => {
    const marks = fieldMarks(field, 35).filter(({ kind }) => kind === "home");
    const secondsOf = (mark: { xMm: number; yMm: number }) => fieldAt(field, mark.xMm, mark.yMm).seconds;
    const [small, large] = [...marks]
      .sort((a, b) => a.sideMm - b.sideMm)
      .flatMap((m, i, all) => (i === 0 || i === all.length - 1 ? [m] : []));
    if (!small || !large) throw new Error("no marks");
    expect(secondsOf(small)).toBeLessThan(secondsOf(large));
    expect(large.sideMm).toBeLessThan(35);
  });
});

describe("a place of the map of pushes", () => {
  it("is the nearest one there is, also beyond the walls", () => {
    expect(fieldAt(field, -50, -50)).toEqual(fieldAt(field, field.radiusMm, field.radiusMm));
    const middle = fieldAt(field, 600, 450);
    expect(middle.state).toBe("home");
    expect(middle.seconds).toBeGreaterThan(0);
    expect(middle.seconds).toBeLessThanOrEqual(field.summary.slowestSeconds);
  });
});
