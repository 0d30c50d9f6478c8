import { describe, expect, it } from "vitest";
import { tryLayout } from "../../../src/model/layoutTrial.ts";
import type { Project } from "../../../src/model/project.ts";
import type { Layout } from "../../../src/model/rules.ts";
import { startRegion } from "../../../src/model/startRegion.ts";
import { canTurnSomewhere, reachMm } from "../../../src/model/turningRoom.ts";
import type { RectMm } from "../../../src/model/zone.ts";
import { shippedProject } from "../../support/projectFiles.ts";

const usual = shippedProject();
type RandomLayout = Extract<Layout, { kind: "random" }>;

const withLayout = (change: Partial<RandomLayout>, project = usual): Project => ({
  ...project,
  rules: { ...project.rules, layout: { ...(usual.rules.layout as RandomLayout), ...change } },
});
const withBlocks = (...keepOuts: readonly RectMm[]): Project => ({
  ...usual,
  zone: { ...usual.zone, keepOuts },
});

describe("where a ball may lie", () => {
  // Margins of the default project: 10 to walls, 20 to the wedge and the robot; ball radius 20.
  const allows = (project: Project, x: number, y: number): boolean | undefined =>
    startRegion(project)?.allows(x, y, 20);

  it("keeps its surface from the walls", () => {
    expect(allows(usual, 600, 30)).toBe(true);
    expect(allows(usual, 600, 29.9)).toBe(false);
    expect(allows(usual, 1170, 400)).toBe(true);
    expect(allows(usual, 1170.1, 400)).toBe(false);
    expect(allows(usual, 600, 870.1)).toBe(false);
  });

  it("keeps its surface from the wedge's long side", () => {
    // On the diagonal the long side is at x = y + 300, (1050, 750); 40 mm away is 28.28 in x and y.
    expect(allows(usual, 1050 - 28.3, 750 - 28.3)).toBe(true);
    expect(allows(usual, 1050 - 28.2, 750 - 28.2)).toBe(false);
    expect(allows(usual, 1150, 850)).toBe(false);
  });

  it("keeps its surface from the robot, between its arms too", () => {
    // The right arm's outer tip is at 75 + 90 sin 10° = 90.63 beside the middle, 160.
    expect(allows(usual, 160 + 90.63 + 40.1, 268)).toBe(true);
    expect(allows(usual, 160 + 90.63 + 39.8, 268)).toBe(false);
    // The body's front is at 85 + 95, the arms' inner sides at least 69 beside the middle.
    expect(allows(usual, 160, 221)).toBe(true);
    expect(allows(usual, 160, 219)).toBe(false);
    expect(allows(withLayout({ robotMarginMm: 5 }), 160, 206)).toBe(true);
    expect(allows(withLayout({ robotMarginMm: 5 }), 160, 204)).toBe(false);
  });

  it("keeps its surface from keep-outs and its centre out of forbidden regions", () => {
    const blocks = withBlocks({ xMm: 500, yMm: 400, widthMm: 100, heightMm: 100 });
    expect(allows(blocks, 470, 450)).toBe(true);
    expect(allows(blocks, 470.1, 450)).toBe(false);
    const forbidden = withLayout({ forbidden: [{ xMm: 500, yMm: 400, widthMm: 100, heightMm: 100 }] });
    expect(allows(forbidden, 499.9, 450)).toBe(true);
    expect(allows(forbidden, 500, 450)).toBe(false);
  });

  it("is not asked for a fixed layout", () => {
    expect(startRegion(shippedProject("practice-layout.json"))).toBeUndefined();
  });
});

describe("laying out", () => {
  const balls = (count: number): Project["balls"] => [{ ...usual.balls[0]!, count }];

  it("twelve balls in the usual zone is easy", () => {
    expect(tryLayout({ ...usual, balls: balls(12) })).toEqual({ fits: true });
  });

  it("fails by area before trying", () => {
    const { zone } = usual;
    const crowded = withLayout({ spacingMm: 420 }, { ...usual, zone, balls: balls(12) });
    expect(tryLayout(crowded)).toEqual({
      fits: false,
      reason: expect.stringMatching(/take 19943 cm², the zone has room for 18864 cm²/),
    });
  });

  it("finds the few places that a corner leaves", () => {
    // Centres between x = 30 and 200, y = 700 and 870: 2.9 % of the zone. The largest equilateral triangle in that square has sides of 176: three balls have room there, but not 180 apart.
    const forbidden = [
      { xMm: 0, yMm: 0, widthMm: 1200, heightMm: 700 },
      { xMm: 200, yMm: 0, widthMm: 1000, heightMm: 900 },
    ];
    expect(tryLayout(withLayout({ forbidden }))).toEqual({ fits: true });
    expect(tryLayout(withLayout({ forbidden, spacingMm: 140 }))).toEqual({
      fits: false,
      reason: "room for 2 of 3 balls in 40 attempts",
    });
  });

  it("refuses a layout that a trial would hardly ever draw", () => {
    // Centres in a patch of 30 × 30 mm, 0.1 % of the zone: three balls do lie there once in a while when they may touch.
    const project = withLayout({
      spacingMm: 0,
      forbidden: [
        { xMm: 0, yMm: 0, widthMm: 1200, heightMm: 800 },
        { xMm: 90, yMm: 0, widthMm: 1110, heightMm: 900 },
      ],
    });
    expect(tryLayout(project)).toEqual({
      fits: false,
      reason: expect.stringMatching(/^room for all balls in only [1-9]\d* of 40 attempts$/),
    });
  });
});

describe("room to turn", () => {
  it("is the circle around the robot's origin that its outline sweeps", () => {
    expect(
      reachMm([
        { xMm: 30, yMm: -40 },
        { xMm: 0, yMm: 45 },
      ]),
    ).toBe(50);
  });

  // The tips reach 95 + 90 cos 10° = 183.6 ahead and 90.6 beside: 204.8 from the origin.
  it("is looked for everywhere, up to a tenth of a millimetre", () => {
    const corridor = (heightMm: number): boolean =>
      canTurnSomewhere({ ...usual.zone, widthMm: 4000, heightMm }, usual.robot);
    expect(corridor(409.3)).toBe(false);
    expect(corridor(409.9)).toBe(true);
  });

  it("is found between keep-outs, off the middle", () => {
    const wide = { xMm: 420, yMm: 0, widthMm: 780, heightMm: 480 };
    expect(canTurnSomewhere(withBlocks(wide).zone, usual.robot)).toBe(true);
    const high = { xMm: 0, yMm: 420, widthMm: 1200, heightMm: 60 };
    const low = { xMm: 409, yMm: 0, widthMm: 791, heightMm: 420 };
    expect(canTurnSomewhere(withBlocks(high, low).zone, usual.robot)).toBe(true);
    expect(canTurnSomewhere(withBlocks(high, { ...low, yMm: 0, xMm: 405 }).zone, usual.robot)).toBe(true);
  });

  it("ends at the wedge for the ground outline, unless the robot climbs", () => {
    // The ground outline sweeps 121.04 around the origin. At 204.8 from both walls the long side of legs of 580 is 120.5 away, of 582 121.9.
    const halved = (side: number) => ({
      ...usual.zone,
      widthMm: side,
      heightMm: side,
      wedge: { ...usual.zone.wedge, legXMm: side, legYMm: side },
    });
    expect(canTurnSomewhere(halved(580), usual.robot)).toBe(false);
    expect(canTurnSomewhere(halved(582), usual.robot)).toBe(true);
    expect(canTurnSomewhere(halved(580), { ...usual.robot, climbsWedge: true })).toBe(true);
  });
});
