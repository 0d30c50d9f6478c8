/**
 * What each number of a project file may be, and what stands for it when it is left out. Bounds are wide on purpose:
 * they refuse what must be a slip (a metre typed as a millimetre, a lost decimal point), not what is unusual.
 * The defaults are common practice, no source.
 */
export interface NumberLimits {
  readonly min: number;
  readonly max: number;
  /** As shown to people; "" for a plain number. */
  readonly unit: string;
  /** Only above `min`, not equal to it. */
  readonly above?: boolean;
  readonly whole?: boolean;
  /** What stands for it when the key is left out; without one the key must be there. */
  readonly fallback?: number;
}

export type LimitTable = Readonly<Record<string, NumberLimits>>;

const FRAC = { min: 0, max: 1, unit: "" } as const;
const FRICTION = { min: 0, max: 2, unit: "" } as const;
const BODY_MM = { min: 10, max: 2000, unit: "mm" } as const;

/** Coordinates of rectangles, outlines and fixed balls. */
export const COORDINATE_MM: NumberLimits = { min: -20_000, max: 20_000, unit: "mm" };

export const ZONE_LIMITS = {
  widthMm: { min: 200, max: 20_000, unit: "mm" },
  heightMm: { min: 200, max: 20_000, unit: "mm" },
} satisfies LimitTable;

export const WALL_LIMITS = {
  restitution: { ...FRAC, fallback: 0.6 },
  frictionCoeff: { ...FRICTION, fallback: 0.3 },
} satisfies LimitTable;

export const DOORWAY_LIMITS = {
  centreMm: { min: 0, max: 20_000, unit: "mm" },
  widthMm: { min: 20, max: 20_000, unit: "mm" },
} satisfies LimitTable;

export const WEDGE_LIMITS = {
  legXMm: { min: 20, max: 20_000, unit: "mm" },
  legYMm: { min: 20, max: 20_000, unit: "mm" },
  lipMm: { min: 0, max: 200, unit: "mm", fallback: 0 },
  riseMm: { min: 0, max: 500, unit: "mm", fallback: 0 },
  runMm: { min: 0, max: 2000, unit: "mm", fallback: 20 },
} satisfies LimitTable;

export const RECT_LIMITS = {
  xMm: COORDINATE_MM,
  yMm: COORDINATE_MM,
  widthMm: { min: 0, max: 20_000, unit: "mm", above: true },
  heightMm: { min: 0, max: 20_000, unit: "mm", above: true },
} satisfies LimitTable;

export const BALL_LIMITS = {
  diameterMm: { min: 5, max: 300, unit: "mm" },
  massKg: { min: 0, max: 5, unit: "kg", above: true },
  rollingResistance: { min: 0, max: 1, unit: "", above: true, fallback: 0.02 },
  restitution: { ...FRAC, fallback: 0.7 },
  frictionCoeff: { ...FRICTION, fallback: 0.25 },
  floorFrictionCoeff: { ...FRICTION, above: true, fallback: 0.25 },
} satisfies LimitTable;

/** The upper bound of the count is checked over all groups (MAX_BALLS). */
export const GROUP_LIMITS = {
  count: { min: 1, max: 1000, unit: "", whole: true, fallback: 1 },
  points: { min: 0, max: 1000, unit: "", fallback: 1 },
} satisfies LimitTable;

export const RULE_LIMITS = {
  timeLimitS: { min: 0, max: 3600, unit: "s", fallback: 120 },
  wallMarginMm: { min: 0, max: 5000, unit: "mm", fallback: 10 },
  spacingMm: { min: 0, max: 5000, unit: "mm", fallback: 20 },
  wedgeMarginMm: { min: 0, max: 5000, unit: "mm", fallback: 20 },
  robotMarginMm: { min: 0, max: 5000, unit: "mm", fallback: 20 },
} satisfies LimitTable;

export const SPREAD_LIMITS = {
  frictionFrac: { min: 0, max: 0.95, unit: "", fallback: 0.25 },
  rollingResistanceFrac: { min: 0, max: 0.95, unit: "", fallback: 0.25 },
  restitution: { ...FRAC, fallback: 0.1 },
} satisfies LimitTable;

export const SETTINGS_LIMITS = {
  clearanceMm: { min: 0, max: 500, unit: "mm", fallback: 15 },
  overrunMm: { min: 0, max: 1000, unit: "mm", fallback: 40 },
} satisfies LimitTable;

export const SPEED_FRAC: NumberLimits = { min: 0.02, max: 1, unit: "" };
export const DEFAULT_SPEED_FRACS: readonly number[] = [0.6, 1];

export const ROBOT_LIMITS = {
  massKg: { min: 0.01, max: 100, unit: "kg", fallback: 1 },
} satisfies LimitTable;

export const ROBOT_SURFACE_LIMITS = {
  restitution: { ...FRAC, fallback: 0.4 },
  frictionCoeff: { ...FRICTION, fallback: 0.3 },
} satisfies LimitTable;

export const BODY_LIMITS = {
  bodyLengthMm: BODY_MM,
  bodyWidthMm: BODY_MM,
  axleFromRearMm: { min: 0, max: 2000, unit: "mm" },
} satisfies LimitTable;

export const PLATE_LIMITS = {
  plateWidthMm: BODY_MM,
  plateReachMm: { min: 0, max: 2000, unit: "mm" },
} satisfies LimitTable;

export const ARMS_LIMITS = {
  armLengthMm: { min: 0, max: 2000, unit: "mm", above: true },
  armThicknessMm: { min: 1, max: 200, unit: "mm" },
  armAngleDeg: { min: -60, max: 75, unit: "°", fallback: 0 },
} satisfies LimitTable;

export const HINGED_LIMITS = {
  hingeAsideMm: { min: 1, max: 2000, unit: "mm" },
  armLengthMm: { min: 0, max: 2000, unit: "mm", above: true },
  armThicknessMm: { min: 1, max: 200, unit: "mm" },
  openAngleDeg: { min: -60, max: 75, unit: "°" },
  closedAngleDeg: { min: -60, max: 75, unit: "°" },
  swingRateDegPerS: { min: 5, max: 720, unit: "°/s", fallback: 120 },
} satisfies LimitTable;

export const SCOOP_LIMITS = {
  openingMm: BODY_MM,
  depthMm: { min: 1, max: 2000, unit: "mm" },
  sideThicknessMm: { min: 1, max: 200, unit: "mm" },
} satisfies LimitTable;

export const DRIVE_LIMITS = {
  gaugeMm: { min: 10, max: 2000, unit: "mm" },
  wheelDiameterMm: { min: 5, max: 500, unit: "mm", fallback: 50 },
  trackContactMm: { min: 0, max: 2000, unit: "mm", fallback: 0 },
  topSpeedMmPerS: { min: 1, max: 5000, unit: "mm/s" },
  accelMmPerS2: { min: 1, max: 50_000, unit: "mm/s²", fallback: 500 },
  turnRateDegPerS: { min: 1, max: 1440, unit: "°/s" },
  tractionCoeff: { min: 0.01, max: 3, unit: "", fallback: 0.7 },
  lateralFrictionCoeff: { min: 0.01, max: 3, unit: "", fallback: 0.6 },
} satisfies LimitTable;

export const SYSTEMATIC_LIMITS = {
  distanceScaleMean: { min: -0.5, max: 0.5, unit: "", fallback: 0 },
  distanceScaleSd: { min: 0, max: 0.2, unit: "", fallback: 0.01 },
  turnScaleMean: { min: -0.5, max: 0.5, unit: "", fallback: 0 },
  turnScaleSd: { min: 0, max: 0.2, unit: "", fallback: 0.015 },
  curvatureMeanDegPerM: { min: -90, max: 90, unit: "°/m", fallback: 0 },
  curvatureSdDegPerM: { min: 0, max: 45, unit: "°/m", fallback: 0.5 },
} satisfies LimitTable;

export const RANDOM_LIMITS = {
  distanceSdFrac: { min: 0, max: 0.2, unit: "", fallback: 0.005 },
  turnSdFrac: { min: 0, max: 0.2, unit: "", fallback: 0.005 },
  turnSdDeg: { min: 0, max: 20, unit: "°", fallback: 0.5 },
  curvatureSdDegPerM: { min: 0, max: 45, unit: "°/m", fallback: 0.3 },
} satisfies LimitTable;

export const START_LIMITS = {
  positionSdMm: { min: 0, max: 100, unit: "mm", fallback: 5 },
  headingSdDeg: { min: 0, max: 20, unit: "°", fallback: 1 },
} satisfies LimitTable;

export const ENTRY_LIMITS = {
  alongMm: { min: -20_000, max: 20_000, unit: "mm", fallback: 0 },
  insetMm: { min: -2000, max: 20_000, unit: "mm", fallback: 0 },
  headingDeg: { min: -180, max: 180, unit: "°", fallback: 0 },
} satisfies LimitTable;

const MOVE_DISTANCE_MM = { min: -20_000, max: 20_000, unit: "mm" } as const;
const MOVE_SPEED = { min: 1, max: 5000, unit: "mm/s" } as const;
const MOVE_ANGLE_DEG = { min: -1080, max: 1080, unit: "°" } as const;

/** Numbers of a move; speeds above what the drive can do are driven at its top speed. */
export const MOVE_LIMITS = {
  drive: { distanceMm: MOVE_DISTANCE_MM, speedMmPerS: MOVE_SPEED },
  turn: { angleDeg: MOVE_ANGLE_DEG, rateDegPerS: { min: 1, max: 1440, unit: "°/s" } },
  arc: { distanceMm: MOVE_DISTANCE_MM, angleDeg: MOVE_ANGLE_DEG, speedMmPerS: MOVE_SPEED },
  toWall: {
    distanceMm: MOVE_DISTANCE_MM,
    overrunMm: { min: -2000, max: 2000, unit: "mm" },
    speedMmPerS: MOVE_SPEED,
  },
  wait: { durationS: { min: 0, max: 600, unit: "s" } },
  arms: { durationS: { min: 0, max: 600, unit: "s" } },
} satisfies Record<string, LimitTable>;
