import { describe, expect, it } from "vitest";
import { robotOutline } from "../../../../src/model/outline.ts";
import type { RobotShape } from "../../../../src/model/robot.ts";
import { contactsOf, wallContactsOf } from "../../../../src/plan/push/contacts.ts";
import { type Profile, profileOf } from "../../../../src/plan/push/profile.ts";
import { seatsOf } from "../../../../src/plan/push/seats.ts";

const BODY = { bodyLengthMm: 160, bodyWidthMm: 140, axleFromRearMm: 60 } as const;

function profile(shape: RobotShape, radiusMm = 20): Profile {
  return profileOf(robotOutline({ shape, ground: { kind: "body" } }).footprint, radiusMm);
}

describe("seats of a pusher", () => {
  it("are the whole face of a plate, which holds nothing", () => {
    const seats = seatsOf(profile({ kind: "plate", ...BODY, plateWidthMm: 180, plateReachMm: 20 }));
    expect(seats).toHaveLength(1);
    expect(seats[0]).toMatchObject({ xMm: 140, rightMm: -90, leftMm: 90, depthMm: 0 });
  });

  it("are the bottom of a V, as far ahead as a disc goes in", () => {
    const seats = seatsOf(
      profile({ kind: "scoop", ...BODY, openingMm: 160, depthMm: 80, sideThicknessMm: 5 }),
    );
    // Half-angle 45°: the centre is r·√2 before the apex at x = 100.
    expect(seats).toHaveLength(1);
    expect(seats[0]?.xMm).toBeCloseTo(100 + 20 * Math.SQRT2, 9);
    expect(seats[0]).toMatchObject({ rightMm: 0, leftMm: 0 });
    expect(seats[0]?.depthMm).toBeGreaterThan(50);
  });

  it("are the body's front between straight arms, less a ball's radius on both sides", () => {
    const seats = seatsOf(
      profile({ kind: "arms", ...BODY, armLengthMm: 90, armThicknessMm: 6, armAngleRad: 0 }),
    );
    const between = seats.find((seat) => seat.xMm < 130);
    // At 44 mm itself the disc touches the arm's side: the level part ends a step before.
    expect(between).toMatchObject({ xMm: 120, rightMm: -43.5, leftMm: 43.5 });
    // On the tip's corner the centre is r ahead of the arm's end, all of it deeper than the back by the arm's length.
    expect(between?.depthMm).toBeCloseTo(90, 9);
  });

  it("are in the mouth where the arms are too close for the ball to go in", () => {
    const seats = seatsOf(
      profile(
        { kind: "arms", ...BODY, bodyWidthMm: 60, armLengthMm: 90, armThicknessMm: 15, armAngleRad: 0 },
        20,
      ),
    );
    // The gap is 30 mm: the disc rests on both corners, √(20² − 15²) ahead of them.
    const mouth = seats.find((seat) => seat.rightMm <= 0 && seat.leftMm >= 0);
    expect(mouth?.xMm).toBeCloseTo(100 + 90 + Math.sqrt(400 - 225), 9);
  });
});

describe("contacts", () => {
  it("of a ball that slides down a side at 45° move it across as far as ahead", () => {
    const vee = profile({ kind: "scoop", ...BODY, openingMm: 160, depthMm: 80, sideThicknessMm: 5 });
    const sliding = contactsOf(vee).filter((contact) => contact.advanceMm > 0);
    expect(sliding.length).toBeGreaterThan(0);
    for (const { touchXMm, touchYMm, seatXMm, shiftXMm, shiftYMm, advanceMm } of sliding) {
      // Where the side is straight: normal at 45°, so that the ball goes along it by 1/√2 of the robot's way.
      if (Math.abs(touchYMm) > 60) continue;
      expect(Math.abs(shiftYMm)).toBeCloseTo(shiftXMm, 6);
      expect(advanceMm).toBeCloseTo(2 * shiftXMm, 6);
      // In the robot's frame it goes back by what it is less far ahead.
      expect(touchXMm - seatXMm).toBeCloseTo(advanceMm - shiftXMm, 6);
    }
  });

  it("along a wall lean toward the wall and do not jam", () => {
    const plate = profile({ kind: "plate", ...BODY, plateWidthMm: 180, plateReachMm: 20 });
    const contacts = wallContactsOf(plate, 0.3);
    expect(contacts.map(({ wall }) => wall)).toContain(1);
    expect(contacts.map(({ wall }) => wall)).toContain(-1);
    for (const { touchYMm, wall } of contacts) {
      // Past the plate's end the disc's normal leans by asin(overhang / r).
      const lean = (Math.abs(touchYMm) - 90) / 20;
      expect(Math.sign(touchYMm)).toBe(wall);
      expect(lean).toBeGreaterThan(0);
      // Nguyen 1988, from memory, as in tests/published/jam: 2·atan 0.3 = 33.4° between the faces jams.
      expect(90 - (Math.asin(lean) * 180) / Math.PI).toBeGreaterThan(33.4);
    }
    // With friction 0.95 the cones hold nearly everything: cos(2·atan 0.95) = 0.051.
    expect(wallContactsOf(plate, 0.95)).toEqual([]);
  });
});
