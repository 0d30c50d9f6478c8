import { describe, expect, it } from "vitest";
import { letRoll, type SceneBall, stateOf } from "../support/scene.ts";

/** Balls without floor or face friction, as the textbook has them. */
const SMOOTH = {
  build: "solid",
  rollingResistance: 1e-9,
  floorFrictionCoeff: 1e-9,
  frictionCoeff: 0,
} as const;
const ELASTIC = { ...SMOOTH, restitution: 1 } as const;
const DEGREE = Math.PI / 180;

/**
 * A target at rest and a cue ball from the left with speed v, so that the line of centres at impact makes `lineDeg` with its path.
 * They are metres across: the touch tolerance of 0.001 mm, by which balls meet early, shifts no printed digit then.
 */
function cueAndTarget(v: number, lineDeg: number, kind: SceneBall["kind"]): SceneBall[] {
  const diameterMm = 2000;
  const offset = diameterMm * Math.sin(lineDeg * DEGREE);
  const each = { ...kind, diameterMm };
  return [
    { x: 10_000, y: 20_000, vx: v, kind: each },
    { x: 20_000, y: 20_000 - offset, kind: each },
  ];
}
const HALL = { widthMm: 60_000, heightMm: 40_000 };

describe("two equal balls, elastic, one at rest", () => {
  // Serway's example (yadernaya-fizika.net/45): a target driven off at 45° sends the cue ball off at 45°.
  it("part at a right angle", () => {
    for (const line of [5, 30, 45, 60, 80]) {
      const [cue, target] = letRoll({ zone: HALL, balls: cueAndTarget(4000, line, ELASTIC) }, 4);
      const dot = cue!.vx * target!.vx + cue!.vy * target!.vy;
      expect(dot / 4000 ** 2).toBeCloseTo(0, 6);
      if (line !== 45) continue;
      expect(Math.atan2(cue!.vy, cue!.vx) / DEGREE).toBeCloseTo(45, 4);
      expect(Math.atan2(target!.vy, target!.vx) / DEGREE).toBeCloseTo(-45, 4);
    }
  });

  // Problem of jiskha 1289149195 (4.0 m/s, cue deflected by 30°); result derived: 3.464 and 2.000 m/s, 90° apart, 16 = 12 + 4.
  it("share 4.0 m/s as 3.464 and 2.000 when the cue ball is deflected by 30°", () => {
    const [cue, target] = letRoll({ zone: HALL, balls: cueAndTarget(4000, 60, ELASTIC) }, 4);
    expect(Math.atan2(cue!.vy, cue!.vx) / DEGREE).toBeCloseTo(30, 4);
    expect(Math.hypot(cue!.vx, cue!.vy) / 1000).toBeCloseTo(3.464, 3);
    expect(Math.hypot(target!.vx, target!.vy) / 1000).toBeCloseTo(2, 3);
    const squares = [cue!, target!].map(({ vx, vy }) => (vx * vx + vy * vy) / 1e6);
    expect(squares[0]).toBeCloseTo(12, 4);
    expect(squares[1]).toBeCloseTo(4, 4);
  });

  // cos θ = v₁'/v₀. Problem of physicsforums 389042 (2.9 → 1 m/s: 69.83°); also 4.3 → 2 m/s: 62.28°; results derived.
  it.each([
    [2.9, 1, 69.83],
    [4.3, 2, 62.28],
  ])("%f m/s that leave the cue ball %f m/s deflected it by %f°", (before, after, degrees) => {
    const [cue] = letRoll({ zone: HALL, balls: cueAndTarget(before * 1000, 90 - degrees, ELASTIC) }, 5);
    // The angle is printed to 0.01°, which is worth 0.0005 m/s here.
    expect(Math.hypot(cue!.vx, cue!.vy) / 1000).toBeCloseTo(after, 3);
    expect(Math.atan2(cue!.vy, cue!.vx) / DEGREE).toBeCloseTo(degrees, 3);
  });

  // Textbook, from memory: head on, v₁' = (1−e)/2·v, v₂' = (1+e)/2·v; e 0.95: 0.025, 0.975.
  it("keep and hand on (1−e)/2 and (1+e)/2 of a head-on speed", () => {
    const [cue, target] = letRoll(
      { zone: HALL, balls: cueAndTarget(1000, 0, { ...SMOOTH, restitution: 0.95 }) },
      12,
    );
    expect(cue!.vx / 1000).toBeCloseTo(0.025, 6);
    expect(target!.vx / 1000).toBeCloseTo(0.975, 6);
  });
});

describe("unequal balls", () => {
  // v₁' = v₁ − (1+e)·m₂/(m₁+m₂)·[n·(v₁−v₂)]·n, textbook. 0.1 kg at 2 m/s on 0.3 kg, e 0.5: −0.25 and 0.75 m/s (derived).
  it("meet by their masses", () => {
    const [light, heavy] = cueAndTarget(2000, 0, { ...SMOOTH, restitution: 0.5 });
    const [one, two] = letRoll(
      {
        zone: HALL,
        balls: [
          { ...light!, kind: { ...light!.kind, massKg: 0.1 } },
          { ...heavy!, kind: { ...heavy!.kind, massKg: 0.3 } },
        ],
      },
      6,
    );
    expect(one!.vx / 1000).toBeCloseTo(-0.25, 6);
    expect(two!.vx / 1000).toBeCloseTo(0.75, 6);
  });
});

describe("a rolling ball", () => {
  // Classic (the topic of arXiv 2402.13258), from memory: solid, e = 1, head on, once both roll again: 2/7 and 5/7 of the speed.
  it("keeps 2/7 and hands on 5/7 once both roll again", () => {
    const kind = { ...ELASTIC, floorFrictionCoeff: 0.3 };
    const balls = [
      { x: 300, y: 500, vx: 800, kind },
      { x: 500, y: 500, kind },
    ];
    const [cue, target] = letRoll({ balls }, 0.8);
    expect(cue!.vx / 800).toBeCloseTo(0.2857, 4);
    expect(cue!.sx).toBe(cue!.vx);
    expect(target!.vx / 800).toBeCloseTo(0.7143, 4);
  });

  // Any mechanics text (jiskha 1175011721): k 2/5 of a solid sphere, 2/3 of a thin shell, so that it has 7/10 and 5/6 of m·v². references.md 1.15.
  it.each([
    ["solid", 7 / 10],
    ["hollow", 5 / 6],
  ] as const)("%s, has the energy %f m·v²", (build, share) => {
    const [ball] = letRoll(
      { balls: [{ x: 400, y: 500, vx: 300, kind: { build, rollingResistance: 0 } }] },
      0.1,
    );
    expect(ball!.energy / 300 ** 2).toBeCloseTo(share, 9);
  });

  // −(e−k)/(1+k) of its speed off a frictionless wall, once it rolls again: angular momentum about the floor (classic 3/7), derived.
  it.each([
    ["solid", 1, -0.4286, 4],
    ["solid", 0.8, -0.2857, 4],
    ["hollow", 0.9, -0.14, 3],
  ] as const)(
    "%s, e %f, comes off a smooth wall with %f of its speed",
    (build, restitution, share, digits) => {
      const kind = { build, restitution, rollingResistance: 1e-9, floorFrictionCoeff: 0.3 };
      const [end] = letRoll({ balls: [{ x: 1000, y: 500, vx: 500, kind }] }, 1);
      expect(end!.vx / 500).toBeCloseTo(share, digits);
      expect(end!.sx).toBe(end!.vx);
    },
  );
});

describe("the moment at which two balls meet", () => {
  // Alder & Wainwright 1959; t = (−b − √(b² − v²(r² − s²)))/v², derived: r 0.2 m, v 0.1 m/s, s 0.04 m: 1.6 s, with 0.02 m of offset 1.6535898 s. Here all lengths times 1000.
  it.each([
    [0, 1.6, 7],
    [20_000, 1.6535898, 7],
  ])("with %f mm of offset is %f s", (offset, seconds, digits) => {
    const kind = { ...ELASTIC, diameterMm: 40_000 };
    const zone = {
      widthMm: 900_000,
      heightMm: 900_000,
      doorway: { wall: "left", centreMm: 50_000, widthMm: 200 },
    } as const;
    const wedge = {
      corner: "lower-right",
      legXMm: 20,
      legYMm: 20,
      profile: "flat",
      lipMm: 0,
      riseMm: 0,
      runMm: 0,
    } as const;
    const balls = [
      { x: 500_000, y: 500_000, kind },
      { x: 700_000, y: 500_000 + offset, vx: -100_000, kind },
    ];
    let metS = 0;
    letRoll({ zone: { ...zone, wedge }, balls }, 3, (t) => {
      if (metS === 0 && stateOf(0).energy > 1) metS = t;
    });
    expect(metS).toBeCloseTo(seconds, digits);
  });
});
