/** Where the robot's origin (midway between the driven wheels) is and where it faces. */
export interface Pose {
  readonly xMm: number;
  readonly yMm: number;
  readonly headingRad: number;
}
