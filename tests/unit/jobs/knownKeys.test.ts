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
});
