import { Vec2 } from "planck";
import { inertiaFactor } from "../../src/model/ball.ts";
import { GRAVITY_MM_PER_S2 } from "../../src/model/units.ts";
import type { PlanckBall } from "./planckParts.ts";
import { MM_PER_UNIT } from "./planckUnits.ts";

const now = new Vec2(0, 0);

/** Sliding, then rolling, over h seconds (design.md §4); planck moves the ball, this only changes its velocity. */
export function pullOfFloor(ball: PlanckBall, h: number): void {
  const { kind, roll } = ball;
  const velocity = ball.body.getLinearVelocity();
  let vx = velocity.x * MM_PER_UNIT;
  let vy = velocity.y * MM_PER_UNIT;
  if (vx === 0 && vy === 0 && roll.x === 0 && roll.y === 0) return;
  const slip = Math.sqrt((vx - roll.x) ** 2 + (vy - roll.y) ** 2);
  let left = h;
  if (slip > 1e-6) {
    const k = inertiaFactor(kind);
    const pull = kind.floorFrictionCoeff * GRAVITY_MM_PER_S2;
    const slideS = Math.min(h, (k * slip) / ((1 + k) * pull));
    const x = ((vx - roll.x) / slip) * pull * slideS;
    const y = ((vy - roll.y) / slip) * pull * slideS;
    vx -= x;
    vy -= y;
    roll.x += x / k;
    roll.y += y / k;
    left -= slideS;
  }
  if (left > 0) {
    const speed = Math.sqrt(vx * vx + vy * vy);
    const keep = Math.max(0, 1 - (kind.rollingResistance * GRAVITY_MM_PER_S2 * left) / speed);
    roll.x = vx = speed > 0 ? vx * keep : 0;
    roll.y = vy = speed > 0 ? vy * keep : 0;
  }
  now.set(vx / MM_PER_UNIT, vy / MM_PER_UNIT);
  ball.body.setLinearVelocity(now);
}
