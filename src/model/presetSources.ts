import type { BallKind } from "./ball.ts";
import type { PresetId } from "./presets.ts";

/**
 * What a value rests on. standard: the sport's own equipment rules; published: another document that was read;
 * memory: known from a document that was not at hand; practice: common practice, no source.
 */
export type Standing = "standard" | "published" | "memory" | "practice";

export interface Provenance {
  readonly standing: Standing;
  readonly source: string;
}

type Quantity = Exclude<keyof BallKind, "name">;

const PRACTICE: Provenance = {
  standing: "practice",
  source: "Common practice, no source; measure it on your floor.",
};
const THIN: Provenance = { standing: "practice", source: "Hollow; taken as a thin shell, k = 2/3." };
const SOLID: Provenance = { standing: "practice", source: "Filled throughout, k = 2/5." };

function standard(source: string): Provenance {
  return { standing: "standard", source };
}

const TT = "ITTF Technical Leaflet T3 (2016)";
const TENNIS = "ITF Rules of Tennis, Appendix I, types 1 and 2";
const WPA = "WPA Tournament Table and Equipment Specifications, section 16";
const SQUASH = "World Squash Federation, specification of the standard ball";
const RACQUET = "USA Racquetball Official Rules, rule 2.2";
const PERFORATED = "USA Pickleball Equipment Standards, ball";
const CUE_PHYSICS = "D. Alciatore, Colorado State University, Billiards Physics FAQ";
const CUSHION = "Mathavan, Jackson, Parkin, Proc. IMechE Part C 224 (2010) 1863–1873";

const ON_CLOTH: Pick<Record<Quantity, Provenance>, "rollingResistance" | "restitution" | "frictionCoeff"> = {
  rollingResistance: {
    standing: "published",
    source: `${CUE_PHYSICS}: 0.005–0.015 on cloth, as deceleration over g.`,
  },
  restitution: { standing: "published", source: `${CUE_PHYSICS}: ball on ball 0.92–0.98.` },
  frictionCoeff: PRACTICE,
};

/** The standing of every number of every preset. Rebound heights give the restitution as √(rebound / drop). */
export const PRESET_SOURCES: Readonly<Record<PresetId, Readonly<Record<Quantity, Provenance>>>> = {
  "table-tennis": {
    diameterMm: standard(`${TT}: 40 mm.`),
    massKg: standard(`${TT}: 2.7 g.`),
    build: THIN,
    rollingResistance: PRACTICE,
    restitution: standard(`${TT}, B.7: dropped 305 mm on steel, back up 240–260 mm.`),
    frictionCoeff: PRACTICE,
    floorFrictionCoeff: PRACTICE,
  },
  golf: {
    diameterMm: standard("R&A and USGA, Rules of Golf, Appendix III: at least 42.67 mm."),
    massKg: standard("R&A and USGA, Rules of Golf, Appendix III: at most 45.93 g."),
    build: SOLID,
    rollingResistance: PRACTICE,
    restitution: PRACTICE,
    frictionCoeff: PRACTICE,
    floorFrictionCoeff: PRACTICE,
  },
  squash: {
    diameterMm: standard(`${SQUASH}: 39.5–40.5 mm.`),
    massKg: standard(`${SQUASH}: 23–25 g.`),
    build: THIN,
    rollingResistance: PRACTICE,
    restitution: {
      standing: "memory",
      source:
        "World Squash Federation: dropped 2.54 m at 23 °C, back up at least 12 % (from memory). A warm ball gives 0.51–0.57.",
    },
    frictionCoeff: PRACTICE,
    floorFrictionCoeff: PRACTICE,
  },
  tennis: {
    diameterMm: standard(`${TENNIS}: 65.4–68.6 mm.`),
    massKg: standard(`${TENNIS}: 56.0–59.4 g.`),
    build: THIN,
    rollingResistance: PRACTICE,
    restitution: standard(`${TENNIS}: dropped 254 cm, back up 135–147 cm.`),
    frictionCoeff: PRACTICE,
    floorFrictionCoeff: PRACTICE,
  },
  racquetball: {
    diameterMm: standard(`${RACQUET}: 2.25 inches.`),
    massKg: standard(`${RACQUET}: about 1.4 ounces.`),
    build: THIN,
    rollingResistance: PRACTICE,
    restitution: standard(`${RACQUET}: dropped 100 inches, back up 68–72 inches.`),
    frictionCoeff: PRACTICE,
    floorFrictionCoeff: PRACTICE,
  },
  pool: {
    diameterMm: standard(`${WPA}: 57.15 mm.`),
    massKg: standard(`${WPA}: 156–170 g.`),
    build: SOLID,
    ...ON_CLOTH,
    floorFrictionCoeff: {
      standing: "published",
      source: `${CUE_PHYSICS}: 0.15–0.4 on cloth, typically 0.2.`,
    },
  },
  snooker: {
    diameterMm: standard("WPBSA and WPA equipment rules: 52.5 mm ± 0.05 mm."),
    massKg: { standing: "published", source: `${CUSHION}: 0.1406 kg.` },
    build: SOLID,
    ...ON_CLOTH,
    floorFrictionCoeff: { standing: "published", source: `${CUSHION}: 0.212 on cloth.` },
  },
  perforated: {
    diameterMm: standard(`${PERFORATED}: 72.9–75.4 mm.`),
    massKg: standard(`${PERFORATED}: 22.1–26.5 g.`),
    build: THIN,
    rollingResistance: PRACTICE,
    restitution: standard(
      `${PERFORATED}: dropped 198.1 cm on granite, top of the ball back up to 76.2–86.4 cm; less the diameter, 0.59–0.63.`,
    ),
    frictionCoeff: PRACTICE,
    floorFrictionCoeff: PRACTICE,
  },
  steel: {
    diameterMm: { standing: "practice", source: "One inch, a common size." },
    massKg: {
      standing: "memory",
      source: "ρ π d³ / 6 with 7800 kg/m³, bearing-ball handbooks (from memory).",
    },
    build: SOLID,
    rollingResistance: PRACTICE,
    restitution: PRACTICE,
    frictionCoeff: PRACTICE,
    floorFrictionCoeff: PRACTICE,
  },
};
