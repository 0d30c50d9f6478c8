import { type Body, type Contact, Vec2 } from "planck";
import type { BallKind } from "../../src/model/ball.ts";
import type { Surface } from "../../src/model/zone.ts";

/** Bodies of a planck scene, what they are, and how they bounce off each other. */

/** What is kept with a body. */
interface Part {
  readonly surface: Surface;
  ball: PlanckBall | null;
}

export interface PlanckBall {
  readonly kind: BallKind;
  readonly body: Body;
  /** Roll, mm/s: the velocity at which the surface would roll (design.md §4). */
  readonly roll: Vec2;
  /** Where it was before the last step, in planck's units. */
  readonly before: Vec2;
  out: boolean;
}

export function partOf(surface: Surface): Part {
  return { surface, ball: null };
}

function partWith(body: Body): Part {
  return body.getUserData() as Part;
}

/** The ball that a body is, null for walls and the robot. */
export function ballOf(body: Body): PlanckBall | null {
  return partWith(body).ball;
}

/**
 * The smaller restitution of the two partners, as the engine takes it; none for a ball that something already holds from
 * the other side. planck would aim at the rebound speed all step long, against a second contact that takes it away at
 * once; a series of impacts with e < 1 between two faces ends with the ball on both instead.
 */
export function bounce(contact: Contact): void {
  const one = contact.getFixtureA().getBody();
  const other = contact.getFixtureB().getBody();
  const isHeld = isHeldAgainst(one, contact) || isHeldAgainst(other, contact);
  contact.setRestitution(
    isHeld ? 0 : Math.min(partWith(one).surface.restitution, partWith(other).surface.restitution),
  );
}

/** Whether the ball touches something else than a ball whose normal is against that of `contact`. */
function isHeldAgainst(body: Body, contact: Contact): boolean {
  if (ballOf(body) === null) return false;
  const here = normalToward(body, contact);
  for (let at = body.getContactList(); at; at = at.next) {
    if (at.contact === contact || !at.contact.isTouching()) continue;
    if (at.other && ballOf(at.other) !== null) continue;
    const there = normalToward(body, at.contact);
    if (here.x * there.x + here.y * there.y < 0) return true;
  }
  return false;
}

function normalToward(body: Body, contact: Contact): { readonly x: number; readonly y: number } {
  const normal = contact.getWorldManifold(null)?.normal ?? Vec2.zero();
  const sign = contact.getFixtureB().getBody() === body ? 1 : -1;
  return { x: sign * normal.x, y: sign * normal.y };
}
