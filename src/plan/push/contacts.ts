import { PROFILE_STEP_MM, type Profile } from "./profile.ts";
import { type Seat, seatsOf } from "./seats.ts";

/**
 * One way to meet a ball on a straight drive: where it is touched and where it rides in the end. While it slides to the
 * seat the robot drives `advanceMm`, and the ball moves by (shiftX, shiftY). Robot frame, mm.
 */
export interface Contact {
  readonly touchXMm: number;
  readonly touchYMm: number;
  readonly seatXMm: number;
  readonly seatYMm: number;
  readonly advanceMm: number;
  readonly shiftXMm: number;
  readonly shiftYMm: number;
  /** Depth of the seat, see seats.ts. */
  readonly depthMm: number;
  /** The ball needs a wall beside it, on the robot's left (1) or right (−1), or it would be pushed aside; 0: it does not. */
  readonly wall: -1 | 0 | 1;
}

/** Kept off the open end of a plate, in radii: a ball nearer to it is easily lost past it. */
const END_MARGIN_RADII = 0.25;
/** Kept inside a crest, mm: on the very tip a ball may as well go outside. */
const CREST_MARGIN_MM = 3;
/** Sides that fall back by less than this per mm across let a ball slide in too slowly to count. */
const LEAST_SLOPE = 0.05;

/** The ways to meet a ball with a profile: middle and ends of every seat, and the sides from which a ball slides into it. */
export function contactsOf(profile: Profile): readonly Contact[] {
  return seatsOf(profile).flatMap((seat) => [
    ...levelContacts(profile, seat),
    ...sideContacts(profile, seat),
  ]);
}

/**
 * Ways to push a ball along a wall that runs beside the robot, with a part that falls back toward that wall: a plate's end
 * or the outside of an arm's tip. The part presses the ball on the wall; outside both friction cones it does not jam.
 *
 * @param grip the smaller friction of the two contacts
 * Source: Nguyen 1988, from memory: held iff the angle between the faces is at most twice the friction angle; the engine's
 * own rule (trial/jam.kernel.ts), n·o < −cos 2φ, cos(2 atan μ) = (1 − μ²)/(1 + μ²).
 */
export function wallContactsOf(profile: Profile, grip: number): readonly Contact[] {
  const jamSin = (1 - grip * grip) / (1 + grip * grip);
  return seatsOf(profile).flatMap((seat) =>
    ([1, -1] as const).flatMap((side) => {
      const end = side > 0 ? seat.catchLeftMm : seat.catchRightMm;
      return WALL_OFFSETS_RADII.flatMap((share) => {
        const contact = alongWall(profile, end + side * share * profile.radiusMm, side, jamSin);
        return contact === null ? [] : [contact];
      });
    }),
  );
}

/** How far past the end of a plate, or past the crest of a tip, the ball's centre may be, in radii. */
const WALL_OFFSETS_RADII = [0.2, 0.45];

function alongWall(profile: Profile, y: number, side: 1 | -1, jamSin: number): Contact | null {
  const i = indexAt(profile, y);
  const x = profile.xMm[i] ?? Number.NEGATIVE_INFINITY;
  const next = profile.xMm[i + side] ?? Number.NEGATIVE_INFINITY;
  if (x === Number.NEGATIVE_INFINITY || next === Number.NEGATIVE_INFINITY) return null;
  const slope = (x - next) / PROFILE_STEP_MM;
  // Sine of the angle by which the push leans toward the wall.
  const lean = slope / Math.sqrt(1 + slope * slope);
  if (slope <= 0 || lean >= jamSin) return null;
  const place = profile.firstYMm + i * PROFILE_STEP_MM;
  return still(x, place, 0, side);
}

function still(x: number, y: number, depthMm: number, wall: Contact["wall"]): Contact {
  return {
    touchXMm: x,
    touchYMm: y,
    seatXMm: x,
    seatYMm: y,
    advanceMm: 0,
    shiftXMm: 0,
    shiftYMm: 0,
    depthMm,
    wall,
  };
}

function indexAt(profile: Profile, y: number): number {
  const middle = (profile.xMm.length - 1) / 2;
  const steps = Math.round(Math.abs(y) / PROFILE_STEP_MM);
  return middle + (y < 0 ? -steps : steps);
}

function levelContacts(profile: Profile, seat: Seat): readonly Contact[] {
  const margin = END_MARGIN_RADII * profile.radiusMm;
  const right = seat.catchRightMm < seat.rightMm ? seat.rightMm : seat.rightMm + margin;
  const left = seat.catchLeftMm > seat.leftMm ? seat.leftMm : seat.leftMm - margin;
  const middle = (seat.rightMm + seat.leftMm) / 2;
  const places = left - right > PROFILE_STEP_MM ? [middle, left, right] : [middle];
  return places.map((y) => still(seat.xMm, y, seat.depthMm, 0));
}

function sideContacts(profile: Profile, seat: Seat): readonly Contact[] {
  const outermostLeft = seat.catchLeftMm - CREST_MARGIN_MM;
  const outermostRight = seat.catchRightMm + CREST_MARGIN_MM;
  const places = [
    outermostLeft,
    (outermostLeft + seat.leftMm) / 2,
    outermostRight,
    (outermostRight + seat.rightMm) / 2,
  ];
  return places.flatMap((y) => {
    const contact = y > seat.leftMm || y < seat.rightMm ? slideIn(profile, seat, y) : null;
    return contact === null ? [] : [contact];
  });
}

/**
 * A ball touched on a rising side at y gives way along the side's normal. On a side that falls back by s per mm across, the
 * ball moves (1/s, 1) and the robot (1 + s²)/s per mm across: the component of the robot's motion along the normal.
 * Friction is left out: the ball's roll takes it up (references: a rolling ball slides almost freely along a face).
 */
function slideIn(profile: Profile, seat: Seat, fromY: number): Contact | null {
  const side = fromY > seat.leftMm ? 1 : -1;
  const edgeY = side > 0 ? seat.leftMm : seat.rightMm;
  const start = indexAt(profile, fromY);
  const end = indexAt(profile, edgeY);
  let advanceMm = 0;
  let shiftXMm = 0;
  for (let i = start; i !== end; i -= side) {
    const slope = ((profile.xMm[i] ?? 0) - (profile.xMm[i - side] ?? 0)) / PROFILE_STEP_MM;
    if (!(slope > LEAST_SLOPE)) return null;
    advanceMm += (PROFILE_STEP_MM * (1 + slope * slope)) / slope;
    shiftXMm += PROFILE_STEP_MM / slope;
  }
  const touchYMm = profile.firstYMm + start * PROFILE_STEP_MM;
  return {
    touchXMm: profile.xMm[start] ?? 0,
    touchYMm,
    seatXMm: seat.xMm,
    seatYMm: edgeY,
    advanceMm,
    shiftXMm,
    shiftYMm: edgeY - touchYMm,
    depthMm: seat.depthMm,
    wall: 0,
  };
}
