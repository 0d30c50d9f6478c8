import { describe, expect, it } from "vitest";
import type { BallKind } from "../../src/model/ball.ts";
import { PRESET_SOURCES } from "../../src/model/presetSources.ts";
import { BALL_PRESETS, PRESET_IDS, type PresetId } from "../../src/model/presets.ts";

/** Bounds that a document gives for a preset's value. */
type Row = readonly [
  PresetId,
  "diameterMm" | "massKg" | "restitution" | "rollingResistance" | "floorFrictionCoeff",
  number,
  number,
];

/** √(rebound / drop), worked out by hand to four places; checked against the preset below. */
const ROWS: readonly Row[] = [
  // ITTF Technical Leaflet T3 (2016), quoting Laws 2.03.01–02: 40 mm, 2.7 g. references.md 1.1.
  ["table-tennis", "diameterMm", 40, 40],
  ["table-tennis", "massKg", 0.0027, 0.0027],
  // ITTF T3, B.7: dropped 305 mm on a steel plate, back up 240–260 mm: 0.8871–0.9233. references.md 1.3.
  ["table-tennis", "restitution", 0.8871, 0.9233],
  // R&A and USGA, Rules of Golf, Appendix III: at least 42.67 mm, at most 45.93 g. references.md 1.7.
  ["golf", "diameterMm", 42.67, Infinity],
  ["golf", "massKg", 0, 0.04593],
  // World Squash Federation, standard ball: 39.5–40.5 mm, 23–25 g. references.md 1.8.
  ["squash", "diameterMm", 39.5, 40.5],
  ["squash", "massKg", 0.023, 0.025],
  // World Squash Federation, rebound at 23 °C at least 12 %, at 45 °C at most 33 %, limits from memory: 0.346–0.574. references.md 1.9.
  ["squash", "restitution", 0.346, 0.574],
  // ITF Rules of Tennis, Appendix I, types 1 and 2: 6.54–6.86 cm, 56.0–59.4 g; 254 cm → 135–147 cm: 0.7290–0.7607. references.md 1.5.
  ["tennis", "diameterMm", 65.4, 68.6],
  ["tennis", "massKg", 0.056, 0.0594],
  ["tennis", "restitution", 0.729, 0.7607],
  // USA Racquetball, rule 2.2: 2.25 in, about 1.4 oz (39.7 g); 100 in → 68–72 in: 0.8246–0.8485. references.md 1.10.
  ["racquetball", "diameterMm", 57.15, 57.15],
  ["racquetball", "massKg", 0.0396, 0.0398],
  ["racquetball", "restitution", 0.8246, 0.8485],
  // WPA Table and Equipment Specifications, section 16: 57.15 mm (+0.127), 156–170 g. references.md 1.11.
  ["pool", "diameterMm", 57.15, 57.277],
  ["pool", "massKg", 0.156, 0.17],
  // Alciatore, Colorado State University, Billiards Physics FAQ: ball on ball 0.92–0.98, rolling on cloth 0.005–0.015,
  // sliding on cloth 0.15–0.4. references.md 6.5, 2.4.
  ["pool", "restitution", 0.92, 0.98],
  ["pool", "rollingResistance", 0.005, 0.015],
  ["pool", "floorFrictionCoeff", 0.15, 0.4],
  ["snooker", "restitution", 0.92, 0.98],
  ["snooker", "rollingResistance", 0.005, 0.015],
  // WPBSA and WPA: 52.5 ± 0.05 mm. references.md 1.12.
  ["snooker", "diameterMm", 52.45, 52.55],
  // Mathavan, Jackson, Parkin, Proc. IMechE C 224 (2010) 1863–1873: 0.1406 kg, sliding 0.212. references.md 6.7.
  ["snooker", "massKg", 0.1406, 0.1406],
  ["snooker", "floorFrictionCoeff", 0.212, 0.212],
  // USA Pickleball Equipment Standards 1.2–1.4: 7.29–7.54 cm, 22.1–26.5 g; 198.1 cm → 76.2–86.4 cm to the ball's top, 0.589–0.631
  // once the diameter is taken off. references.md 1.13.
  ["perforated", "diameterMm", 72.9, 75.4],
  ["perforated", "massKg", 0.0221, 0.0265],
  ["perforated", "restitution", 0.589, 0.631],
  // Bearing-ball handbooks, from memory: 7800 kg/m³, so 66.9 g at 25.4 mm. references.md 1.14.
  ["steel", "massKg", 0.06685, 0.06695],
];

describe("ball presets", () => {
  it.each(ROWS)("%s: %s from %d to %d", (id, quantity, least, most) => {
    expect(BALL_PRESETS[id][quantity]).toBeGreaterThanOrEqual(least);
    expect(BALL_PRESETS[id][quantity]).toBeLessThanOrEqual(most);
  });

  // A solid golf ball of these values has 1129 kg/m³, solid pool balls 1596–1739 kg/m³: derived, references.md 1.7, 1.11.
  // Hollow balls must be lighter than water's 1000 kg/m³ (a table-tennis ball floats: common practice, no source).
  it("have densities that fit their build", () => {
    const density = ({ diameterMm, massKg }: BallKind): number =>
      massKg / ((Math.PI / 6) * (diameterMm / 1000) ** 3);
    expect(density(BALL_PRESETS.golf)).toBeCloseTo(1129, 0);
    expect(density(BALL_PRESETS.pool)).toBeGreaterThan(1596);
    expect(density(BALL_PRESETS.pool)).toBeLessThan(1739);
    for (const id of PRESET_IDS) {
      const kind = BALL_PRESETS[id];
      if (kind.build === "hollow") expect(density(kind)).toBeLessThan(1000);
      else expect(density(kind)).toBeGreaterThan(1000);
    }
  });

  it("say what every value rests on, and check each one that claims a document", () => {
    const checked = new Set(ROWS.map(([id, quantity]) => `${id} ${quantity}`));
    for (const id of PRESET_IDS) {
      const sources = Object.entries(PRESET_SOURCES[id]);
      expect(sources.map(([quantity]) => quantity).sort()).toEqual(
        Object.keys(BALL_PRESETS[id])
          .filter((key) => key !== "name")
          .sort(),
      );
      for (const [quantity, { standing, source }] of sources) {
        expect(source.length).toBeGreaterThan(10);
        expect(checked.has(`${id} ${quantity}`)).toBe(standing !== "practice");
        expect(/from memory/.test(source)).toBe(standing === "memory");
      }
    }
  });
});
