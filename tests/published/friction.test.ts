import { describe, expect, it } from "vitest";
import type { BallKind } from "../../src/model/ball.ts";
import { type BallState, letRoll, type SceneBall, type SceneOptions, stateOf } from "../support/scene.ts";

/** A floor so smooth that only what is struck changes velocities and rolls; faces of the same friction all over. */
const ON_ICE = { rollingResistance: 1e-9, floorFrictionCoeff: 1e-9 } as const;
const DEGREE = Math.PI / 180;

/** The balls right after the first step in which the first one's velocity changed by more than 1 mm/s. */
function struck(options: SceneOptions): BallState[] {
  const [first] = options.balls;
  let after: BallState[] = [];
  letRoll(options, 5, () => {
    const { vx, vy } = stateOf(0);
    if (after.length === 0 && Math.hypot(vx - (first!.vx ?? 0), vy - (first!.vy ?? 0)) > 1)
      after = options.balls.map((_, i) => stateOf(i));
  });
  expect(after).toHaveLength(options.balls.length);
  return after;
}

/** A ball goes at the right wall with (400, 300) mm/s, or as told; friction μ, e 0.6 and a floor of ice unless told otherwise. */
function offWall(kind: Partial<BallKind>, mu: number, motion: Partial<SceneBall> = {}, e = 0.6): BallState {
  const whole = { ...ON_ICE, ...kind, frictionCoeff: mu, restitution: 1 };
  const [end] = struck({
    zone: { walls: { restitution: e, frictionCoeff: mu } },
    balls: [{ x: 1100, y: 400, vx: 400, vy: 300, sx: 0, sy: 0, ...motion, kind: whole }],
  });
  return end!;
}

describe("a ball without roll that meets a rough wall aslant", () => {
  // Coulomb's law for an impulse (Routh, Dynamics of a System of Rigid Bodies; Garwin, Am. J. Phys. 37 (1969) 88; both from memory):
  // while it slips along the wall, μ(1+e) of its speed into the wall is taken off its speed along it: 300 − 0.1·1.6·400 = 236.
  it("loses μ(1+e) of its speed into the wall: 236 of 300 mm/s are left at μ 0.1", () => {
    for (const build of ["solid", "hollow"] as const) {
      const { vx, vy } = offWall({ build }, 0.1);
      expect(vx).toBeCloseTo(-240, 5);
      expect(vy).toBeCloseTo(236, 5);
      expect(offWall({ build }, 0.1, { vy: -300 }).vy).toBeCloseTo(-236, 5);
    }
  });

  // The same: where it grips, it keeps what a ball keeps that begins to roll, 5/7 solid and 3/5 hollow (Halliday/Resnick, ch. 11): 214.2857 and 180.
  it.each([
    ["solid", 214.2857],
    ["hollow", 180],
  ] as const)("keeps, once it grips, what rolling along the wall leaves: %s, %f mm/s", (build, mmPerS) => {
    for (const mu of [0.5, 1, 2]) expect(offWall({ build }, mu).vy).toBeCloseTo(mmPerS, 4);
  });
});

describe("a rolling ball that meets a rough wall aslant", () => {
  // The same law: friction opposes the whole slip at the wall, 300 along and 400 down, 3 to 4: of 0.1·1.6·400 = 64, 38.4 along the
  // wall and 51.2 upward, which slows the roll by 51.2/k. Derived.
  it.each([
    ["solid", -272],
    ["hollow", -323.2],
  ] as const)("shares its friction between along and down: %s", (build, roll) => {
    const { vx, vy, sx } = offWall({ build }, 0.1, { sx: 400, sy: 300 });
    expect(vx).toBeCloseTo(-240, 5);
    expect(vy).toBeCloseTo(261.6, 5);
    expect(sx).toBeCloseTo(-roll, 5);
  });
});

/**
 * A ball at a wall, its roll away from it, its speed v after the bounce; both contacts slip by Coulomb's law. The wall's friction
 * presses it on the floor, bit by bit (Routh's incremental way, from memory), until it is used up or has stopped the roll.
 */
function bitByBit(k: number, v: number, roll: number, floor: number, most: number): [number, number] {
  const bits = 1e5;
  let s = roll;
  for (let n = 0; n < bits && s > 0; n++) {
    const bit = most / bits;
    s -= bit / k;
    // The floor gives what it can, until nothing slips on it.
    const pull = Math.min(floor * bit, (Math.abs(v - s) * k) / (1 + k)) * Math.sign(v - s);
    v -= pull;
    s += pull / k;
  }
  return [v, s];
}

describe("a ball that comes back from a wall it rolls away from", () => {
  // Slipping backward on the floor it is helped to stop its roll, slipping forward hindered; a floor of friction 1.5 keeps it rolling.
  it.each([
    ["solid", 0, 400, 0.25, 0.5],
    ["solid", 0.9, 400, 0.25, 0.5],
    ["solid", 0.9, 100, 0.25, 0.5],
    ["hollow", 0, 250, 0.6, 0.3],
    ["hollow", 1, 441, 1.5, 2],
    ["solid", 0.2, 300, 1.5, 2],
  ] as const)("%s, e %f, roll %f mm/s, floor %f, wall %f", (build, e, roll, floor, mu) => {
    const kind = { build, rollingResistance: 1e-9, floorFrictionCoeff: floor };
    // So near that the floor has no time before.
    const at = { x: 1179.9985, vx: 300, vy: 0, sx: -roll, sy: 0 };
    const { vx, sx } = offWall(kind, mu, at, e);
    const [v, s] = bitByBit(build === "solid" ? 0.4 : 2 / 3, e * 300, roll, floor, mu * (1 + e) * 300);
    // What the floor does to it in the step of 0.1 ms that takes it to the wall, and one bit.
    const within = 1e-4 * floor * 9810 + 0.02;
    expect(Math.abs(-vx - v)).toBeLessThan(within);
    expect(Math.abs(-sx - s)).toBeLessThan(within / (build === "solid" ? 0.4 : 2 / 3));
  });
});

/** A cue ball with 1000 mm/s, rolling or not, meets an equal one at rest so that the line of centres makes 30° with its way. */
function cut(friction: number, e: number, roll: number, degrees = 30): readonly [BallState, BallState] {
  const kind = {
    ...ON_ICE,
    build: "solid",
    diameterMm: 2000,
    frictionCoeff: friction,
    restitution: e,
  } as const;
  const [cue, object] = struck({
    zone: { widthMm: 60_000, heightMm: 40_000 },
    balls: [
      { x: 17_000, y: 20_000, vx: 1000, sx: roll, sy: 0, kind },
      { x: 20_000, y: 20_000 - 2000 * Math.sin(degrees * DEGREE), kind },
    ],
  });
  return [cue!, object!];
}

describe("an object ball that the cue ball throws", () => {
  const thrownDeg = (friction: number, e: number): number => {
    const [, { vx, vy }] = cut(friction, e, 0);
    return Math.atan2(vy, vx) / DEGREE + 30;
  };

  // Alciatore, technical proof A.14 (Colorado State University), from memory: a cue ball without spin throws the object ball
  // off the line of centres by atan(min(μ, tan φ/7)) for e = 1: at φ = 30° 3.4336° for μ 0.06, at most 4.7151°.
  it.each([
    [0.06, 1, 3.4336],
    [0.5, 1, 4.7151],
    // With e the gripping limit is 2/(1+e) of that: atan(0.0824786/0.95) = 4.9617° for e 0.9; slipping it is atan μ whatever e. Derived.
    [0.06, 0.9, 3.4336],
    [0.5, 0.9, 4.9617],
  ])("of friction %f, e %f: by %f°", (friction, e, degrees) => {
    expect(thrownDeg(friction, e)).toBeCloseTo(degrees, 3);
  });

  // Newton's third law.
  it("takes nothing from the momentum of the two", () => {
    const [cue, object] = cut(0.3, 0.8, 1000, 50);
    expect(cue.vx + object.vx).toBeCloseTo(1000, 4);
    expect(cue.vy + object.vy).toBeCloseTo(0, 4);
  });

  // Head on, e 1, friction 0.06 (Alciatore, Physics FAQ: 0.03 to 0.08, references.md P6.5): the impulse is m·v, the friction 0.06 of it, up on the
  // cue ball's front, down on the other's back: rolls of 1 − 0.06/0.4 = 0.85 and −0.15. Derived.
  it("is given backspin by a rolling cue ball, which keeps 0.85 of its roll", () => {
    const [cue, object] = cut(0.06, 1, 1000, 0);
    expect(cue.vx / 1000).toBeCloseTo(0, 6);
    expect(object.vx / 1000).toBeCloseTo(1, 6);
    expect(cue.sx / 1000).toBeCloseTo(0.85, 6);
    expect(object.sx / 1000).toBeCloseTo(-0.15, 6);
  });
});

describe("balls of different size", () => {
  // Two circles on one line that touch each other do so 2√(rR) apart along it (elementary geometry): 60 mm for 20 and 45 mm.
  it("of 20 and 45 mm radius meet 60 mm apart, seen from above", () => {
    const kind = { ...ON_ICE, frictionCoeff: 0 };
    let apart = 1e9;
    letRoll(
      {
        balls: [
          { x: 300, y: 500, vx: 200, kind: { ...kind, diameterMm: 40 } },
          { x: 500, y: 500, kind: { ...kind, diameterMm: 90 } },
        ],
      },
      1.5,
      () => {
        apart = Math.min(apart, stateOf(1).x - stateOf(0).x);
      },
    );
    // They meet at the touch tolerance, 0.001 mm.
    expect(apart).toBeCloseTo(60, 2);
  });
});
