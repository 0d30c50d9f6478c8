import { Settings } from "planck";

/**
 * One unit is 100 mm, so that sizes and speeds lie where planck's constants are meant for. Overlaps are put right to
 * 0.1 mm, and slow impacts stop bouncing where the engine's do.
 */
export const MM_PER_UNIT = 100;
Settings.linearSlop = 0.1 / MM_PER_UNIT;
Settings.velocityThreshold = 10 / MM_PER_UNIT;
