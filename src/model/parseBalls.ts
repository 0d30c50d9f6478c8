import type { BallGroup, BallKind } from "./ball.ts";
import { BALL_BUILDS } from "./choices.ts";
import type { Findings } from "./findings.ts";
import { BALL_LIMITS, GROUP_LIMITS } from "./limits.ts";
import { MAX_NAME_LENGTH } from "./parseRobot.ts";
import { BALL_PRESETS, PRESET_IDS } from "./presets.ts";
import { MAX_BALLS } from "./project.ts";
import { type Fields, fieldsOf } from "./reader.ts";

/**
 * A group names a preset, whose values stand for every key that is left out, or gives at least name, diameter, mass and build.
 */
export function parseBalls(fields: Fields, findings: Findings): readonly BallGroup[] {
  const path = fields.pathOf("balls");
  return fields
    .list("balls", { max: MAX_BALLS, required: true })
    .map((value, i) => parseGroup(fieldsOf(value, `${path}[${i}]`, findings)));
}

function parseGroup(fields: Fields): BallGroup {
  const { count, points } = fields.numbers(GROUP_LIMITS);
  const kind = fields.has("preset") ? presetKind(fields) : ownKind(fields);
  fields.done();
  return { kind, count, points };
}

function presetKind(fields: Fields): BallKind {
  const id = fields.choice("preset", PRESET_IDS) ?? PRESET_IDS[0];
  return kindWithDefaults(fields, BALL_PRESETS[id]);
}

function ownKind(fields: Fields): BallKind {
  return {
    name: fields.text("name", { maxLength: MAX_NAME_LENGTH }),
    build: fields.choice("build", BALL_BUILDS) ?? "solid",
    ...fields.numbers(BALL_LIMITS),
  };
}

function kindWithDefaults(fields: Fields, preset: BallKind): BallKind {
  const number = (key: keyof typeof BALL_LIMITS): number =>
    fields.number(key, { ...BALL_LIMITS[key], fallback: preset[key] });
  return {
    name: fields.text("name", { maxLength: MAX_NAME_LENGTH, fallback: preset.name }),
    build: fields.choice("build", BALL_BUILDS, preset.build) ?? preset.build,
    diameterMm: number("diameterMm"),
    massKg: number("massKg"),
    rollingResistance: number("rollingResistance"),
    restitution: number("restitution"),
    frictionCoeff: number("frictionCoeff"),
    floorFrictionCoeff: number("floorFrictionCoeff"),
  };
}
