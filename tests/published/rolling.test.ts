import { describe, expect, it } from "vitest";
import type { BallKind } from "../../src/model/ball.ts";
import { inertiaFactor } from "../../src/model/ball.ts";
import { mode, ROLLING, SLIDING } from "../../src/trial/balls.kernel.ts";
import { type BallState, letRoll, PLAIN_BALL, stateOf } from "../support/scene.ts";

const SOLID = { build: "solid" } as const;
const SHELL = { build: "hollow" } as const;
/** Room enough for the longest of these runs. */
const HALL = { widthMm: 80_000, heightMm: 9000 };

/** A ball that starts with `speedMmPerS` along x, rolling or not, by the engine; where it came to rest and when. */
function stopOf(kind: Partial<BallKind>, speedMmPerS: number): { distanceM: number; timeS: number } {
  let timeS = 0;
  const [end] = letRoll({ zone: HALL, balls: [{ x: 300, y: 500, vx: speedMmPerS, kind }] }, 60, (t) => {
    if (stateOf(0).vx > 0) return;
    timeS = timeS === 0 ? t : timeS;
  });
  return { distanceM: (end!.x - 300) / 1000, timeS };
}

describe("a ball that rolls out on the level", () => {
  // Alciatore, Colorado State University, Physics FAQ (billiards.colostate.edu/threads/physics.html): c 0.005 to 0.015 on cloth.
  it.each([
    [0.01, 5.097, 3],
    [0.005, 10.19, 2],
    [0.015, 3.398, 3],
  ])("stops from 1 m/s at c = %f after %f m", (rollingResistance, distanceM, digits) => {
    const stop = stopOf({ ...SOLID, rollingResistance }, 1000);
    expect(stop.distanceM).toBeCloseTo(distanceM, digits);
    if (rollingResistance === 0.01) expect(stop.timeS).toBeCloseTo(10.19, 2);
  });

  // USGA Stimpmeter, release at 1.83 m/s: c = 0.560/S in feet (derived). Speed classes 4.5, 6.5, 8.5 ft (USGA, second hand).
  it.each([
    [10, 0.056],
    [4.5, 0.1244],
    [6.5, 0.0862],
    [8.5, 0.0659],
  ])("runs %f ft from 1.83 m/s where c = %f", (feet, rollingResistance) => {
    // c is printed to four digits: the distance may be off by as much.
    const { distanceM } = stopOf({ ...SOLID, rollingResistance }, 1830);
    expect(Math.abs(distanceM / 0.3048 / feet - 1)).toBeLessThan(0.00005 / rollingResistance);
  });

  // The same reading of 10 ft: a = v²/(2S) = 0.5494 m/s², and 0.0784 in the lever arm form for a solid ball (derived). references.md 2.7.
  it("slows by 0.5494 m/s² where it runs 10 ft", () => {
    const rollingResistance = 0.0784 / (1 + inertiaFactor({ ...PLAIN_BALL, ...SOLID }));
    const { distanceM, timeS } = stopOf({ ...SOLID, rollingResistance }, 1830);
    expect(1.83 / timeS).toBeCloseTo(0.5494, 4);
    expect(distanceM / 0.3048).toBeCloseTo(10, 2);
  });

  // oxfordcroquet.com (Plummer; Nel): a lawn of speed 12 takes 12 s to roll 35 yd; a = 0.4445 m/s², c = 0.0453.
  it("takes 12 s for 35 yd where a = 0.4445 m/s²", () => {
    const { distanceM, timeS } = stopOf({ ...SOLID, rollingResistance: 0.4445 / 9.81 }, 0.4445 * 12 * 1000);
    expect(timeS).toBeCloseTo(12, 6);
    expect(distanceM / 0.9144).toBeCloseTo(35, 2);
  });
});

describe("a floor that grips less than a ball's rolling resistance asks", () => {
  // Coulomb's law: what the floor takes from a ball is at most μ·m·g, so that c counts up to μ only: 1 m/s ends after 1/(2·0.1·9.81) = 0.5097 m.
  it("stops it as its friction can", () => {
    expect(stopOf({ ...SOLID, rollingResistance: 0.4, floorFrictionCoeff: 0.1 }, 1000).distanceM).toBeCloseTo(
      0.5097,
      4,
    );
  });
});

describe("a lawn's speed", () => {
  // oxfordcroquet.com (Plummer): a ball that stops after 21.5 yd in 10.4 s tells of a lawn of P = 10.4·√(35/21.5) = 13.27 s for 35 yd. references.md 2.12.
  it("is 13.27 s where a ball takes 10.4 s for 21.5 yd", () => {
    const yard = 0.9144;
    const a = (2 * 21.5 * yard) / 10.4 ** 2;
    const roll = (yards: number) =>
      stopOf({ ...SOLID, rollingResistance: a / 9.81 }, 1000 * Math.sqrt(2 * a * yards * yard));
    expect(roll(21.5).timeS).toBeCloseTo(10.4, 4);
    expect(roll(35).distanceM / yard).toBeCloseTo(35, 3);
    expect(roll(35).timeS).toBeCloseTo(13.27, 2);
  });
});

describe("the two meanings of a rolling coefficient", () => {
  // R. Cross, Am. J. Phys. 90, 648 (2022): energy form 7(v₁²−v₂²)/(10gs), force form (v₁²−v₂²)/(2gs), ratio 7/5 for a solid ball. Ours is the force form, c.
  it("c is the force form: 0.01000 where the energy form gives 0.01400", () => {
    const kind = { ...SOLID, rollingResistance: 0.01 };
    const { distanceM } = stopOf(kind, 1000);
    expect(1 / (2 * 9.81 * distanceM)).toBeCloseTo(0.01, 5);
    expect(7 / (10 * 9.81 * distanceM)).toBeCloseTo(0.014, 5);
    expect(1 + inertiaFactor({ ...PLAIN_BALL, ...kind })).toBeCloseTo(7 / 5, 12);
  });

  // Engineering ToolBox d_1303: lever arm 0.5 mm under a radius of 20 mm is ρ = 0.025; a free solid ball then slows by 0.025·g/1.4 = 0.1752 m/s² (derived).
  // Drive-engineering formula bank, Table 7.22: plastic on steel 2.0 mm, ρ = 0.10 under 20 mm; a thin shell then slows by 0.10·g·3/5 = 0.5886 m/s² (derived). references.md 2.3.
  it.each([
    [0.5, SOLID, 0.1752],
    [2, SHELL, 0.5886],
  ])("a lever arm of %f mm under 20 mm slows a ball (%o) by %f m/s²", (leverMm, build, mPerS2) => {
    const rollingResistance = leverMm / 20 / (1 + inertiaFactor({ ...PLAIN_BALL, ...build }));
    const { timeS } = stopOf({ ...build, rollingResistance }, 500);
    expect(0.5 / timeS).toBeCloseTo(mPerS2, 4);
  });

  // A.R. Penner, Can. J. Phys. 80, 83 (2002), from memory: a = (5/7)·ρ·g, ρ 0.065 on a fast green, 0.196 on a slow one: 12.06 and 4.00 ft from 1.83 m/s.
  it.each([
    [0.065, 12.06],
    [0.196, 4.0],
  ])("ρ = %f lets a golf ball run %f ft", (rho, feet) => {
    const { distanceM } = stopOf({ ...SOLID, rollingResistance: (rho * 5) / 7 }, 1830);
    expect(distanceM / 0.3048).toBeCloseTo(feet, 2);
  });
});

/** A ball that starts sliding without spin: state and second at the end of the slide, by the engine's own events. */
function slideOf(kind: Partial<BallKind>, speedMmPerS: number): { timeS: number; end: BallState } {
  let timeS = 0;
  let end: BallState | null = null;
  const ball = { x: 300, y: 500, vx: speedMmPerS, sx: 0, sy: 0, kind: { rollingResistance: 1e-6, ...kind } };
  letRoll({ zone: HALL, balls: [ball] }, 3, (t) => {
    if (end !== null || mode[0] === SLIDING) return;
    expect(mode[0]).toBe(ROLLING);
    timeS = t;
    end = stateOf(0);
  });
  return { timeS, end: end! };
}

/** The rows use g = 9.8: the same deceleration μ·g in a world of 9.81. */
const asIn98 = (mu: number): number => (mu * 9.8) / 9.81;

describe("a ball that starts sliding", () => {
  // Halliday/Resnick, ch. 11 (jiskha 1322981027): v = 5/7 v₀, t = 2v₀/(7μg), d = 12v₀²/(49μg). Data of physicsforums 51293: 5 m/s, μ 0.12, g 9.8.
  // Halliday, Fundamentals of Physics ch. 11, from memory: 8.5 m/s, μ 0.21: 1.2 s, 8.6 m, 6.1 m/s.
  it.each([
    [5000, 0.12, 1.215, 5.206, 3.571],
    [8500, 0.21, 1.18, 8.598, 6.071],
  ])("rolls after a while: solid, %f mm/s, μ %f", (speed, mu, timeS, distanceM, mPerS) => {
    const slide = slideOf({ ...SOLID, floorFrictionCoeff: asIn98(mu) }, speed);
    expect(slide.timeS).toBeCloseTo(timeS, 3);
    expect((slide.end.x - 300) / 1000).toBeCloseTo(distanceM, 3);
    expect(slide.end.vx / 1000).toBeCloseTo(mPerS, 3);
    expect(slide.end.sx).toBe(slide.end.vx);
  });

  // k = 2/3 in the same argument, derived, second implementation: v = 3/5 v₀, t = 2v₀/(5μg), d = 8v₀²/(25μg); 1 m/s, μ 0.2, g 9.81.
  it.each([
    ["hollow", SHELL, 0.2039, 0.1631, 0.6],
    ["solid", SOLID, 0.1456, 0.1248, 0.7143],
  ])("rolls after a while: %s, 1 m/s, μ 0.2", (_, kind, timeS, distanceM, mPerS) => {
    const slide = slideOf({ ...kind, floorFrictionCoeff: 0.2 }, 1000);
    expect(slide.timeS).toBeCloseTo(timeS, 4);
    expect((slide.end.x - 300) / 1000).toBeCloseTo(distanceM, 4);
    // Mangum after Cochran & Stobbs 1968: a putt rolls from 5/7, 0.7143, of its launch speed on.
    expect(slide.end.vx / 1000).toBeCloseTo(mPerS, 4);
  });

  it("keeps the direction of its slip while it slides across its roll", () => {
    // The slip u = v − s keeps its direction (Halliday/Resnick, ch. 11), so that the path is a parabola; then v = (v₀ + k·s₀)/(1+k).
    const ball = {
      x: 3000,
      y: 3000,
      vx: 600,
      vy: 0,
      sx: 0,
      sy: 350,
      kind: { ...SOLID, rollingResistance: 1e-9 },
    };
    const [end] = letRoll({ zone: HALL, balls: [ball] }, 1);
    expect(end!.vx).toBeCloseTo((600 * 5) / 7, 3);
    expect(end!.vy).toBeCloseTo((350 * 2) / 7, 3);
  });
});
