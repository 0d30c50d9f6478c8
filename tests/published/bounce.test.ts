import { describe, expect, it } from "vitest";
import { BALL_PRESETS, type PresetId } from "../../src/model/presets.ts";
import { letRoll, stateOf } from "../support/scene.ts";

const SMOOTH = { rollingResistance: 1e-9, floorFrictionCoeff: 1e-9, frictionCoeff: 0 } as const;

/** Share of its speed that a sliding ball keeps after it met a smooth wall of restitution 1 `times` times, by the engine. */
function kept(kind: object, speedMmPerS: number, durationS: number): number {
  const [end] = letRoll(
    { balls: [{ x: 700, y: 500, vx: speedMmPerS, sx: 0, sy: 0, kind: { ...kind, ...SMOOTH } }] },
    durationS,
  );
  return Math.abs(end!.vx) / speedMmPerS;
}

/** e = √(rebound / drop) as printed in references.md, worked out by hand from the standards' heights. */
const DROPS: readonly (readonly [string, PresetId, number, number])[] = [
  // ITTF Technical Leaflet T3, B.7: 305 mm on steel → 240 to 260 mm. references.md 1.3.
  ["305 mm → 240 to 260 mm", "table-tennis", 0.8871, 0.9233],
  // ITF Rules of Tennis, Appendix I: 254 cm → 135 to 147 cm. references.md 1.5.
  ["254 cm → 135 to 147 cm", "tennis", 0.729, 0.7607],
  // World Squash Federation, limits from memory: 254 cm → 12 % (23 °C) to 33 % (45 °C). references.md 1.9.
  ["254 cm → 12 % to 33 %", "squash", 0.346, 0.574],
  // USA Racquetball, rule 2.2: 100 in → 68 to 72 in. references.md 1.10.
  ["100 in → 68 to 72 in", "racquetball", 0.8246, 0.8485],
  // USA Pickleball Equipment Standards: 198.1 cm → 76.2 to 86.4 cm to the ball's top. references.md 1.13.
  ["198.1 cm → 76.2 to 86.4 cm, ball's diameter off", "perforated", 0.589, 0.631],
];

describe("a ball off a hard wall", () => {
  it.each(DROPS)("keeps the share of its speed that its drop test allows: %s", (_, id, least, most) => {
    // Speed of a drop from h is √(2gh), so that √(rebound/drop) is the share of the speed it comes back with.
    const share = kept(BALL_PRESETS[id], 400, 2);
    expect(share).toBeGreaterThanOrEqual(least);
    expect(share).toBeLessThanOrEqual(most);
  });

  // ITTF table rule, second hand: 30 cm → 23 cm, e = 0.8756 (references.md 1.4). Wall and ball: the smaller restitution counts.
  it("takes the wall's restitution if that is the smaller", () => {
    const [end] = letRoll(
      {
        zone: { walls: { restitution: 0.8756, frictionCoeff: 0 } },
        balls: [{ x: 1000, y: 500, vx: 400, sx: 0, sy: 0, kind: { restitution: 0.95, ...SMOOTH } }],
      },
      1,
    );
    expect((end!.vx / 400) ** 2 * 30).toBeCloseTo(23, 1);
  });

  // n bounces leave e^(2n) of the energy (Newton's law of restitution, textbook, from memory). references.md M8.1.
  it("keeps e^(2n) of its energy over n bounces", () => {
    const e = 0.9;
    const shares: number[] = [];
    let vx = 400;
    const kind = { restitution: e, ...SMOOTH };
    letRoll({ balls: [{ x: 700, y: 500, vx, sx: 0, sy: 0, kind }] }, 25, () => {
      const now = stateOf(0).vx;
      if (now * vx < 0) shares.push((now / 400) ** 2);
      vx = now;
    });
    expect(shares.length).toBeGreaterThan(4);
    for (const [n, share] of shares.entries()) expect(share).toBeCloseTo(e ** (2 * (n + 1)), 6);
  });
});
