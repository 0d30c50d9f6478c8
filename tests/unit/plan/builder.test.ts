import { describe, expect, it } from "vitest";
import { RoutineBuilder } from "../../../src/plan/builder.ts";
import { targetFrame } from "../../../src/plan/frame.ts";
import { sceneOf } from "../../../src/plan/scene.ts";
import { shippedProject } from "../../support/projectFiles.ts";

/**
 * The usual zone in the frame: 1200 × 900 mm, target in the lower left corner, doorway 250 mm wide around x = 1040 in the
 * upper wall; the robot enters at (1040, 815) facing down. Its front is 184.7 mm ahead of its axle, its rear 75 mm behind.
 */
const scene = sceneOf(targetFrame(shippedProject(), true));
const built = () => new RoutineBuilder(scene, 250);

describe("a routine under construction", () => {
  it("starts at the entry pose", () => {
    expect(built().pose).toMatchObject({ xMm: 1040, yMm: 815 });
    expect(built().pose.headingRad).toBeCloseTo(-Math.PI / 2, 9);
  });

  it("drives as far as leaves the clearance, and refuses more", () => {
    const builder = built();
    const room = 815 - scene.reach.frontMm - 15;
    expect(builder.drive(room + 1)).toBe(false);
    expect(builder.moves).toEqual([]);
    expect(builder.drive(room)).toBe(true);
    expect(builder.pose.yMm).toBeCloseTo(815 - room, 9);
  });

  it("pushes on against a wall only when told to, and stays there", () => {
    const builder = built();
    expect(builder.toWall(1)).toBe(true);
    const [move] = builder.moves;
    expect(move).toMatchObject({ kind: "toWall", speedMmPerS: 250 });
    // The front at the wall, and at least the settings' overrun beyond.
    expect(builder.pose.yMm).toBeCloseTo(scene.reach.frontMm, 1);
    if (move?.kind !== "toWall") throw new Error("the move is one to the wall");
    expect(move.overrunMm).toBeGreaterThanOrEqual(40);
  });

  it("never backs out of the doorway it came in by", () => {
    const builder = built();
    expect(builder.drive(-50)).toBe(false);
    expect(builder.toWall(-1)).toBe(false);
    expect(builder.squareUp()).toBe(false);
  });

  it("squares up on a wall behind it: flat, heading and distance right", () => {
    const builder = built();
    expect(builder.drive(300)).toBe(true);
    expect(builder.face(Math.PI)).toBe(true);
    expect(builder.squareUp()).toBe(true);
    expect(builder.pose.xMm).toBeCloseTo(1200 - 75, 1);
  });

  it("turns the short way, and the long way round where that has no room", () => {
    const builder = built();
    expect(builder.drive(300)).toBe(true);
    expect(builder.face(0)).toBe(false);
    expect(builder.drive(-300) && builder.attempt(() => builder.turn(-1.4))).toBe(false);
    expect(builder.face(-Math.PI)).toBe(false);
    const free = built();
    expect(free.drive(300) && free.face(Math.PI) && free.drive(400)).toBe(true);
    expect(free.face(Math.PI - 1)).toBe(true);
    expect(free.moves.at(-1)).toMatchObject({ kind: "turn" });
    expect(free.pose.headingRad).toBeCloseTo(-Math.PI - 1, 6);
  });

  it("goes back to a mark with the time it took and the moves it made", () => {
    const builder = built();
    builder.drive(100);
    const mark = builder.mark();
    builder.drive(100);
    builder.turn(-0.3);
    builder.rewind(mark);
    expect(builder.moves).toHaveLength(1);
    expect(builder.timeS).toBe(mark.timeS);
    expect(builder.pose.yMm).toBeCloseTo(715, 9);
  });

  it("does all of several steps or nothing", () => {
    const builder = built();
    expect(builder.attempt(() => builder.drive(100) && builder.drive(5000))).toBe(false);
    expect(builder.moves).toEqual([]);
    expect(builder.timeS).toBe(0);
  });
});
