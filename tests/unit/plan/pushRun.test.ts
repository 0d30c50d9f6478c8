import { describe, expect, it } from "vitest";
import { RoutineBuilder } from "../../../src/plan/builder.ts";
import { targetFrame } from "../../../src/plan/frame.ts";
import { beforeWedge } from "../../../src/plan/place.ts";
import { type PushRun, pushAlong } from "../../../src/plan/pushRun.ts";
import { cornerPush, laneRun } from "../../../src/plan/routes.ts";
import { sceneOf } from "../../../src/plan/scene.ts";
import { shippedProject } from "../../support/projectFiles.ts";

const scene = sceneOf(targetFrame(shippedProject(), true));
const built = () => new RoutineBuilder(scene, 250);
const run: Omit<PushRun, "ways"> = { backUp: false, squareUps: [], end: "stop", retreat: "off" };

describe("a push run", () => {
  it("takes the first way that has room", () => {
    const blocked = [
      { xMm: 600, yMm: 450 },
      { xMm: 5000, yMm: 450 },
    ];
    const open = [
      { xMm: 600, yMm: 450 },
      { xMm: 700, yMm: 450 },
    ];
    const builder = built();
    expect(pushAlong(builder, { ...run, ways: [blocked, open] })).toBe(true);
    expect(builder.pose.xMm).toBeCloseTo(700, 3);
    const none = built();
    expect(pushAlong(none, { ...run, ways: [blocked] })).toBe(false);
    expect(none.moves).toEqual([]);
  });

  it("slows down before a corner and in it, so that arms keep the balls", () => {
    const builder = built();
    const way = [
      { xMm: 900, yMm: 600 },
      { xMm: 450, yMm: 600, radiusMm: 150 },
      { xMm: 450, yMm: 400 },
    ];
    expect(pushAlong(builder, { ...run, ways: [way] })).toBe(true);
    const curve = builder.moves.findIndex(({ kind }) => kind === "arc");
    const [before, arc] = [builder.moves[curve - 1], builder.moves[curve]];
    if (before?.kind !== "drive" || arc?.kind !== "arc") throw new Error("a straight, then a curve");
    expect(before.speedMmPerS).toBeLessThan(250);
    // Half of the pusher's width beside the middle of the curve the ball is faster than the axle, yet slow enough to brake.
    expect(arc.speedMmPerS).toBeLessThan(before.speedMmPerS);
  });

  it("ends square on the wedge, flat on its edge", () => {
    const builder = built();
    expect(pushAlong(builder, cornerPush(scene, 0))).toBe(true);
    expect(builder.moves.some(({ kind }) => kind === "toWall")).toBe(true);
    expect(Math.cos(builder.pose.headingRad - scene.target.headingRad)).toBeCloseTo(1, 9);
  });

  it("comes back along the way it swept", () => {
    const builder = built();
    const lane = laneRun(scene, "x", 450, false, { retreat: "back" });
    expect(pushAlong(builder, lane)).toBe(true);
    // Backed up to the far wall before it set out: 15 mm clear of it.
    expect(builder.pose.xMm).toBeCloseTo(1200 - 75 - 15, 0);
    expect(builder.pose.yMm).toBeCloseTo(450, 3);
  });

  it("only drives up to a wedge that does not stop it, and keeps its tips off the walls", () => {
    const usual = shippedProject();
    const flat = {
      ...usual,
      zone: { ...usual.zone, wedge: { ...usual.zone.wedge, profile: "flat" as const } },
    };
    const level = sceneOf(targetFrame(flat, true));
    const builder = new RoutineBuilder(level, 250);
    const before = beforeWedge(level, 0);
    expect(pushAlong(builder, { ...cornerPush(level, 0), retreat: "off" })).toBe(true);
    expect(builder.moves.every(({ kind }) => kind !== "toWall")).toBe(true);
    const forward = builder.moves.filter((move) => move.kind === "drive" && move.distanceMm > 0);
    expect(forward.length).toBeGreaterThan(0);
    expect(before.xMm).toBeCloseTo(150, 6);
  });
});
