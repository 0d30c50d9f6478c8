import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Wedge } from "../../src/model/zone.ts";
import { bx, by, inertia, mass, mode, OUT, radius, sx, sy, vx, vy } from "../../src/trial/balls.kernel.ts";
import { depthOf, lean, onWedge, wedge } from "../../src/trial/wedge.kernel.ts";
import { bigRamp, onRamp } from "../support/ramp.ts";
import { letRoll, type SceneBall, type SceneOptions } from "../support/scene.ts";

/** Balls on their own: no robot comes near them. */

const step = (min: number, max: number) =>
  fc.integer({ min: 0, max: 1000 }).map((n) => min + ((max - min) * n) / 1000);

const kind = fc.record({
  diameterMm: step(20, 60),
  massKg: step(0.002, 0.06),
  build: fc.constantFrom("solid" as const, "hollow" as const),
  rollingResistance: step(0.002, 0.06),
  restitution: step(0, 1),
  frictionCoeff: step(0, 1),
  floorFrictionCoeff: step(0.05, 1),
});

/** One ball in each of up to eight cells of a grid that keeps clear of robot, block and walls. */
const cells = [0, 1, 2, 3, 4, 5, 6, 7].map((n) => ({
  x: 300 + 110 * (n % 4),
  y: 480 + 200 * Math.floor(n / 4),
}));
const balls: fc.Arbitrary<SceneBall[]> = fc
  .tuple(
    fc.subarray(cells, { minLength: 1 }),
    fc.array(
      fc.record({ vx: step(-700, 700), vy: step(-700, 700), sx: step(-700, 700), sy: step(-700, 700), kind }),
      {
        minLength: 8,
        maxLength: 8,
      },
    ),
    fc.array(fc.tuple(step(-20, 20), step(-20, 20)), { minLength: 8, maxLength: 8 }),
  )
  .map(([places, states, shifts]) =>
    places.map(({ x, y }, n) => ({ ...states[n]!, x: x + shifts[n]![0], y: y + shifts[n]![1] })),
  );

const FLAT = { profile: "flat", lipMm: 0, riseMm: 0, runMm: 20 } as const;
const raised: fc.Arbitrary<Pick<Wedge, "profile" | "lipMm" | "riseMm" | "runMm">> = fc.oneof(
  fc.record({
    profile: fc.constant("ramp" as const),
    lipMm: step(0, 3),
    riseMm: step(4, 40),
    runMm: fc.constant(20),
  }),
  fc.record({
    profile: fc.constant("shelf" as const),
    lipMm: step(0, 3),
    riseMm: step(3, 12),
    runMm: step(10, 40),
  }),
  fc.record({
    profile: fc.constant("tray" as const),
    lipMm: step(1, 8),
    riseMm: fc.constant(0),
    runMm: fc.constant(20),
  }),
);

function scene(
  rolling: SceneBall[],
  profile: Pick<Wedge, "profile" | "lipMm" | "riseMm" | "runMm">,
  walls: [number, number],
): SceneOptions {
  return {
    zone: {
      walls: { restitution: walls[0], frictionCoeff: walls[1] },
      wedge: { corner: "upper-right", legXMm: 350, legYMm: 350, ...profile },
      keepOuts: [{ xMm: 800, yMm: 100, widthMm: 120, heightMm: 90 }],
    },
    balls: rolling,
  };
}

/** Height of ball i's centre over its place on the floor, mm, as the wedge lifts it. */
function height(i: number): number {
  const d = depthOf(i);
  if (onWedge[i] === 0 || mode[i] === OUT || !wedge.raised) return 0;
  const r = radius[i]!;
  if (d < 0) return wedge.lip === 0 ? 0 : wedge.lip - r + Math.sqrt(r * r - d * d);
  return wedge.lip + wedge.slope * Math.min(d, wedge.run);
}

/** Kinetic energy of all balls over their masses and their height, kg·mm²/s²; velocities along the surface. */
function energy(n: number): number {
  let sum = 0;
  for (let i = 0; i < n; i++) {
    const along = (x: number, y: number) => (x * wedge.nx + y * wedge.ny) / lean[i]!;
    const aside = (x: number, y: number) => x * wedge.ny - y * wedge.nx;
    const v2 = along(vx[i]!, vy[i]!) ** 2 + aside(vx[i]!, vy[i]!) ** 2;
    const s2 = along(sx[i]!, sy[i]!) ** 2 + aside(sx[i]!, sy[i]!) ** 2;
    sum += mass[i]! * (0.5 * v2 + 0.5 * inertia[i]! * s2 + 9810 * height(i));
  }
  return sum;
}

describe("balls without the robot", () => {
  it("never gain kinetic energy on a level floor", () => {
    fc.assert(
      fc.property(balls, step(0, 1), step(0, 1), (rolling, bounce, friction) => {
        let last = Number.POSITIVE_INFINITY;
        letRoll(scene(rolling, FLAT, [bounce, friction]), 20, (t) => {
          const now = energy(rolling.length);
          // Sums of a few rounded terms.
          if (now > last * (1 + 1e-12)) expect.fail(`${last} grew to ${now} at ${t} s`);
          last = now;
        });
      }),
      { seed: 31, numRuns: 400 },
    );
  });

  it("never gain energy, height included, on any wedge, by more than 0.01 mm of height", () => {
    fc.assert(
      fc.property(balls, raised, step(0, 1), step(0, 1), (rolling, profile, bounce, friction) => {
        let last = Number.POSITIVE_INFINITY;
        letRoll(scene(rolling, profile, [bounce, friction]), 20, (t) => {
          const now = energy(rolling.length);
          // A step that is stretched to the shortest length, 0.1 ms, runs past the end of a slope before it feels it.
          const weight = rolling.reduce((sum, _, i) => sum + mass[i]! * 9810, 0);
          if (now > last + 0.01 * weight) expect.fail(`${last} grew to ${now} at ${t} s`);
          last = now;
        });
      }),
      { seed: 32, numRuns: 400 },
    );
  });

  it("never get into a wall, a block or each other by more than 0.02 mm, and end at rest", () => {
    fc.assert(
      fc.property(balls, step(0, 1), step(0, 1), (rolling, bounce, friction) => {
        letRoll(scene(rolling, FLAT, [bounce, friction]), 60, () => {
          for (const [i] of rolling.entries()) {
            if (mode[i] === OUT) continue;
            const [x, y, r] = [bx[i]!, by[i]!, radius[i]!];
            const clear = [x - r, 1200 - r - x, 900 - r - y, Math.abs(x - 130) > 100 + r ? y - r : 0];
            const blockX = Math.max(800 - x, 0, x - 920);
            const blockY = Math.max(100 - y, 0, y - 190);
            clear.push(Math.hypot(blockX, blockY) - r);
            for (let j = 0; j < i; j++) {
              if (mode[j] === OUT) continue;
              clear.push(Math.hypot(x - bx[j]!, y - by[j]!, r - radius[j]!) - r - radius[j]!);
            }
            expect(Math.min(...clear)).toBeGreaterThan(-0.02);
          }
        });
        for (const [i] of rolling.entries()) expect(Math.hypot(vx[i]!, vy[i]!)).toBe(0);
      }),
      { seed: 33, numRuns: 300 },
    );
  });

  it("always feel the ramp: they climb it by (1+k)·v²/(2g), wherever they started", () => {
    fc.assert(
      fc.property(
        step(0.02, 0.6),
        step(100, 800),
        step(20, 500),
        fc.boolean(),
        (angle, speed, before, solid) => {
          const ramp = bigRamp(angle);
          const build = solid ? ("solid" as const) : ("hollow" as const);
          let deepest = 0;
          letRoll(
            { zone: ramp.zone, balls: [onRamp(ramp, -before, { build, rollingResistance: 1e-9 }, speed)] },
            8,
            () => {
              deepest = Math.max(deepest, depthOf(0));
            },
          );
          const climbed = ((solid ? 1.4 : 5 / 3) * speed * speed) / (2 * 9810);
          // Looked at once a step of 1/60 s: the top lies up to g·sin θ/(1+k)·(1/60 s)²/8 along the slope higher.
          const missed = (9810 * Math.sin(angle) ** 2) / (solid ? 1.4 : 5 / 3) / 60 ** 2 / 8;
          expect(deepest * Math.tan(angle)).toBeLessThan(climbed * (1 + 1e-6));
          expect(deepest * Math.tan(angle)).toBeGreaterThan(climbed * (1 - 1e-6) - missed);
        },
      ),
      { seed: 34, numRuns: 300 },
    );
  });
});
