import { describe, expect, it } from "vitest";
import { sensorOf } from "../../../src/model/sensor.ts";
import { SENSOR_PRESET_IDS, SENSOR_PRESETS } from "../../../src/model/sensorPresets.ts";
import { serialiseProject } from "../../../src/model/serialise.ts";
import { withWedgeIn } from "../../../src/model/wedgeCorner.ts";
import { mirroredProject } from "../../../src/plan/mirror.ts";
import { changedText, SHIPPED, shippedProject, soundProject } from "../../support/projectFiles.ts";

describe("sensors in a project file", () => {
  it("a robot without any is written as before there were sensors", () => {
    const text = serialiseProject(shippedProject("usual-zone.json"));
    expect(text).not.toContain("sensors");
    expect(text).not.toContain("wedgeCorners");
    expect(shippedProject("usual-zone.json").robot.sensors).toEqual([]);
  });

  it.each(SENSOR_PRESET_IDS)("the preset %s stands for every value", (preset) => {
    const text = changedText((f) => (f.robot.sensors = [{ preset }]));
    expect(soundProject(text).robot.sensors).toEqual([SENSOR_PRESETS[preset]]);
  });

  it("what a file says replaces the preset's value", () => {
    const text = changedText((f) => {
      f.robot.sensors = [{ preset: "ultrasonic-echo", rangeMm: 900, headingDeg: 90 }];
    });
    const [sensor] = soundProject(text).robot.sensors;
    expect(sensor).toMatchObject({ rangeMm: 900, headingRad: Math.PI / 2, name: "Ultrasonic echo" });
  });

  it.each(SHIPPED)("%s is read back as it was written", (name) => {
    const project = shippedProject(name);
    expect(soundProject(serialiseProject(project))).toEqual(project);
  });

  it("are mirrored with the robot: what sits left sits right, and looks there", () => {
    const project = shippedProject("looking-robot.json");
    const barrier = sensorOf(project.robot.sensors, "barrier");
    const image = sensorOf(mirroredProject(project).robot.sensors, "barrier");
    expect(image).toEqual({ ...barrier, acrossMm: 75, headingRad: -(barrier?.headingRad ?? 0) });
  });

  it("a wedge in another corner is known to be there", () => {
    const project = shippedProject("unknown-corner.json");
    const moved = withWedgeIn(project, "lower-right");
    expect(moved.zone.wedge).toEqual({ ...project.zone.wedge, corner: "lower-right" });
    expect(moved.rules.wedgeCorners).toEqual([]);
    expect(mirroredProject(project).rules.wedgeCorners).toEqual(["upper-left", "upper-right", "lower-left"]);
  });
});
