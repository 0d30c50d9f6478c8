import { describe, expect, it } from "vitest";
import { KnownKeys } from "../../../src/jobs/knownKeys.ts";

describe("the account of what a worker keeps", () => {
  it("forgets the key not used for longest, once there are too many", () => {
    const known = new KnownKeys(2);
    expect(known.use(1)).toEqual({ isNew: true, forget: [] });
    expect(known.use(2)).toEqual({ isNew: true, forget: [] });
    expect(known.use(1)).toEqual({ isNew: false, forget: [] });
    expect(known.use(3)).toEqual({ isNew: true, forget: [2] });
    expect(known.use(1)).toEqual({ isNew: false, forget: [] });
    expect(known.use(2)).toEqual({ isNew: true, forget: [3] });
  });

  it("takes a dropped key for new", () => {
    const known = new KnownKeys(2);
    known.use(1);
    known.drop(1);
    expect(known.use(1)).toEqual({ isNew: true, forget: [] });
  });

  it("keeps all that one task is about, at most: ten parts' combinations and their project", () => {
    const known = new KnownKeys();
    const ask = () => Array.from({ length: 1 + 2 ** 10 }, (_, key) => known.use(key));
    expect(ask().every(({ isNew, forget }) => isNew && forget.length === 0)).toBe(true);
    expect(ask().some(({ isNew, forget }) => isNew || forget.length > 0)).toBe(false);
  });
});
