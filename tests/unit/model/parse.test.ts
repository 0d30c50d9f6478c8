import { describe, expect, it } from "vitest";
import { signedArea } from "../../../src/geometry/polygon.ts";
import { parseProject } from "../../../src/model/parse.ts";
import { BALL_PRESETS } from "../../../src/model/presets.ts";
import { changedText, issuesOf, shippedProject, soundProject } from "../../support/projectFiles.ts";

/** The least a project file must say. */
const LEAST = {
  formatVersion: 1,
  zone: {
    widthMm: 1200,
    heightMm: 900,
    doorway: { wall: "bottom", centreMm: 160, widthMm: 250 },
    wedge: { corner: "upper-right", legXMm: 300, legYMm: 300 },
  },
  balls: [{ preset: "golf" }],
  robot: {
    shape: {
      kind: "plate",
      bodyLengthMm: 150,
      bodyWidthMm: 140,
      axleFromRearMm: 70,
      plateWidthMm: 180,
      plateReachMm: 60,
    },
    drive: { gaugeMm: 120, topSpeedMmPerS: 250, turnRateDegPerS: 90 },
  },
};

describe("parseProject", () => {
  it("fills in what may be left out", () => {
    const project = soundProject(JSON.stringify(LEAST));
    expect(project.name).toBe("Project");
    expect(project.note).toBe("");
    expect(project.zone.keepOuts).toEqual([]);
    expect(project.zone.wedge).toMatchObject({ profile: "flat", lipMm: 0, riseMm: 0 });
    expect(project.balls).toEqual([{ kind: BALL_PRESETS.golf, count: 1, points: 1 }]);
    expect(project.rules).toMatchObject({
      timeLimitS: 120,
      delivered: "centre",
      layout: { kind: "random", forbidden: [] },
    });
    expect(project.robot).toMatchObject({ ground: { kind: "body" }, climbsWedge: false });
    expect(project.robot.entry).toEqual({ alongMm: 0, insetMm: 0, headingRad: 0 });
    expect(project.settings.speedFracs).toEqual([0.6, 1]);
  });

  it("reads degrees into radians", () => {
    const { robot } = shippedProject();
    expect(robot.drive.turnRateRadPerS).toBeCloseTo((2 * Math.PI) / 3, 12);
    expect(robot.drift.start.headingSdRad).toBeCloseTo(Math.PI / 180, 12);
    expect(robot.drift.systematic.curvatureSdRadPerMm).toBeCloseTo((0.2 * Math.PI) / 180_000, 15);
    expect(robot.shape).toMatchObject({ kind: "arms", armAngleRad: expect.closeTo(Math.PI / 18, 12) });
  });

  it("takes a preset's values unless the file says otherwise", () => {
    const text = changedText(
      (f) => (f.balls = [{ preset: "squash", count: 2, rollingResistance: 0.05, name: "Old squash ball" }]),
    );
    const [group] = soundProject(text).balls;
    expect(group?.kind).toEqual({ ...BALL_PRESETS.squash, rollingResistance: 0.05, name: "Old squash ball" });
  });

  it("turns an outline that was given clockwise, with its pusher", () => {
    const straight = soundProject(changedText(() => {}, "five-mixed-balls.json"));
    const clockwise = soundProject(
      changedText((f) => {
        const { shape, ground } = f.robot;
        shape.outlineMm.reverse();
        ground.outlineMm.reverse();
        const last = shape.outlineMm.length - 1;
        shape.pusherEdges = shape.pusherEdges.map((edge: number) => last - 1 - edge);
      }, "five-mixed-balls.json"),
    );
    expect(clockwise).toEqual(straight);
    const { shape } = clockwise.robot;
    expect(shape.kind === "polygon" && signedArea(shape.outline)).toBeGreaterThan(0);
  });

  it("never leaves a negative zero, which a file could not hold", () => {
    const text = changedText((f) => (f.robot.entry.alongMm = 0)).replace('"alongMm":0', '"alongMm":-0');
    expect(Object.is(soundProject(text).robot.entry.alongMm, 0)).toBe(true);
  });

  it("gives all faults of a file at once", () => {
    const text = changedText((f) => {
      f.zone.width = 1200;
      delete f.zone.widthMm;
      f.zone.wedge.corner = "upper right";
      f.balls[0].count = "3";
      f.balls[0].preset = "table tennis";
      f.rules.timeLimitS = -1;
      f.rules.layout.forbidden = [{ xMm: 0 }];
      f.robot.shape.axleFromRearMm = 500;
      f.robot.drive.topSpeedMmPerS = null;
      f.robot.drift.random.turnSdDegrees = 1;
      f.spread = [];
      f.extra = {};
    });
    expect(issuesOf(text).map(({ code, path }) => `${code} ${path}`)).toEqual([
      "missing-key zone.widthMm",
      "unknown-choice zone.wedge.corner",
      "unknown-key zone.width",
      "wrong-type balls[0].count",
      "unknown-choice balls[0].preset",
      "out-of-range rules.timeLimitS",
      "missing-key rules.layout.forbidden[0].yMm",
      "missing-key rules.layout.forbidden[0].widthMm",
      "missing-key rules.layout.forbidden[0].heightMm",
      "wrong-type robot.drive.topSpeedMmPerS",
      "unknown-key robot.drift.random.turnSdDegrees",
      "wrong-type spread",
      "unknown-key extra",
    ]);
  });

  it("checks the sound parts against each other even when others are not", () => {
    const text = changedText((f) => {
      f.zone.doorway.centreMm = 5;
      f.robot.shape.axleFromRearMm = 171;
      f.rules.timeLimitS = "long";
      f.balls[0].count = 99;
    });
    expect(issuesOf(text).map(({ code }) => code)).toEqual([
      "wrong-type",
      "doorway-outside-wall",
      "axle-outside-body",
      "too-many-balls",
    ]);
  });

  it("stops counting issues at 200 and says how many there are", () => {
    const text = changedText((f) => {
      for (let i = 0; i < 5000; i++) f[`key${i}`] = i;
    });
    const issues = issuesOf(text);
    expect(issues).toHaveLength(201);
    expect(issues.at(-1)).toMatchObject({ code: "too-many-issues", got: "5000 issues" });
  });

  it("keeps a hostile key from steering a terminal or filling the screen", () => {
    const text = changedText((f) => {
      f[`\u001b[2J${"k".repeat(5000)}`] = 1;
    });
    const [issue] = issuesOf(text);
    expect(issue?.code).toBe("unknown-key");
    expect(issue?.path).toHaveLength(121);
    expect(JSON.stringify(issue)).not.toMatch(/\\u001b/);
  });

  it("of another version looks at nothing else", () => {
    expect(parseProject('{"formatVersion": 3, "zones": []}')).toMatchObject({
      ok: false,
      issues: [{ code: "newer-format", got: "3" }],
    });
  });
});

describe("messages", () => {
  const messageOf = (change: Parameters<typeof changedText>[0]): string => {
    const [issue] = issuesOf(changedText(change));
    return `${issue?.message} | ${issue?.got} | ${issue?.expected}`;
  };

  it("say what to write instead", () => {
    expect(messageOf((f) => (f.zone.widthMm = "1200"))).toBe(
      'Here stands a text instead of a number. Write the number without quotes. | "1200" | a number from 200 to 20000 mm',
    );
    expect(messageOf((f) => (f.rules.timeLimitS = 1e9))).toBe(
      "The number is outside what makes sense here. It must be a number from 0 to 3600 s (left out: 120 s). | 1000000000 | a number from 0 to 3600 s (left out: 120 s)",
    );
    expect(messageOf((f) => (f.balls[0].massKg = 0))).toContain(
      "above 0 and up to 5 kg (left out: 0.0027 kg)",
    );
    expect(messageOf((f) => (f.robot.entry.headingDeg = 270))).toContain("from −180 to 180°");
  });

  it("guess what was meant", () => {
    expect(messageOf((f) => (f.robot.entry = { headingRad: 1 }))).toContain('Did you mean "headingDeg"?');
    expect(messageOf((f) => (f.balls[0].preset = "table tennis"))).toContain('Did you mean "table-tennis"?');
    expect(messageOf((f) => (f.colour = "red"))).toContain(
      'Take it out. | the key "colour" | only: formatVersion, name',
    );
  });

  it("say what stands for a word or a flag that is left out", () => {
    expect(messageOf((f) => (f.zone.wedge.profile = "shelve"))).toBe(
      'This word is not known here. Did you mean "shelf"? | "shelve" | one of "flat", "ramp", "shelf", "tray" (left out: "flat")',
    );
    expect(messageOf((f) => (f.robot.climbsWedge = 1))).toContain("true or false (left out: false)");
  });

  it("give lengths with their unit", () => {
    expect(messageOf((f) => (f.zone.wedge.legXMm = 1300))).toBe(
      "The wedge's leg is longer than the zone's width; shorten it. | 1300 mm | at most 1200 mm",
    );
  });
});
