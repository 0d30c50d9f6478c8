/** A kind of ball. */
export interface BallKind {
  readonly name: string;
  readonly diameterMm: number;
  readonly massKg: number;
  /** solid: k = 2/5, hollow (thin shell): k = 2/3, with k = I/(m r²). */
  readonly build: "solid" | "hollow";
  /**
   * c = a/g, the measured deceleration of a ball that rolls freely on the level floor, over g (stop distance v²/(2 c g)).
   * The other convention of the literature, the lever arm of the normal force over the radius, is ρ = (1 + k)·c;
   * a ball stays on a slope where tan θ ≤ ρ. Presets given as ρ are converted when they are written down.
   */
  readonly rollingResistance: number;
  /** Against a hard wall, normal direction. */
  readonly restitution: number;
  /** Coulomb friction against upright faces and other balls. */
  readonly frictionCoeff: number;
  /** Coulomb friction against the floor while the ball slides. */
  readonly floorFrictionCoeff: number;
}

/** `count` balls of one kind; `points` is what one of them earns when delivered. */
export interface BallGroup {
  readonly kind: BallKind;
  readonly count: number;
  readonly points: number;
}

/** k = I/(m r²). Halliday/Resnick, Fundamentals of Physics: 2/5 solid sphere, 2/3 thin shell. */
export function inertiaFactor(kind: BallKind): number {
  return kind.build === "solid" ? 2 / 5 : 2 / 3;
}
