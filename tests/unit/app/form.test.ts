import { describe, expect, it } from "vitest";
import { valueAt, withValue } from "../../../src/app/project/form.ts";

const form = { zone: { widthMm: 900, keepOuts: [{ xMm: 1 }, { xMm: 2 }] } };

describe("a form", () => {
  it("gives the value under a path, and undefined where there is none", () => {
    expect(valueAt(form, "zone.keepOuts[1].xMm")).toBe(2);
    expect(valueAt(form, "zone.keepOuts[2].xMm")).toBeUndefined();
    expect(valueAt(form, "zone.doorway.wall")).toBeUndefined();
    expect(valueAt(form, "constructor")).toBeUndefined();
  });

  it("takes another value without changing what it was", () => {
    const next = withValue(form, "zone.keepOuts[1].xMm", 7);
    expect(next).toEqual({ zone: { widthMm: 900, keepOuts: [{ xMm: 1 }, { xMm: 7 }] } });
    expect(form.zone.keepOuts[1]?.xMm).toBe(2);
    expect(withValue(form, "rules.layout.kind", "random")).toEqual({
      ...form,
      rules: { layout: { kind: "random" } },
    });
  });

  it("takes keys out, and entries of a list so that the others move up", () => {
    expect(withValue(form, "zone.widthMm", undefined)).toEqual({
      zone: { keepOuts: [{ xMm: 1 }, { xMm: 2 }] },
    });
    expect(valueAt(withValue(form, "zone.keepOuts[0]", undefined), "zone.keepOuts")).toEqual([{ xMm: 2 }]);
  });
});
