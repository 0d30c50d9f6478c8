/**
 * Speed profile of one move: up a ramp, level, down a ramp of the same slope; a triangle where the distance is too
 * short to reach the wanted speed. With D ≥ V²/a: T = D/V + V/a; else the peak is √(aD) and T = 2√(D/a).
 * Distances in any unit of progress (mm for drives, rad for turns), seconds, always starting and ending at rest.
 * Source: standard kinematics; worked values in tests/published/trapezoid.
 */
export class Trapezoid {
  distance = 0;
  peak = 0;
  accel = 1;
  rampS = 0;
  durationS = 0;

  /** @param distance ≥ 0; @param speed > 0; @param accel > 0 */
  set(distance: number, speed: number, accel: number): this {
    this.distance = distance;
    this.accel = accel;
    if (distance * accel >= speed * speed) {
      this.peak = speed;
      this.durationS = distance / speed + speed / accel;
    } else {
      this.peak = Math.sqrt(accel * distance);
      this.durationS = 2 * (this.peak / accel);
    }
    this.rampS = this.peak / accel;
    return this;
  }

  /** Standing still for a while. */
  hold(durationS: number): this {
    this.distance = 0;
    this.peak = 0;
    this.accel = 1;
    this.rampS = 0;
    this.durationS = durationS;
    return this;
  }

  distanceAt(tS: number): number {
    if (tS <= 0) return 0;
    if (tS >= this.durationS) return this.distance;
    if (tS < this.rampS) return 0.5 * this.accel * tS * tS;
    const leftS = this.durationS - tS;
    if (leftS < this.rampS) return this.distance - 0.5 * this.accel * leftS * leftS;
    return this.peak * (tS - 0.5 * this.rampS);
  }

  speedAt(tS: number): number {
    if (tS <= 0 || tS >= this.durationS) return 0;
    if (tS < this.rampS) return this.accel * tS;
    const leftS = this.durationS - tS;
    return leftS < this.rampS ? this.accel * leftS : this.peak;
  }

  /** First second at which the progress reaches `distance`; the whole duration if it never does. */
  timeAt(distance: number): number {
    if (distance <= 0) return 0;
    if (distance >= this.distance) return this.durationS;
    const rampDistance = 0.5 * this.peak * this.rampS;
    if (distance < rampDistance) return Math.sqrt((2 * distance) / this.accel);
    const left = this.distance - distance;
    if (left < rampDistance) return this.durationS - Math.sqrt((2 * left) / this.accel);
    return distance / this.peak + 0.5 * this.rampS;
  }
}
