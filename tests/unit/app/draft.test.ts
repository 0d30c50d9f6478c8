import { describe, expect, it } from "vitest";
import { Draft } from "../../../src/app/project/draft.svelte.ts";
import { withValue } from "../../../src/app/project/form.ts";
import { parseProjectFile } from "../../../src/model/parse.ts";
import { shippedText } from "../../support/projectFiles.ts";

function opened(): Draft {
  const read = parseProjectFile(shippedText("usual-zone.json"));
  if (!read.ok) throw new Error("the example is not sound");
  return new Draft(read.value);
}

describe("a project under edit", () => {
  it("follows what is sound, and keeps what is not in the form with its issues", () => {
    const draft = opened();
    draft.edit("zone.widthMm", 1300);
    expect(draft.project.zone.widthMm).toBe(1300);
    draft.edit("zone.widthMm", 1);
    expect(draft.at("zone.widthMm")).toBe(1);
    expect(draft.issuesAt("zone.widthMm").map(({ code }) => code)).toEqual(["out-of-range"]);
    expect(draft.project.zone.widthMm).toBe(1300);
    draft.edit("zone.widthMm", 1250);
    expect(draft.issues).toEqual([]);
    expect(draft.project.zone.widthMm).toBe(1250);
  });

  it("goes back and forth over every change, a gesture counting as one", () => {
    const draft = opened();
    const before = draft.form;
    for (const width of [1210, 1220, 1230]) draft.edit("zone.widthMm", width, "zone.widthMm");
    draft.seal();
    draft.edit("zone.widthMm", 1240, "zone.widthMm");
    draft.edit("name", "Other");
    draft.undo();
    expect(draft.name).not.toBe("Other");
    draft.undo();
    expect(draft.at("zone.widthMm")).toBe(1230);
    draft.undo();
    expect(draft.form).toEqual(before);
    expect(draft.canUndo).toBe(false);
    for (let i = 0; i < 3; i++) draft.redo();
    expect([draft.name, draft.at("zone.widthMm"), draft.canRedo]).toEqual(["Other", 1240, false]);
    draft.undo();
    draft.edit("note", "a new branch");
    expect(draft.canRedo).toBe(false);
  });

  it("keeps the project's identity while nothing changes that a run depends on", () => {
    const draft = opened();
    const { project } = draft;
    draft.edit("name", "Our hall");
    draft.edit("routines", [{ id: "own-1", label: "mine", moves: [{ kind: "wait", durationS: 1 }] }]);
    expect(draft.project).toBe(project);
    expect(draft.routines.map(({ label }) => label)).toEqual(["mine"]);
    draft.edit("rules.timeLimitS", 90);
    expect(draft.project).not.toBe(project);
  });

  it("refuses a try that would not be sound, without a trace", () => {
    const draft = opened();
    const before = draft.form;
    expect(draft.tryChange((form) => ({ ...form, zone: 5 }))).toBe(false);
    expect([draft.form, draft.canUndo]).toEqual([before, false]);
  });

  it("takes a drag while another field is wrong, and leaves that field as it is", () => {
    const draft = opened();
    draft.edit("rules.timeLimitS", -1);
    const [wrong] = draft.issues;
    expect(wrong?.path).toBe("rules.timeLimitS");
    expect(draft.tryChange((form) => withValue(form, "zone.widthMm", 1300))).toBe(true);
    expect([draft.project.zone.widthMm, draft.at("zone.widthMm")]).toEqual([1300, 1300]);
    expect([draft.at("rules.timeLimitS"), draft.issues.length]).toEqual([-1, 1]);
    expect(draft.tryChange((form) => withValue(form, "zone.widthMm", 1))).toBe(false);
    draft.undo();
    expect([draft.project.zone.widthMm, draft.at("rules.timeLimitS")]).toEqual([1200, -1]);
    draft.edit("rules.timeLimitS", 90);
    expect([draft.issues.length, draft.project.rules.timeLimitS]).toEqual([0, 90]);
  });
});
