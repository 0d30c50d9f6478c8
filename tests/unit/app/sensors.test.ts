import { describe, expect, it } from "vitest";
import type { Form } from "../../../src/app/project/form.ts";
import { sensorRows } from "../../../src/app/sensors/sensorRows.ts";
import { fittedSensors, SLOTS, withPrinciple, withSensor } from "../../../src/app/sensors/slots.ts";
import { parseProjectFile } from "../../../src/model/parse.ts";
import { projectForFile } from "../../../src/model/serialise.ts";
import { sensingIds } from "../../../src/plan/sensingPlan.ts";
import { SHIPPED, shippedProject } from "../../support/projectFiles.ts";

const formOf = (name: string) => projectForFile(shippedProject(name)) as unknown as Form;

function read(form: Form) {
  const parsed = parseProjectFile(JSON.stringify(form));
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues));
  return parsed.value.project;
}

describe("a robot's sensors as switches", () => {
  it.each(SHIPPED)("%s: every one can be switched on, and is found again", (name) => {
    const project = shippedProject(name);
    let form = { ...formOf(name), robot: { ...(formOf(name).robot as object), sensors: [] } } as Form;
    for (const slot of SLOTS) form = withSensor(form, slot, project);
    expect(new Set(fittedSensors(form).map(({ slot }) => slot))).toEqual(new Set(SLOTS));
    expect(read(form).robot.sensors).toHaveLength(SLOTS.length);
    // Routines that look take part, and look ahead, whatever was switched on before.
    expect(sensingIds(read(form)).length).toBeGreaterThan(0);
    const aside = withSensor(
      withSensor({ ...form, robot: { ...(form.robot as object), sensors: [] } } as Form, "aside", project),
      "ahead",
      project,
    );
    expect(fittedSensors(aside).map(({ slot }) => slot)).toEqual(["ahead", "aside"]);
  });

  it("shows the numbers of the preset where the file leaves them out, each with its reason", () => {
    const project = shippedProject();
    const form = withSensor(formOf("usual-zone.json"), "ahead", project);
    const [eye] = fittedSensors(form);
    if (!eye) throw new Error("no sensor");
    const rows = sensorRows(eye);
    const shown = (key: string) => rows.find(({ path }) => path === `robot.sensors[0].${key}`)?.fallback;
    expect(shown("rangeMm")).toBe(1200);
    expect(rows.every(({ text }) => text.label !== "" && text.why !== "")).toBe(true);
    const [before] = read(form).robot.sensors;
    const [after] = read(withPrinciple(form, 0, "ultrasonic-echo")).robot.sensors;
    if (before?.kind !== "distance" || after?.kind !== "distance") throw new Error("no eye");
    // By another principle, at the same place.
    expect([after.rangeMm, after.alongMm]).toEqual([1500, before.alongMm]);
  });

  it("takes no entry for one that is none", () => {
    for (const sensors of [7, null, [null, 3, "x", { kind: "laser" }, { preset: "__proto__" }]]) {
      expect(fittedSensors({ robot: { sensors } })).toEqual([]);
    }
  });
});
