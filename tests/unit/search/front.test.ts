import { describe, expect, it } from "vitest";
import { tradeOffFront } from "../../../src/search/front.ts";

const offer = (cost: number, worth: number) => ({ cost, worth });

describe("a trade-off front", () => {
  it("keeps what no other offer beats in both, cheapest first", () => {
    const front = tradeOffFront([offer(5, 0.9), offer(2, 0.5), offer(3, 0.4), offer(4, 0.5), offer(6, 0.9)]);
    expect(front).toEqual([offer(2, 0.5), offer(5, 0.9)]);
  });

  it("of equal offers keeps the first, whatever else there is", () => {
    const first = { ...offer(1, 1), name: "first" };
    expect(tradeOffFront([first, { ...offer(1, 1), name: "second" }])).toEqual([first]);
  });

  it("agrees with the definition, taken word for word", () => {
    const offers = Array.from({ length: 60 }, (_, i) => offer((i * 37) % 13, ((i * 53) % 17) / 17));
    const beaten = (a: { cost: number; worth: number }) =>
      offers.some((b) => b.cost <= a.cost && b.worth >= a.worth && (b.cost < a.cost || b.worth > a.worth));
    const expected = new Set(
      offers.filter((each) => !beaten(each)).map(({ cost, worth }) => `${cost} ${worth}`),
    );
    expect(tradeOffFront(offers).map(({ cost, worth }) => `${cost} ${worth}`)).toEqual(
      [...expected].sort((a, b) => Number(a.split(" ")[0]) - Number(b.split(" ")[0])),
    );
  });

  it("of nothing is empty", () => {
    expect(tradeOffFront([])).toEqual([]);
  });
});
