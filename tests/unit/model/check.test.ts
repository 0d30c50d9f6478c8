import { describe, expect, it } from "vitest";
import { checkProject } from "../../../src/model/check.ts";
import type { Project } from "../../../src/model/project.ts";
import type { PolygonShape } from "../../../src/model/robot.ts";
import type { Zone } from "../../../src/model/zone.ts";
import { SHIPPED, shippedProject } from "../../support/projectFiles.ts";

const usual = shippedProject();
const withZone = (zone: Partial<Zone>): Project => ({ ...usual, zone: { ...usual.zone, ...zone } });
const codes = (project: Project): string[] => checkProject(project).map(({ code }) => code);

describe("checkProject", () => {
  it("finds nothing wrong with what ships", () => {
    for (const name of SHIPPED) expect(checkProject(shippedProject(name))).toEqual([]);
  });

  it("names an edge that is not there", () => {
    const fork = shippedProject("five-mixed-balls.json");
    const shape: PolygonShape = { ...(fork.robot.shape as PolygonShape), pusherEdges: [3, 14, -1] };
    expect(checkProject({ ...fork, robot: { ...fork.robot, shape } })).toEqual([
      {
        code: "edge-out-of-range",
        path: "robot.shape.pusherEdges",
        message: "There is no edge with this number.",
        got: "14, -1",
        expected: "edge numbers from 0 to 13, each once",
      },
    ]);
  });

  it("looks only at the parts it is told are sound", () => {
    const broken: Project = { ...withZone({ widthMm: 10 }), balls: [] };
    const none = { zone: false, balls: false, rules: false, robot: false };
    expect(checkProject(broken, none)).toEqual([]);
    expect(checkProject(broken, { ...none, balls: true }).map(({ code }) => code)).toEqual(["no-balls"]);
  });
});

describe("a doorway", () => {
  const doorway = (
    wall: Zone["doorway"]["wall"],
    centreMm: number,
    corner: Zone["wedge"]["corner"],
  ): string[] =>
    codes(withZone({ doorway: { wall, centreMm, widthMm: 250 }, wedge: { ...usual.zone.wedge, corner } }));

  // Legs of 300 in a zone of 1200 × 900: the doorway's middle may be 425 from the wedge's corner, no nearer.
  it.each([
    ["top", "upper-right", 1200 - 425],
    ["right", "upper-right", 900 - 425],
    ["bottom", "lower-left", 425],
    ["left", "lower-left", 425],
    ["top", "upper-left", 425],
    ["left", "upper-left", 900 - 425],
    ["bottom", "lower-right", 1200 - 425],
    ["right", "lower-right", 425],
  ] as const)("in the %s wall may touch the leg of the %s wedge", (wall, corner, centre) => {
    // Toward the wedge's end of the wall.
    const nearer = centre > 450 ? 1 : -1;
    expect(doorway(wall, centre, corner)).not.toContain("doorway-on-wedge");
    expect(doorway(wall, centre + nearer, corner)).toEqual(["doorway-on-wedge"]);
  });

  it("may be as wide as its wall", () => {
    const wide = withZone({ doorway: { wall: "left", centreMm: 450, widthMm: 900 } });
    expect(codes(wide)).toEqual([]);
  });
});

describe("a keep-out", () => {
  const block = (xMm: number, yMm: number): string[] =>
    codes(withZone({ keepOuts: [{ xMm, yMm, widthMm: 60, heightMm: 60 }] }));

  it("may touch a wall beside the doorway and the wedge's edge", () => {
    expect(block(285, 0)).toEqual([]);
    // The long side runs from (900, 900) to (1200, 600): x + y = 1800.
    expect(block(840, 840)).toEqual([]);
    expect(block(840.1, 840)).toEqual(["keep-out-on-wedge"]);
  });

  it("in front of the doorway, but clear of the wall and the robot, is allowed", () => {
    expect(block(130, 290)).toEqual([]);
  });
});

describe("the robot at its entry", () => {
  const entry = (change: Partial<Project["robot"]["entry"]>, zone: Partial<Zone> = {}): string[] => {
    const project = withZone(zone);
    return codes({ ...project, robot: { ...project.robot, entry: { ...project.robot.entry, ...change } } });
  };

  it("may stand in the doorway, outside or inside", () => {
    expect(entry({ insetMm: -300 })).toEqual([]);
    expect(entry({ insetMm: 0 })).toEqual([]);
    expect(entry({ insetMm: 75 })).toEqual([]);
  });

  it("fits sideways up to the doorposts", () => {
    // The body is 150 wide, the arms' tips 181: half of 250 less 90.6 leaves 34.3 when the tips are in the gap,
    // less 75 leaves 50 when only the body is.
    expect(entry({ insetMm: -184, alongMm: 34 })).toEqual([]);
    expect(entry({ insetMm: -184, alongMm: 35 })).toEqual(["entry-in-wall"]);
    expect(entry({ insetMm: 0, alongMm: 50 })).toEqual([]);
    expect(entry({ insetMm: 0, alongMm: -50.1 })).toEqual(["entry-in-wall"]);
  });

  it("needs more doorway when it comes in at an angle", () => {
    // 250 · cos 43.6° = 181: the tips' width.
    expect(entry({ insetMm: 0, headingRad: 0.8 })).toContain("robot-wider-than-doorway");
    expect(entry({ insetMm: 0, headingRad: 0.7 })).not.toContain("robot-wider-than-doorway");
  });

  it("may be wider than the doorway when it starts inside", () => {
    expect(entry({}, { doorway: { wall: "bottom", centreMm: 160, widthMm: 100 } })).toEqual([]);
  });

  it.each([
    ["left", "lower-right", 1200],
    ["right", "lower-left", 1200],
    ["bottom", "upper-right", 900],
    ["top", "lower-right", 900],
  ] as const)(
    "through the %s wall drives inward, along the wall toward growing x or y",
    (wall, corner, far) => {
      const zone = {
        doorway: { wall, centreMm: 300, widthMm: 250 },
        wedge: { ...usual.zone.wedge, corner },
      };
      expect(entry({}, zone)).toEqual([]);
      // The arms' tips are 184.5 ahead of the origin.
      expect(entry({ insetMm: far - 185 }, zone)).toEqual([]);
      expect(entry({ insetMm: far - 183 }, zone)).toEqual(["entry-in-wall"]);
      // The nearer end of the wall is 300 from the doorway's middle, the tips' half width 90.6.
      expect(entry({ alongMm: 90.7 - 300 }, zone)).toEqual([]);
      expect(entry({ alongMm: 90.5 - 300 }, zone)).toEqual(["entry-in-wall"]);
    },
  );
});
