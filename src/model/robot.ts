import type { Sensor } from "./sensor.ts";
import type { PointMm, Surface } from "./zone.ts";

/**
 * The outline at ball height. Parametric shapes share a rectangular body: `bodyLengthMm` × `bodyWidthMm`, its rear
 * edge `axleFromRearMm` behind the axle midpoint (the robot's origin), symmetric about the x axis.
 */
export interface BodyMm {
  readonly bodyLengthMm: number;
  readonly bodyWidthMm: number;
  readonly axleFromRearMm: number;
}

/** A straight plate across the front: `plateWidthMm` wide, its face `plateReachMm` ahead of the body's front. */
export interface PlateShape extends BodyMm {
  readonly kind: "plate";
  readonly plateWidthMm: number;
  readonly plateReachMm: number;
}

/**
 * Two fixed arms at the front corners of the body, `armLengthMm` long, `armThicknessMm` thick, each turned outward
 * by `armAngleRad` from straight ahead (negative: inward). The pusher is the front of the body and the arms' inner sides and tips.
 */
export interface ArmsShape extends BodyMm {
  readonly kind: "arms";
  readonly armLengthMm: number;
  readonly armThicknessMm: number;
  readonly armAngleRad: number;
}

/** A V-shaped scoop: two straight sides that open forward from the middle of the body's front; `openingMm` wide at the tips, `depthMm` deep. */
export interface ScoopShape extends BodyMm {
  readonly kind: "scoop";
  readonly openingMm: number;
  readonly depthMm: number;
  readonly sideThicknessMm: number;
}

/** Own outline, robot frame, counter-clockwise; `pusherEdges` holds the index of each edge (vertex i to i+1) meant to touch balls. */
export interface PolygonShape {
  readonly kind: "polygon";
  readonly outline: readonly PointMm[];
  readonly pusherEdges: readonly number[];
}

/**
 * Two arms on hinges at the body's front, `hingeAsideMm` to either side of its middle. One motor swings both alike between
 * the open and the closed angle, measured as for fixed arms: outward from straight ahead (negative: inward, so that their
 * tips come together). A run starts with open arms. A hinge is where an arm's outer side meets the body's front.
 */
export interface HingedShape extends BodyMm {
  readonly kind: "hinged";
  readonly hingeAsideMm: number;
  readonly armLengthMm: number;
  readonly armThicknessMm: number;
  readonly openAngleRad: number;
  readonly closedAngleRad: number;
  /** How fast the arms swing. */
  readonly swingRateRadPerS: number;
}

export type RobotShape = PlateShape | ArmsShape | ScoopShape | HingedShape | PolygonShape;

/** Tracks and whatever is low: it stops at the wedge's edge unless the robot climbs it. `body`: the shape's body rectangle. */
export type GroundOutline =
  | { readonly kind: "body" }
  | { readonly kind: "polygon"; readonly outline: readonly PointMm[] };

export interface Drive {
  /** Distance between the middles of the two tracks or wheels. */
  readonly gaugeMm: number;
  readonly wheelDiameterMm: number;
  /** Length of track (or wheelbase) on the floor; 0 for two wheels and a caster. */
  readonly trackContactMm: number;
  readonly topSpeedMmPerS: number;
  readonly accelMmPerS2: number;
  readonly turnRateRadPerS: number;
  /** Drive force over weight before the tracks slip. */
  readonly tractionCoeff: number;
  /** Resistance to being pushed or turned sideways, over weight. */
  readonly lateralFrictionCoeff: number;
}

/**
 * How the real motion differs from the commanded one. Systematic parts are drawn once a trial from N(mean, sd²) and
 * hold all run; random parts are drawn anew for each move from N(0, sd²). Every normal is cut off at ±4 sd.
 */
export interface Drift {
  readonly systematic: {
    /** Real over commanded distance, minus 1. */
    readonly distanceScaleMean: number;
    readonly distanceScaleSd: number;
    /** Real over commanded turn, minus 1. */
    readonly turnScaleMean: number;
    readonly turnScaleSd: number;
    /** Heading change per distance on a commanded straight, left positive. */
    readonly curvatureMeanRadPerMm: number;
    readonly curvatureSdRadPerMm: number;
  };
  readonly random: {
    /** Share of the distance. */
    readonly distanceSdFrac: number;
    /** Share of the turn. */
    readonly turnSdFrac: number;
    /** Added to every turn, whatever its size. */
    readonly turnSdRad: number;
    /** Heading change per distance on a commanded straight. */
    readonly curvatureSdRadPerMm: number;
  };
  readonly start: {
    readonly positionSdMm: number;
    readonly headingSdRad: number;
  };
}

/** A robot that does exactly what it is told. */
export const NO_DRIFT: Drift = {
  systematic: {
    distanceScaleMean: 0,
    distanceScaleSd: 0,
    turnScaleMean: 0,
    turnScaleSd: 0,
    curvatureMeanRadPerMm: 0,
    curvatureSdRadPerMm: 0,
  },
  random: { distanceSdFrac: 0, turnSdFrac: 0, turnSdRad: 0, curvatureSdRadPerMm: 0 },
  start: { positionSdMm: 0, headingSdRad: 0 },
};

/** Where the robot stands when the routine starts, relative to the doorway: `alongMm` from its centre (toward growing x or y), origin `insetMm` inside the wall line, heading from the inward normal. */
export interface Entry {
  readonly alongMm: number;
  readonly insetMm: number;
  readonly headingRad: number;
}

export interface Robot {
  readonly name: string;
  readonly massKg: number;
  readonly shape: RobotShape;
  readonly ground: GroundOutline;
  readonly climbsWedge: boolean;
  /** How the outline answers a ball. */
  readonly surface: Surface;
  readonly drive: Drive;
  readonly drift: Drift;
  readonly entry: Entry;
  /** Empty: the robot runs its moves blindly. */
  readonly sensors: readonly Sensor[];
}
