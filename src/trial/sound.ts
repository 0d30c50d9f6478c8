/** Freezing point of water, K, and the speed of sound in dry air there, m/s (unit tables: 331.30). */
const FREEZING_K = 273.15;
const SOUND_AT_FREEZING = 331.3;

/** Speed of sound in dry air, an ideal gas, m/s: it goes with the root of the absolute temperature. @param airC −30 to 60 °C */
export function soundMPerS(airC: number): number {
  return SOUND_AT_FREEZING * Math.sqrt(1 + airC / FREEZING_K);
}
