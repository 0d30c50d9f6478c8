import { describe, expect, test } from "vitest";
import { philox4x32 } from "../../src/num/philox.kernel.ts";

// Salmon et al. 2011, known-answer vectors of the authors' own test file (philox4x32, 10 rounds). references.md M7.5.
const VECTORS = [
  {
    counter: [0, 0, 0, 0],
    key: [0, 0],
    words: "6627e8d5 e169c58d bc57ac4c 9b00dbd8",
  },
  {
    counter: [0xffffffff, 0xffffffff, 0xffffffff, 0xffffffff],
    key: [0xffffffff, 0xffffffff],
    words: "408f276d 41c83b0e a20bc7c6 6d5451fd",
  },
  {
    counter: [0x243f6a88, 0x85a308d3, 0x13198a2e, 0x03707344],
    key: [0xa4093822, 0x299f31d0],
    words: "d16cfe09 94fdcceb 5001e420 24126ea1",
  },
];

describe("philox4x32-10 gives the published words", () => {
  test.each(VECTORS)("counter $counter", ({ counter, key, words }) => {
    const out = new Uint32Array(4);
    philox4x32(counter[0]!, counter[1]!, counter[2]!, counter[3]!, key[0]!, key[1]!, out);
    expect(Array.from(out, (word) => word.toString(16).padStart(8, "0")).join(" ")).toBe(words);
  });
});
