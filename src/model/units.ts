/**
 * The one unit system: millimetres, seconds, radians, kilograms. The one frame: origin at the zone's lower left
 * inside corner, x right, y up, seen from above; angles counter-clockwise in (−π, π]. The robot's own frame has its
 * origin midway between the driven wheels (or tracks), x forward, y to its left.
 * Degrees appear in files and on screens only, in names that end in `Deg`.
 */
// biome-ignore lint/suspicious/noApproximativeNumericConstant: written out so that no engine can differ
export const PI = 3.141592653589793;
export const RAD_PER_DEG = PI / 180;
export const DEG_PER_RAD = 180 / PI;

/** Gravitational acceleration, mm/s². 9.81 m/s², the value the published worked examples use. */
export const GRAVITY_MM_PER_S2 = 9810;
