/** What a robot knows of its line before its first reading: sd of the offset, mm. */
const START_OFFSET_SD_MM = 20;
/** Growth of the heading's variance on the way, rad²/mm: half a degree over 600 mm. */
const STRAY_RAD2_PER_MM = 1.3e-7;
/** A reading farther off what is expected than this, in sd and at least in mm, is of something else than the wall: a ball, a gap. */
const GATE_SD = 3;
const GATE_MM = 20;
/** A reading counts if the one before was of the same thing: as near to it as this, mm and sd of a difference. */
const STEP_MM = 6;
const STEP_SD = 4;
/** So many in a row that count but are not what is expected: the expectation was wrong. */
const MOST_DOUBTS = 5;
/** Least sd of a reading that is reckoned with, mm. */
const LEAST_SD_MM = 1;
/** The heading counts as known from here on, rad. */
const SURE_SD_RAD = 0.012;

/**
 * How far a robot is off a line beside a wall and at what angle, from readings of the distance: a Kalman filter of two states
 * (offset e to the left, heading ψ), de/dq = σψ, dψ/dq = κ, reading = wanted − m(e + a·ψ) for a sensor a ahead of the axle that looks
 * left (m = 1) or right (m = −1). Source: Kalman, A New Approach to Linear Filtering and Prediction Problems, 1960.
 */
export class WallEstimate {
  offsetMm = 0;
  headingRad = 0;
  readsMm = 0;
  private side: -1 | 1 = 1;
  private alongMm = 0;
  private headingSdRad = 0;
  /** Covariance: offset, both, heading. */
  private oo = 0;
  private oh = 0;
  private hh = 0;
  private lastMm = Number.POSITIVE_INFINITY;
  private doubts = 0;

  /** @param headingSdRad what is known of the heading already */
  open(side: -1 | 1, alongMm: number, readsMm: number, headingSdRad: number): void {
    this.side = side;
    this.alongMm = alongMm;
    this.readsMm = readsMm;
    this.offsetMm = this.headingRad = 0;
    this.headingSdRad = headingSdRad;
    this.oo = START_OFFSET_SD_MM * START_OFFSET_SD_MM;
    this.oh = 0;
    this.hh = headingSdRad * headingSdRad;
    this.lastMm = Number.POSITIVE_INFINITY;
    this.doubts = 0;
  }

  copy(): WallEstimate {
    return Object.assign(new WallEstimate(), this);
  }

  get isSure(): boolean {
    return this.hh < SURE_SD_RAD * SURE_SD_RAD;
  }

  /** What was read before was of something else. */
  private forget(): void {
    this.open(this.side, this.alongMm, this.readsMm, this.headingSdRad);
  }

  /** Driven on by q mm, σ 1 forward and −1 back, at a commanded curvature. */
  advance(sigma: number, kappaPerMm: number, q: number): void {
    this.offsetMm += sigma * (this.headingRad + 0.5 * kappaPerMm * q) * q;
    this.headingRad += kappaPerMm * q;
    const step = sigma * q;
    this.oo += 2 * step * this.oh + step * step * this.hh;
    this.oh += step * this.hh;
    this.hh += STRAY_RAD2_PER_MM * q;
  }

  /** One reading, mm; +∞ where there was no echo. */
  read(distanceMm: number, sdMm: number): void {
    const sd = Math.max(LEAST_SD_MM, sdMm);
    const step = distanceMm - this.lastMm;
    this.lastMm = distanceMm;
    if (!(Math.abs(step) < STEP_MM + STEP_SD * sd)) return;
    const { side, alongMm } = this;
    const off = this.readsMm - side * (this.offsetMm + alongMm * this.headingRad);
    const innovation = distanceMm - off;
    // Covariance times what a reading depends on, −m(1, a).
    const po = -side * (this.oo + alongMm * this.oh);
    const ph = -side * (this.oh + alongMm * this.hh);
    const variance = sd * sd - side * (po + alongMm * ph);
    const gate = Math.max(GATE_MM, GATE_SD * Math.sqrt(variance));
    if (innovation > gate || innovation < -gate) {
      if (++this.doubts > MOST_DOUBTS) this.forget();
      return;
    }
    this.doubts = 0;
    const [go, gh] = [po / variance, ph / variance];
    this.offsetMm += go * innovation;
    this.headingRad += gh * innovation;
    this.oo -= go * po;
    this.oh -= go * ph;
    this.hh -= gh * ph;
  }
}
