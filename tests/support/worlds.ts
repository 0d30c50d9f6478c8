import fc from "fast-check";
import { checkProject } from "../../src/model/check.ts";
import { BALL_PRESETS, PRESET_IDS } from "../../src/model/presets.ts";
import type { Project } from "../../src/model/project.ts";
import type { Move } from "../../src/model/routine.ts";
import type { Corner, Wall, Wedge } from "../../src/model/zone.ts";
import { SHIPPED, shippedProject } from "./projectFiles.ts";

/** Random worlds for property tests: shipped projects with another wedge, other balls, robots and doorways, as far as the model's checks allow. */

/** Ten thousand even steps from min to max: numbers as people type them, which shrink to min. */
const frac = (min: number, max: number) =>
  fc.integer({ min: 0, max: 10_000 }).map((step) => min + ((max - min) * step) / 10_000);

const corner = fc.constantFrom<Corner>("lower-left", "lower-right", "upper-left", "upper-right");
const wall = fc.constantFrom<Wall>("left", "right", "bottom", "top");

const profile: fc.Arbitrary<Pick<Wedge, "profile" | "lipMm" | "riseMm" | "runMm">> = fc.oneof(
  fc.constant({ profile: "flat", lipMm: 0, riseMm: 0, runMm: 20 } as const),
  fc.record({
    profile: fc.constant("ramp" as const),
    lipMm: fc.constantFrom(0, 1, 3),
    riseMm: frac(4, 25),
    runMm: fc.constant(20),
  }),
  fc.record({
    profile: fc.constant("shelf" as const),
    lipMm: fc.constantFrom(0, 1, 2),
    riseMm: frac(2, 10),
    runMm: frac(10, 40),
  }),
  fc.record({
    profile: fc.constant("tray" as const),
    lipMm: frac(1, 8),
    riseMm: fc.constant(0),
    runMm: fc.constant(20),
  }),
);

const kind = fc.constantFrom(...PRESET_IDS).map((id) => BALL_PRESETS[id]);
const balls = fc.array(fc.record({ kind, count: fc.integer({ min: 1, max: 3 }), points: fc.constant(1) }), {
  minLength: 1,
  maxLength: 3,
});

/** Robots that sense have laws of their own (tests/property/sensing). */
const BLIND = SHIPPED.filter((name) => shippedProject(name).robot.sensors.length === 0);

const tweak = fc.record({
  name: fc.constantFrom(...BLIND),
  robotFrom: fc.constantFrom(...BLIND),
  corner,
  wall,
  profile,
  balls: fc.option(balls, { nil: undefined }),
  faceFriction: frac(0, 1),
  wallFriction: frac(0, 1),
  wallBounce: frac(0, 1),
  faceBounce: frac(0, 1),
  speed: frac(0.5, 2.5),
  climbs: fc.boolean(),
  delivered: fc.constantFrom("centre" as const, "wholly" as const),
});

type Tweak = typeof tweak extends fc.Arbitrary<infer T> ? T : never;

function built(t: Tweak): Project {
  const base = shippedProject(t.name);
  const other = shippedProject(t.robotFrom).robot;
  const { drive } = other;
  return {
    ...base,
    zone: {
      ...base.zone,
      walls: { restitution: t.wallBounce, frictionCoeff: t.wallFriction },
      doorway: { ...base.zone.doorway, wall: t.wall },
      wedge: { ...base.zone.wedge, ...t.profile, corner: t.corner },
    },
    balls: base.rules.layout.kind === "fixed" ? base.balls : (t.balls ?? base.balls),
    rules: { ...base.rules, delivered: t.delivered },
    robot: {
      ...other,
      climbsWedge: t.climbs,
      surface: { restitution: t.faceBounce, frictionCoeff: t.faceFriction },
      drive: { ...drive, topSpeedMmPerS: drive.topSpeedMmPerS * t.speed },
    },
  };
}

/** Projects that pass every check. */
export const anyProject: fc.Arbitrary<Project> = tweak
  .map(built)
  .filter((project) => checkProject(project).length === 0);

const speedMmPerS = frac(40, 600);
const angleRad = frac(-3.2, 3.2);

/** Moves that take a robot all over a zone, against walls and wedge too. */
export const anyMove: fc.Arbitrary<Move> = fc.oneof(
  {
    weight: 4,
    arbitrary: fc.record({ kind: fc.constant("drive" as const), distanceMm: frac(-600, 900), speedMmPerS }),
  },
  {
    weight: 4,
    arbitrary: fc.record({ kind: fc.constant("turn" as const), angleRad, rateRadPerS: frac(0.3, 4) }),
  },
  {
    weight: 2,
    arbitrary: fc.record({
      kind: fc.constant("arc" as const),
      distanceMm: frac(-500, 700),
      angleRad: frac(-4, 4),
      speedMmPerS,
    }),
  },
  {
    weight: 2,
    arbitrary: fc
      .record({ far: frac(50, 1500), overrun: frac(0, 80), back: fc.boolean(), speedMmPerS })
      .map(({ far, overrun, back, speedMmPerS: speed }) => ({
        kind: "toWall" as const,
        distanceMm: back ? -far : far,
        overrunMm: back ? -overrun : overrun,
        speedMmPerS: speed,
      })),
  },
  { weight: 1, arbitrary: fc.record({ kind: fc.constant("wait" as const), durationS: frac(0, 2) }) },
);

/** A first move into the zone, then any. */
export const anyMoves: fc.Arbitrary<Move[]> = fc
  .tuple(frac(50, 500), fc.array(anyMove, { minLength: 1, maxLength: 30 }))
  .map(([inMm, moves]) => [{ kind: "drive", distanceMm: inMm, speedMmPerS: 200 }, ...moves]);
